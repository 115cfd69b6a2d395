package mouldwright.report;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.Quantity;
import mouldwright.plan.stage.FairMeasures;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** What surveys found, what mends it, and what is to be measured again. */
final class RemedyTable implements TextReport.StageTable {

    @Override
    public String stage() {
        return "fair";
    }

    @Override
    public void print(Estimate estimate, Display display, StringBuilder out) {
        List<FairMeasures.Place> places = Remedies.of(estimate);
        Figure depth = new Figure(display, places.stream().mapToDouble(p -> p.size().depth().likely()).max().orElse(0), Dimension.LENGTH);
        Table table = new Table().figures("no").words("found").words("at").figures("deep", depth.unit()).words("mend with").words("takes").words("then");
        for (FairMeasures.Place place : places) {
            String deep = place.size().depth().likely() == 0 ? "-" : depth.of(place.size().depth().likely());
            Optional<Quantity> amount = Remedies.amount(estimate, place);
            table.row(List.of(String.valueOf(place.number()), place.fault().words(), place.where().replaceFirst("^in bay ", "").replaceFirst("^at ", ""), deep,
                    Remedies.words(place.remedy()), amount.map(q -> display.format(q.value(), q.dimension())).orElse(""), place.toMeasure() ? "measure again" : ""));
        }
        table.print("  ", out);
    }
}
