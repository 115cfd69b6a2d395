package mouldwright.report;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.Quantity;
import mouldwright.plan.stage.FairMeasures;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** What surveys found, what mends it, and what is to be measured again. */
final class RemedyTable implements StageTable {

    @Override
    public String stage() {
        return "fair";
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        List<FairMeasures.Place> places = Remedies.of(estimate);
        Figure depth = new Figure(display, places.stream().mapToDouble(p -> p.size().depth().likely()).max().orElse(0), Dimension.LENGTH);
        Table table = new Table("remedies", "What surveys found, and what mends it").figures("no").words("found").words("at").figures("deep", depth.unit()).words("mend with").words("takes").words("then");
        for (FairMeasures.Place place : places) {
            Cell deep = place.size().depth().likely() == 0 ? Cell.of("-") : depth.cell(place.size().depth().likely());
            Optional<Quantity> amount = Remedies.amount(estimate, place);
            table.row(Cell.of(place.number()), Cell.of(place.fault().words()), Cell.of(place.where().replaceFirst("^in bay ", "").replaceFirst("^at ", "")), deep,
                    Cell.of(Remedies.words(place.remedy())), Cell.of(amount.map(q -> display.format(q.value(), q.dimension())).orElse("")),
                    Cell.of(place.toMeasure() ? "measure again" : ""));
        }
        out.table(table);
    }
}
