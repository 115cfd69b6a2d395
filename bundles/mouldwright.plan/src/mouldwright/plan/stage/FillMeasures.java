package mouldwright.plan.stage;

import java.util.List;
import mouldwright.geometry.fill.Cavity;
import mouldwright.geometry.measure.Measured;
import mouldwright.plan.spec.Fill;

/** What is measured of the foam.
 *  @param bays those that can be filled, in order */
public record FillMeasures(List<BayFill> bays) {

    /** How a volume answers to what it was measured with.
     *  @param toBuildUp how it answers to the build-up
     *  @param toShrink  how it answers to the shrink
     *  @param toSheet   how it answers to the sheet's thickness */
    public record Answers(Response toBuildUp, Response toShrink, Response toSheet) { }

    /** The foam of a bay.
     *  @param core      solid or a shell
     *  @param attitude  in which it is poured
     *  @param cavity    for sections and drawings
     *  @param poured    with overfill, and half of what runs over the edge of each plate between bays, m3
     *  @param trim      what is carved off again, m3
     *  @param height    across gravity, overfill included, m
     *  @param lifts     volume of each, from the lowest, m3
     *  @param answers     how the poured volume answers to what has a range
     *  @param trimAnswers how what is carved off answers to it */
    public record BayFill(Bay bay, Fill.Core core, Fill.Attitude attitude, Cavity cavity, Measured poured, Measured trim,
            double height, List<Measured> lifts, Answers answers, Answers trimAnswers) {
        /** Copies its list. */
        public BayFill {
            lifts = List.copyOf(lifts);
        }
    }

    /** Copies its list. */
    public FillMeasures {
        bays = List.copyOf(bays);
    }
}
