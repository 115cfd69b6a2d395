package mouldwright.plan.stage;

import java.util.List;

/** The stages, in the order of the build. */
public final class Stages {

    private static final List<Stage> ALL = List.of(
            new ShapeStage(),
            new FrameStage(),
            new FillStage(),
            new CarveStage(),
            new FairStage(),
            new SkinStage(),
            new FinishStage(),
            new ReleaseStage(),
            new MouldStage(),
            new MassStage(),
            new ProgrammeStage(),
            new OrderStage(),
            new CostStage(),
            new AirStage());

    private Stages() { }

    /** @return all stages, earlier ones first */
    public static List<Stage> all() {
        return ALL;
    }
}
