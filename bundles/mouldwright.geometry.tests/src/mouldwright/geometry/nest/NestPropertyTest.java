package mouldwright.geometry.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds for any parts: star-shaped outlines with spikes and dents, some with openings of the same kind. */
class NestPropertyTest {

    private static Outline star(Random random, double size) {
        int corners = 3 + random.nextInt(20);
        List<PlanePoint> points = new ArrayList<>();
        for (int k = 0; k < corners; k++) {
            double angle = 2 * Math.PI * (k + 0.8 * random.nextDouble()) / corners, radius = size * (0.35 + 0.65 * random.nextDouble());
            points.add(new PlanePoint(radius * Math.cos(angle), radius * Math.sin(angle)));
        }
        return Outline.of(points);
    }

    private static NestOrder order(long seed, int count, double kerf, double margin, List<Turns> turns) {
        Random random = new Random(seed);
        List<NestPart> parts = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            Outline outer = star(random, 0.05 + 0.3 * random.nextDouble());
            double inner = 0.9 * outer.distance(new PlanePoint(0, 0));
            boolean opened = outer.contains(new PlanePoint(0, 0)) && random.nextBoolean();
            parts.add(new NestPart("p" + k, outer, opened ? List.of(star(random, inner)) : List.of(), turns.get(random.nextInt(turns.size()))));
        }
        return new NestOrder(1.3, 0.7, kerf, margin, parts, 12, seed);
    }

    @Property(tries = 25)
    void noTwoPartsComeNearerThanTheCut(@ForAll long seed, @ForAll @IntRange(min = 1, max = 14) int count, @ForAll @IntRange(min = 0, max = 8) int kerf,
            @ForAll @IntRange(min = 0, max = 20) int margin) {
        LaidApart.check(Nester.nest(order(seed, count, kerf / 1000.0, margin / 1000.0, List.of(Turns.NONE, Turns.QUARTERS, Turns.ACROSS)), p -> { }, () -> false));
    }

    @Property(tries = 10)
    void turnedFreelyTheyStayApartToo(@ForAll long seed) {
        LaidApart.check(Nester.nest(order(seed, 4, 0.005, 0.01, List.of(Turns.FREE)), p -> { }, () -> false));
    }

    /** What lies on a sheet has a place there when it is laid alone too. */
    @Property(tries = 10)
    void aPartIsTooLargeWhateverElseIsLaid(@ForAll long seed) {
        NestOrder order = order(seed, 8, 0.005, 0.2, List.of(Turns.QUARTERS));
        Nest nest = Nester.nest(order, p -> { }, () -> false);
        for (NestPart part : order.parts())
            assertThat(Nester.nest(new NestOrder(1.3, 0.7, 0.005, 0.2, List.of(part), 1, 1), p -> { }, () -> false).tooLarge().isEmpty())
                    .isEqualTo(nest.placements().stream().anyMatch(p -> p.part() == part));
    }
}
