package mouldwright.check;

import java.util.List;
import mouldwright.plan.BuildPlan;

/** All checks of a plan. A new check is one class and one line here. */
public final class Catalogue {

    private static final List<Check> ALL = List.of(
            new CannotBeBuilt(),
            new CornerTooSharp(),
            new PointOffTheCurve(),
            new BuildUpStep(),
            new BevelTooSteep(),
            new GapTooWide(),
            new ShopOutsideFoam(),
            new FoamFiguresDisagree(),
            new OverfillTooLow(),
            new LiftsNeeded(),
            new BroadShallow(),
            new CavityTooNarrow(),
            new StillHot(),
            new TrialCup(),
            new CrownTooHigh(),
            new BoardTooShort(),
            new BelowThePlateEdge(),
            new PlateNotTrue(),
            new FillerTooThick(),
            new NotMeasuredAgain(),
            new FaceUncovered(),
            new FaceShortOfPlies(),
            new LapTooNarrow(),
            new PlyOverBareFace(),
            new PlyEdgesStacked(),
            new HeavyMatOnGelCoat(),
            new TooManyPliesAtOnce(),
            new GlassOutsideRange());

    private Catalogue() { }

    /** What all checks find in a plan.
     *  @return findings in the order of the catalogue */
    public static List<Finding> examine(BuildPlan plan) {
        Findings findings = new Findings();
        for (Check check : ALL)
            check.examine(plan, findings);
        return findings.all();
    }
}
