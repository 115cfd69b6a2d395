package mouldwright.drawing.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Optional;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Layer;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.nest.NestOrder;
import mouldwright.geometry.nest.NestPart;
import mouldwright.geometry.nest.Nester;
import mouldwright.geometry.nest.Turns;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.sheets.SheetLayout;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Material;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Sheet;
import mouldwright.units.Dimension;
import org.junit.jupiter.api.Test;

/** A sheet as drawn, against where its parts lie. */
class NestedSheetTest {

    private static final Origin MADE_UP = new Origin.Assumed("made up");

    private static Outline box(double y, double z, double width, double height) {
        return Outline.of(List.of(new PlanePoint(y, z), new PlanePoint(y + width, z), new PlanePoint(y + width, z + height), new PlanePoint(y, z + height)));
    }

    /** A lath of 100 by 900 mm with a hole of 8 mm, 50 mm from its foot; it fits a sheet of 1 m by 0.5 m only turned. */
    private static SheetLayout lath() {
        PlatePart lath = new PlatePart("plate.S1", PlatePart.Kind.PLATE, "S1", box(0, 0, 0.1, 0.9), List.of(new PlatePart.Opening(PlatePart.Opening.Use.POCKET, box(0.03, 0.3, 0.04, 0.3))),
                List.of(new PlatePart.Bore(new PlanePoint(0.05, 0.05), 0.008, "dowel")), List.of(), List.of(), List.of(),
                List.of(new PlatePart.Note("S1", new PlanePoint(0.05, 0.8), 0.01, 0)), "Ply", 0.012, 1);
        Sheet sheet = new Sheet("Ply", Defaults.sheetWidth(), Defaults.sheetLength(), Given.of("sheet thickness", Dimension.LENGTH, 0.012, MADE_UP), Defaults.sheetDensity(),
                Optional.empty(), Optional.empty(), Sheet.Grain.ANY, Material.Stock.plain(MADE_UP));
        NestPart piece = new NestPart(lath.key(), lath.outer(), lath.openings().stream().map(PlatePart.Opening::ring).toList(), Turns.QUARTERS);
        return new SheetLayout(sheet, 0.012, Defaults.kerf(), Defaults.margin(), List.of(lath),
                Nester.nest(new NestOrder(1, 0.5, 0.003, 0.01, List.of(piece), 1, 1), progress -> { }, () -> false));
    }

    private static List<Mark> marks(Drawing drawing, Role role) {
        return drawing.layers().stream().filter(layer -> layer.role() == role).flatMap(layer -> layer.items().stream()).map(Layer.Item::mark).toList();
    }

    @Test void cutLinesStandWhereThePartLies() {
        Drawing drawing = NestedSheet.of(lath(), 0, "P 1");
        Mark.Line cut = (Mark.Line) marks(drawing, Role.CUT).getFirst();
        assertThat(cut.extent().left()).isCloseTo(10, offset(1e-3));
        assertThat(cut.extent().bottom()).isCloseTo(10, offset(1e-3));
        assertThat(cut.extent().width()).isCloseTo(900, offset(1e-3));
        assertThat(cut.extent().height()).isCloseTo(100, offset(1e-3));
    }

    /** The hole stays 50 mm from the end of the lath and in the middle of it, however it is turned. */
    @Test void whatIsMarkedOnAPartGoesWithIt() {
        Drawing drawing = NestedSheet.of(lath(), 0, "P 1");
        Mark.Circle hole = (Mark.Circle) marks(drawing, Role.CUT).stream().filter(Mark.Circle.class::isInstance).findFirst().orElseThrow();
        assertThat(hole.radius()).isCloseTo(4, offset(1e-9));
        assertThat(Math.min(hole.centre().x() - 10, 910 - hole.centre().x())).isCloseTo(50, offset(1e-3));
        assertThat(hole.centre().y()).isCloseTo(60, offset(1e-3));
        assertThat(marks(drawing, Role.TEXT)).anySatisfy(mark -> assertThat(((Mark.Words) mark).angle()).isIn(90.0, 270.0));
    }

    /** Shoelace: lath less pocket is 100 x 900 - 40 x 300 mm2. */
    @Test void theFilledAreaIsTheWood() {
        Mark.Area area = (Mark.Area) marks(NestedSheet.of(lath(), 0, "P 1"), Role.AREA).getFirst();
        assertThat(shoelace(area.rings().get(0)) - shoelace(area.rings().get(1))).isCloseTo(100 * 900 - 40 * 300, offset(0.1));
    }

    private static double shoelace(Path ring) {
        List<Spot> spots = ring.flattened(1);
        double twice = 0;
        for (int i = 0; i < spots.size(); i++) {
            Spot a = spots.get(i), b = spots.get((i + 1) % spots.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }

    @Test void theSheetItselfIsDrawnAtFullSizeAndNamed() {
        Drawing drawing = NestedSheet.of(lath(), 0, "P 1");
        assertThat(marks(drawing, Role.SHEET).getFirst().extent()).isEqualTo(new mouldwright.drawing.Extent(0, 0, 1000, 500));
        assertThat(drawing.title()).isEqualTo("Ply, sheet 1 of 1");
        assertThat(drawing.words()).contains("12.0 mm", "500 by 1000 mm", "S1");
        assertThat(NestedSheet.of(List.of(lath(), lath()), "P 1")).hasSize(2);
    }
}
