package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Spec;

/** Writes what lies past the edges of a mould: flanges and the run-out. */
final class MouldEdging {

    private static final String TRACED = "edges of the parts traced along the plug, section by section";

    private final Spec spec;
    private final MouldMeasures measured;
    private final Ledger ledger;

    MouldEdging(Spec spec, MouldMeasures measured, Ledger ledger) {
        this.spec = spec;
        this.measured = measured;
        this.ledger = ledger;
    }

    /** The faces, not listed by themselves. */
    List<Node> faces() {
        Node parting = ledger.measured("parting line", LENGTH, Places.exact(measured.parting(), TRACED));
        Node open = ledger.measured("open edge", LENGTH, Places.exact(measured.open(), TRACED));
        List<Node> faces = new ArrayList<>();
        faces.add(flanges(ledger.step("flanges", AREA), parting, open));
        runOut(ledger.step("run-out", AREA), open).ifPresent(faces::add);
        return faces;
    }

    /** Writes lengths and areas as figures of the mould.
     *  @return the areas */
    List<Node> write() {
        Node parting = ledger.quantity("mould.parting.length", "Parting line", LENGTH).measured(Places.exact(measured.parting(), TRACED));
        Node open = ledger.quantity("mould.trim.length", "Open edge, trim line of the part", LENGTH)
                .measured(Places.exact(measured.open(), TRACED));
        List<Node> faces = new ArrayList<>();
        faces.add(flanges(ledger.quantity("mould.flange.area", "Flanges and return flanges", AREA), parting, open));
        runOut(ledger.quantity("mould.runout.area", "Run-out past the open edge", AREA), open).ifPresent(faces::add);
        trim(open);
        return faces;
    }

    /** Where the part is trimmed, and what of the run-out is cut off with it. */
    private void trim(Node open) {
        spec.body().trim().ifPresent(trim -> {
            Node distance = ledger.quantity("mould.trim.distance", "Trim line, past the finished edge", LENGTH).same(ledger.given(trim)).source("as scribed on the plug");
            spec.body().runOut().ifPresent(runOut -> ledger.quantity("mould.trim.waste.area", "Run-out beyond the trim line", AREA)
                    .from("open edge x (run-out - trim)", List.of(open, ledger.given(runOut), distance), v -> v[0] * Math.max(0, v[1] - v[2]))
                    .source("laid up with the part and cut off it"));
        });
    }

    private Node flanges(Ledger.Entry entry, Node parting, Node open) {
        Mould mould = spec.mould().orElseThrow();
        return entry.from("flange x (2 x parting line + open edge)", List.of(ledger.given(mould.flange()), parting, open),
                v -> v[0] * (2 * v[1] + v[2])).source("a flange on each half along the parting line, a return flange round each half's open edge");
    }

    private Optional<Node> runOut(Ledger.Entry entry, Node open) {
        return spec.body().runOut().map(runOut -> entry.from("open edge x run-out", List.of(open, ledger.given(runOut)), v -> v[0] * v[1])
                .source("the plug runs past each finished edge, and the mould with it"));
    }
}
