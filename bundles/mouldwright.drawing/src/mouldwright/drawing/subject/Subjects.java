package mouldwright.drawing.subject;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.FileFormat.NamedDrawing;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.PourEntry;
import mouldwright.plan.stage.ShapeMeasures;

/** What can be drawn of a plan, by name. A new drawing is one constant here. */
public enum Subjects {
    /** The whole plug from the side, from above and in its stations. */
    LINES("lines", (plan, code) -> one("lines", LinesDrawing.of(plan, code))),
    /** Each station at scale. */
    SECTIONS("sections", (plan, code) -> stations(plan).stream().flatMap(name -> named("section-" + name, SectionDrawing.of(plan, name, code)).stream()).toList()),
    /** The foam of each bay with its lifts. */
    POURS("pours", (plan, code) -> plan.pours().stream().map(PourEntry::bay).distinct().flatMap(bay -> named("pour-" + bay, PourDrawing.of(plan, bay, code)).stream()).toList()),
    /** Each ply of the skin, unrolled. */
    PLIES("plies", (plan, code) -> numbered("ply-", PlyDrawing.of(plan, code))),
    /** The parting boards of the mould, laid out flat. */
    BOARDS("boards", (plan, code) -> one("boards", BoardDrawing.of(plan, code))),
    /** What the plates are set up by: the base with its datum points, and each plate on it. */
    ALIGNMENT("alignment", (plan, code) -> Stream.concat(one("alignment", AlignmentDrawing.of(plan, code)).stream(),
            plan.alignment().stream().flatMap(sheet -> sheet.rows().stream()).flatMap(row -> named("alignment-" + row.station(), SettingDrawing.of(plan, row, code)).stream())).toList()),
    /** All tasks on a time axis. */
    PROGRAMME("programme", (plan, code) -> one("programme", ProgrammeDrawing.of(plan, code)));

    private final String name;
    private final BiFunction<BuildPlan, String, List<NamedDrawing>> maker;

    Subjects(String name, BiFunction<BuildPlan, String, List<NamedDrawing>> maker) {
        this.name = name;
        this.maker = maker;
    }

    /** Its name, as asked for. */
    public String subject() {
        return name;
    }

    /** Draws it.
     *  @param code of plug and revision, written on each drawing
     *  @return nothing where the plan does not come that far */
    public List<NamedDrawing> draw(BuildPlan plan, String code) {
        return maker.apply(plan, code);
    }

    /** The section of one station; nothing where the body has none there. @param code of plug and revision */
    public static Optional<Drawing> section(BuildPlan plan, String station, String code) {
        return SectionDrawing.of(plan, station, code);
    }

    /** The names of all drawings of a plan, in the order they are drawn. @param code of plug and revision */
    public static List<String> names(BuildPlan plan, String code) {
        return Arrays.stream(values()).flatMap(subject -> subject.draw(plan, code).stream()).map(NamedDrawing::name).toList();
    }

    /** One drawing by its name, such as {@code section-S3}.
     *  @param code of plug and revision
     *  @return nothing where the plan has none of that name */
    public static Optional<Drawing> named(BuildPlan plan, String name, String code) {
        if (name.startsWith("section-"))
            return section(plan, name.substring("section-".length()), code);
        return Arrays.stream(values()).flatMap(subject -> subject.draw(plan, code).stream()).filter(one -> one.name().equals(name)).map(NamedDrawing::drawing).findFirst();
    }

    private static List<String> stations(BuildPlan plan) {
        return plan.measurements().find(ShapeMeasures.class).map(shape -> shape.stations().stream().map(at -> at.station().name()).toList()).orElse(List.of());
    }

    private static List<NamedDrawing> numbered(String name, List<Drawing> drawings) {
        return IntStream.range(0, drawings.size()).mapToObj(i -> new NamedDrawing(name + (i + 1), drawings.get(i))).toList();
    }

    private static List<NamedDrawing> one(String name, Optional<Drawing> drawing) {
        return named(name, drawing).stream().toList();
    }

    private static Optional<NamedDrawing> named(String name, Optional<Drawing> drawing) {
        return drawing.map(drawn -> new NamedDrawing(name, drawn));
    }
}
