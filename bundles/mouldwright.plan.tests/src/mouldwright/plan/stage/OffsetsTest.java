package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.OffsetTable;
import mouldwright.plan.OffsetTable.Measure;
import mouldwright.plan.OffsetTable.Surface;
import mouldwright.plan.spec.Form;
import org.junit.jupiter.api.Test;

/** Tables of offsets against the parabolic hull of W. C. S. Wigley (1934), y = B/2 (1 - (2x/L)^2)(1 - (z/T)^2), and a cylinder. */
class OffsetsTest {

    private static final double LENGTH = 2, BREADTH = 0.4, DRAUGHT = 0.3;

    private static double wigley(double x, double z) { // z above the keel
        double along = 2 * (x - LENGTH / 2) / LENGTH, down = (DRAUGHT - z) / DRAUGHT;
        return BREADTH / 2 * (1 - along * along) * (1 - down * down);
    }

    private static OffsetTable hull() {
        Specs specs = new Specs();
        for (int i = 1; i < 20; i++) {
            double x = LENGTH * i / 20;
            List<Form.Point> points = new ArrayList<>(List.of(Form.Point.knuckle(0, 0, Specs.line(20, "keel"))));
            for (int k = 1; k <= 10; k++)
                points.add(Form.Point.smooth(wigley(x, DRAUGHT * k / 10), DRAUGHT * k / 10, Specs.line(20, "point")));
            specs.station("W" + i, x, new Form.Points(points, List.of()));
        }
        return Offsets.of(plan(specs), 0.05).orElseThrow();
    }

    @Test void halfBreadthsAreThoseOfWigleysHull() {
        OffsetTable table = hull();
        List<OffsetTable.Row> rows = rows(table, Measure.HALF_BREADTH).stream().filter(row -> row.at() > 0.02).toList();
        assertThat(rows).hasSize(5).allSatisfy(row -> {
            for (int i = 0; i < table.stations().size(); i++)
                assertThat(row.values().get(i).getAsDouble()).as(table.stations().get(i).name()).isCloseTo(wigley(table.stations().get(i).x(), row.at()), within(1e-4));
        });
    }

    @Test void heightsOfButtocksAreThoseOfWigleysHull() { // closed form: z = T - T sqrt(1 - y / (B/2 (1 - (2x/L)^2))) above the keel
        OffsetTable table = hull();
        OffsetTable.Row row = rows(table, Measure.HEIGHT_BELOW).stream().filter(r -> Math.abs(r.at() - 0.1) < 1e-9).findFirst().orElseThrow();
        double along = 1 - Math.pow(2 * (table.stations().get(9).x() - 1) / LENGTH, 2);
        assertThat(row.values().get(9).getAsDouble()).isCloseTo(DRAUGHT - DRAUGHT * Math.sqrt(1 - 0.1 / (BREADTH / 2 * along)), within(1e-4));
    }

    private static List<OffsetTable.Row> rows(OffsetTable table, Measure measure) {
        return table.rows().stream().filter(row -> row.surface() == Surface.FINISHED && row.measure() == measure).toList();
    }

    @Test void girthsAndDiagonalsOfACylinderAreThoseOfACircle() { // closed form
        OffsetTable table = Offsets.of(plan(Specs.cylinder().frame(Specs.frame(0.012)).skin(Specs.skin(Specs.schedule(Specs.csm450())))), 0.1).orElseThrow();
        assertThat(rows(table, Measure.GIRTH).getFirst().values()).allSatisfy(girth -> assertThat(girth.getAsDouble()).isCloseTo(2 * Math.PI * 0.3, within(1e-4)));
        for (Measure diagonal : List.of(Measure.DIAGONAL_UP, Measure.DIAGONAL_DOWN))
            assertThat(rows(table, diagonal).getFirst().values()).allSatisfy(length -> assertThat(length.getAsDouble()).isCloseTo(0.3, within(2e-5)));
        assertThat(table.diagonals()).isCloseTo(0.5, within(1e-5));
    }

    @Test void platesAreSmallerThanTheFinishedSurfaceByTheSkin() { // ISO 12215-5: 450 g at 1 : 2.5 is 1.1133 mm
        OffsetTable table = Offsets.of(plan(Specs.cylinder().frame(Specs.frame(0.012)).skin(Specs.skin(Specs.schedule(Specs.csm450())))), 0.1).orElseThrow();
        OffsetTable.Row plate = table.rows().stream().filter(row -> row.surface() == Surface.PLATE && row.measure() == Measure.HALF_BREADTH && Math.abs(row.at() - 0.5) < 1e-9)
                .findFirst().orElseThrow();
        assertThat(plate.values()).hasSize(4).allSatisfy(value -> assertThat(value.getAsDouble()).isCloseTo(0.3 - 0.0011133, within(2e-5)));
    }

    @Test void linesTooNearEachOtherAreRefused() {
        assertThat(Offsets.of(plan(Specs.cylinder()), 0.001)).isEmpty();
    }

    @Test void whereNoPlateStandsItsOffsetsAreEmpty() {
        OffsetTable table = Offsets.of(plan(new Specs().station("A", 0, Specs.circle(0.3, 0.5)).station("B", 0.4, Specs.circle(0.3, 0.5), false)
                .station("C", 0.8, Specs.circle(0.3, 0.5)).frame(Specs.frame(0.012))), 0.1).orElseThrow();
        assertThat(table.rows()).filteredOn(row -> row.surface() == Surface.PLATE).isNotEmpty().allSatisfy(row -> assertThat(row.values().get(1)).isEmpty());
    }

    @Test void keelAndSheerOfAHullStandInTheTableByName() { // the sheer of Wigley's hull is its waterline: half its breadth amidships, at its draught
        OffsetTable table = hull();
        assertThat(rows(table, Measure.LINE_HALF_BREADTH)).singleElement().satisfies(row -> {
            assertThat(row.line()).isEqualTo("sheer");
            assertThat(row.values().get(9).getAsDouble()).isCloseTo(BREADTH / 2, within(1e-9));
        });
        assertThat(rows(table, Measure.LINE_HEIGHT).getFirst().values()).allSatisfy(height -> assertThat(height.getAsDouble()).isCloseTo(DRAUGHT, within(1e-9)));
    }
}
