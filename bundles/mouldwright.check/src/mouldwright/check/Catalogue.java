package mouldwright.check;

import java.util.List;
import mouldwright.plan.BuildPlan;

/** All checks of a plan. A new check is one class and one line here. */
public final class Catalogue {

    /** A point that stands off the curve of its neighbours. */
    private static final String SLIP = "MW106";

    private static final List<Check> ALL = List.of(
            new CannotBeBuilt(),
            new CornerTooSharp(),
            new PointOffTheCurve(),
            new BuildUpStep(),
            new BevelTooSteep(),
            new GapTooWide(),
            new SheetAllMargin(),
            new WebTooThin(),
            new LargerThanSheet(),
            new SlotNotMatching(),
            new BackboneOutside(),
            new ThicknessNotMeasured(),
            new HoleMissesPlate(),
            new RailsTooNear(),
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
            new GlassOutsideRange(),
            new SandedTacky(),
            new RecoatMissed(),
            new StiffenerBeforeCure(),
            new StiffenerShowsThrough(),
            new MouldUndercut(),
            new DraftTooLow(),
            new MouldTooThin(),
            new FlangeTooNarrow(),
            new ReleaseCoats(),
            new HoldTooShort(),
            new FilmTooThick(),
            new GritStepTooCoarse(),
            new StyreneProof(),
            new MouldLeavesFace(),
            new NoRunOut(),
            new PriceMissing(),
            new TooHeavyToLift(),
            new AirShort(),
            new ReadyTooLate(),
            new ReadyTooSoon());

    private Catalogue() { }

    /** What all checks find in a plan.
     *  @return findings in the order of the catalogue */
    public static List<Finding> examine(BuildPlan plan) {
        Findings findings = new Findings();
        for (Check check : ALL)
            check.examine(plan, findings);
        return withoutConsequences(findings.all());
    }

    /** A shape that is wrong makes plates, foam and boards look wrong too; what follows from it is held back until it is mended. */
    private static List<Finding> withoutConsequences(List<Finding> all) {
        List<Finding> cannot = all.stream().filter(finding -> finding.severity() == Severity.ERROR && finding.code().startsWith("MW1")).toList();
        if (!cannot.isEmpty())
            return all.stream().filter(finding -> finding.severity() == Severity.ERROR && finding.code().startsWith("MW1") || finding.code().equals(SLIP)).toList();
        if (all.stream().noneMatch(finding -> finding.code().equals(SLIP)))
            return all;
        return all.stream().filter(finding -> finding.code().equals(SLIP) || !finding.code().matches("MW(102|2..|3..|4..)")).toList();
    }
}
