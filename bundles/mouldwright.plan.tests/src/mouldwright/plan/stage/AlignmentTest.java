package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.plan.Alignment;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Fittings;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Survey;
import mouldwright.units.Dimension;
import org.junit.jupiter.api.Test;

/** What plates are set up by. Diagonals go by Pythagoras in three dimensions. */
class AlignmentTest {

    private static final Alignment CONE = plan(Specs.cone().frame(Specs.frame(0.012))).alignment().orElseThrow();

    @Test void diagonalsAreThoseOfPythagoras() { // cone: the height line is its axis, where the half-breadth is the radius
        Alignment.Row second = CONE.rows().get(1);
        double radius = second.starboard();
        assertThat(radius).isBetween(0.5 - 0.2 / 3 - 0.0031, 0.5 - 0.2 / 3 + 0.0031);
        assertThat(second.height()).isCloseTo(0.6, within(1e-12));
        double along = 0.8 / 3, across = CONE.half() + radius;
        assertThat(second.toStarboard()).isCloseTo(Math.sqrt(along * along + across * across + 0.36), within(1e-9));
    }

    @Test void aBodyAlikeOnBothSidesHasEqualDiagonals() {
        assertThat(CONE.rows()).allSatisfy(row -> assertThat(row.toPort()).isCloseTo(row.toStarboard(), within(1e-9)));
    }

    @Test void offsetsAreThoseOfTheStationLines() {
        assertThat(CONE.rows()).extracting(Alignment.Row::offset).satisfies(offsets -> {
            for (int i = 0; i < 4; i++)
                assertThat(offsets.get(i)).isCloseTo(0.8 * i / 3, within(1e-12));
        });
    }

    @Test void theSquareIsThreeFourFive() {
        Alignment.Square square = CONE.square();
        assertThat(square.across() / 3).isCloseTo(square.along() / 4, within(1e-12));
        assertThat(square.diagonal()).isCloseTo(Math.hypot(square.across(), square.along()), within(1e-12));
        assertThat(square.across()).isLessThanOrEqualTo(CONE.half());
        assertThat(square.along()).isLessThanOrEqualTo(0.8);
    }

    @Test void datumPointsLieOutsideTheBroadestPlate() {
        assertThat(CONE.half()).isGreaterThan(0.5);
        assertThat(CONE.half() / 0.05).isCloseTo(Math.rint(CONE.half() / 0.05), within(1e-9));
    }

    @Test void datumPointsLieOnTheBoardWhereThereIsOne() { // 500 mm and a margin of 60: 10 mm inside the edge at most
        Frame plain = Specs.frame(0.012);
        Fittings none = Fittings.assumed();
        Fittings board = new Fittings(none.holes(), none.places(), none.join(), Optional.of(new Fittings.Base(plain.sheet(), Specs.given("margin", Dimension.LENGTH, 0.06), plain.origin())),
                none.strongback(), none.gauge());
        BuildPlan based = plan(Specs.cone().frame(new Frame(plain.sheet(), plain.thickness(), plain.clearance(), plain.edges(), plain.rim(), List.of(), plain.tolerance(), board, plain.origin())));
        double half = based.alignment().orElseThrow().half();
        assertThat(half).isGreaterThan(0.5).isLessThanOrEqualTo(0.55);
        assertThat(based.parts().stream().filter(part -> part.kind() == PlatePart.Kind.BASE).flatMap(part -> part.scores().stream()).filter(score -> score.label().startsWith("datum")))
                .hasSize(2).allSatisfy(score -> assertThat(Math.abs(score.points().getFirst().z())).isEqualTo(half));
    }

    @Test void theLastReadingOfASurveyIsHeldToTheTolerance() {
        assertThat(reading(setting(0.004, 0), setting(0.001, -0.0005))).isEqualTo(new Alignment.Reading(0.001, -0.0005, true));
        assertThat(reading(setting(0.004, 0)).within()).isFalse();
    }

    private static Alignment.Reading reading(Survey.Reading... settings) {
        Specs specs = Specs.cone().frame(Specs.frame(0.012));
        for (Survey.Reading setting : settings)
            specs.survey(setting);
        return plan(specs).alignment().orElseThrow().rows().get(1).reading().orElseThrow();
    }

    private static Survey.Reading setting(double leans, double high) {
        return new Survey.Reading.Setting("S2", leans, high, Specs.line(70, "station S2"));
    }

    @Test void onePlateAloneIsSetByNothing() {
        assertThat(plan(new Specs().station("A", 0, Specs.rectangle(0.1, 0.05)).station("B", 0.4, Specs.rectangle(0.1, 0.05), false)
                .frame(Specs.frame(0.012))).alignment()).isEmpty();
    }
}
