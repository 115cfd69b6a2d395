package mouldwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What lies under a pointer. Distances are read off the figures drawn. */
class PickTest {

    private static final Mark.Fill GREY = new Mark.Fill.Even(Tone.FAINT, 1);

    private static Path box(double left, double bottom, double right, double top) {
        return Path.box(new Extent(left, bottom, right, top));
    }

    private static Drawing drawing(Draughtsman draughtsman) {
        return draughtsman.finish("Test", "a test", 5);
    }

    @Test void aLineIsPickedFromWithinReachAndNotFromBeyond() {
        Drawing line = drawing(new Draughtsman().about("station.S1").line(Role.SURFACE, new Spot(0, 0), new Spot(100, 0)));
        assertThat(Pick.at(line, new Spot(50, 1.9), 2)).contains("station.S1");
        assertThat(Pick.at(line, new Spot(50, 2.1), 2)).isEmpty();
    }

    @Test void ofTwoLinesTheNearerIsPicked() {
        Drawing lines = drawing(new Draughtsman().about("station.S1").line(Role.SURFACE, new Spot(0, 0), new Spot(0, 100)).about("station.S2")
                .line(Role.SURFACE, new Spot(3, 0), new Spot(3, 100)));
        assertThat(Pick.at(lines, new Spot(1.4, 50), 5)).contains("station.S1");
        assertThat(Pick.at(lines, new Spot(1.6, 50), 5)).contains("station.S2");
    }

    @Test void anAreaIsPickedInsideItAndNotInItsHole() {
        Drawing area = drawing(new Draughtsman().about("bay.S1-S2").draw(Role.FOAM, new Mark.Area(List.of(box(0, 0, 100, 100), box(40, 40, 60, 60)), GREY)));
        assertThat(Pick.at(area, new Spot(20, 50), 1)).contains("bay.S1-S2");
        assertThat(Pick.at(area, new Spot(50, 50), 1)).isEmpty();
    }

    @Test void aLineLiesBeforeTheAreaItBounds() {
        Drawing both = drawing(new Draughtsman().about("bay.S1-S2").draw(Role.FOAM, new Mark.Area(List.of(box(0, 0, 100, 100)), GREY)).about("station.S2")
                .line(Role.PLATE, new Spot(100, 0), new Spot(100, 100)));
        assertThat(Pick.at(both, new Spot(99.5, 50), 1)).contains("station.S2");
    }

    @Test void whatHasNoKeyIsNotPicked() {
        Drawing sheet = drawing(new Draughtsman().line(Role.SHEET, new Spot(0, 0), new Spot(100, 0)));
        assertThat(Pick.at(sheet, new Spot(50, 0), 5)).isEmpty();
    }

    @Test void theClosingStrokeOfAPathBelongsToIt() {
        Drawing closed = drawing(new Draughtsman().about("station.S1").path(Role.SURFACE, box(0, 0, 100, 100)));
        assertThat(Pick.at(closed, new Spot(0, 50), 1)).contains("station.S1");
    }
}
