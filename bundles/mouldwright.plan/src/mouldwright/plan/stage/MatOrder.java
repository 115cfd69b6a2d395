package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import mouldwright.plan.ledger.Formula;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.LaminateDefaults;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;

/** Writes what comes off the rolls of a mat: pieces, packed length, offcut, mass. */
final class MatOrder {

    private static final String PACKING = "best-fit decreasing-height shelf packing, a textbook method; pieces are not turned";

    private final boolean shrinks;
    private final Skin skin;
    private final String laminate;
    private final double measuredArea;
    private final Node area;
    private final Ledger ledger;

    /** @param skin     how the laminate is laid
     *  @param laminate the ids of its figures begin with this
     *  @param area     of it; the fields were measured at {@code measuredArea} and grow with it */
    MatOrder(Spec spec, Skin skin, String laminate, Node area, double measuredArea, Ledger ledger) {
        this.shrinks = spec.body().shrink().ranged();
        this.skin = skin;
        this.laminate = laminate;
        this.measuredArea = measuredArea;
        this.area = area;
        this.ledger = ledger;
    }

    void write(CutList list) {
        Mat mat = list.mat();
        String id = laminate + ".mat." + mat.name() + ".";
        List<Node> inputs = inputs(list);
        Node width = inputs.getFirst();
        ledger.quantity(id + "pieces", "Mat " + mat.name() + ", pieces", RATIO)
                .from("(G - lap) / (W - lap), rounded up, for each field and ply", inputs, on(mat, list::count))
                .source("n widths less the laps between them cover the girth; all round, the last laps the first");
        Node packed = ledger.step("pieces of " + mat.name() + " packed on the roll", LENGTH)
                .from("length over all cuts with the pieces side by side", inputs, on(mat, cloth -> list.packed(cloth).length())).source(PACKING);
        if (mat.rollLength().isPresent())
            ledger.quantity(id + "rolls", "Mat " + mat.name() + ", rolls cut into", RATIO)
                    .from("cuts one after the other, none over the end of a roll", inputs, on(mat, cloth -> list.packed(cloth).rolls())).source(PACKING);
        Node pieces = ledger.step("area of the pieces of " + mat.name(), AREA)
                .from("width x length of each piece, laps included", inputs, on(mat, list::area)).source("closed form");
        Node length = ledger.quantity(id + "length", "Mat " + mat.name() + ", off the roll", LENGTH)
                .from("packed length x (1 + spoilt share)", List.of(packed, ledger.given(LaminateDefaults.spoiltMat())), v -> v[0] * (1 + v[1]))
                .source("orders come from pieces packed on rolls");
        ledger.quantity(id + "offcut", "Mat " + mat.name() + ", offcuts", AREA)
                .from("packed length x roll width - pieces", List.of(packed, width, pieces), v -> Math.max(0, v[0] * v[1] - v[2])).source("closed form");
        ledger.quantity(id + "roll.mass", "Mat " + mat.name() + ", mass off the roll", MASS)
                .from("length x roll width x areal mass", List.of(length, width, ledger.given(mat.areal())), v -> v[0] * v[1] * v[2]).source("closed form");
    }

    /** Width and lap, the plug's surface where it is uncertain, then what is measured. */
    private List<Node> inputs(CutList list) {
        List<Node> inputs = new ArrayList<>(List.of(ledger.given(MatFacts.rollWidth(list.mat())), ledger.given(skin.lap())));
        inputs.add(shrinks ? area : ledger.measured("surface as measured", AREA, Places.exact(measuredArea, "moulded patches")));
        list.mat().rollLength().ifPresent(length -> inputs.add(ledger.given(length)));
        Set<SkinMeasures.Field> fields = new LinkedHashSet<>();
        list.layings().forEach(each -> fields.addAll(each.laying().fields()));
        for (SkinMeasures.Field field : fields) {
            inputs.add(ledger.measured("girth to cover, " + field.words(), LENGTH,
                    Places.exact(field.runs().total(), "moulded girth where the field is widest, both sides")));
            inputs.add(ledger.measured("longest way along, " + field.words(), LENGTH,
                    Places.exact(field.longest(), "over the surface at a fixed share of the girth")));
        }
        return inputs;
    }

    /** What is asked of a cut list. */
    private interface Asked {
        double of(CutList.Cloth cloth);
    }

    private Formula on(Mat mat, Asked asked) {
        boolean known = mat.rollLength().isPresent();
        return v -> asked.of(new CutList.Cloth(v[0], known ? v[3] : Double.POSITIVE_INFINITY, v[1], Math.sqrt(v[2] / measuredArea)));
    }
}
