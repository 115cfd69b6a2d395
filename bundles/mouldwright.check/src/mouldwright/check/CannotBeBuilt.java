package mouldwright.check;

import java.util.Comparator;
import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Station;

/** What the stages met while measuring and could not, or only with trouble, make sense of. */
final class CannotBeBuilt implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        for (PlanFault fault : plan.faults())
            out.add(new Finding(code(fault.kind()), severity(fault.kind()), fault.place(), message(fault), fault.remedy(), fixes(fault, plan)));
    }

    /** Stations out of order are sorted. */
    private static List<Fix> fixes(PlanFault fault, BuildPlan plan) {
        List<Station> stations = plan.spec().body().stations();
        List<Station> sorted = stations.stream().sorted(Comparator.comparingDouble(Station::x)).toList();
        if (fault.kind() != PlanFault.Kind.LOFT || sorted.equals(stations))
            return List.of();
        return List.of(Fix.of("sort the stations", new Remedy.Reorder(sorted.stream().map(Station::origin).distinct().toList())));
    }

    private static String message(PlanFault fault) {
        String figure = fault.figure().map(f -> Findings.figure(f.value(), f.dimension())).orElse("");
        String limit = fault.limit().map(f -> Findings.figure(f.value(), f.dimension())).orElse("");
        String figures = figure.isEmpty() || limit.isEmpty() ? figure + limit : figure + " against " + limit;
        return fault.message() + (figures.isEmpty() ? "" : " (" + figures + ")");
    }

    private static String code(PlanFault.Kind kind) {
        return switch (kind) {
            case SECTION -> "MW101";
            case SECTION_DOUBTFUL -> "MW102";
            case LOFT -> "MW103";
            case STATION_OUTSIDE -> "MW104";
            case PLATE_VANISHED -> "MW201";
            case PLATE_SPLIT -> "MW202";
            case END_PLATE_LARGER_OUTSIDE -> "MW203";
            case BAY_SHUT -> "MW204";
            case PART_FLAWED -> "MW213";
            case NO_CAVITY -> "MW301";
            case SHELL_TOO_THICK -> "MW302";
            case CREAM_TOO_SHORT -> "MW303";
            case TOO_MANY_LIFTS -> "MW304";
            case SURVEY_OUTSIDE -> "MW440";
            case POCKET_OPEN -> "MW315";
            case ROLL_TOO_NARROW -> "MW503";
            case NO_PLY -> "MW504";
            case TOO_MANY_PIECES -> "MW511";
            case PIECE_TOO_LONG -> "MW512";
            case GEL_OUTSIDE_TABLE -> "MW601";
            case CATALYST_CLAMPED -> "MW602";
            case NO_CATALYST -> "MW603";
            case CIRCULAR_PRECEDENCE -> "MW801";
            case TASK_TOO_LONG -> "MW802";
            case OTHER_CURRENCY -> "MW803";
            case PACK_MEASURE -> "MW804";
            case FIGURE -> "MW906";
            case NAME -> "MW902";
        };
    }

    private static Severity severity(PlanFault.Kind kind) {
        return switch (kind) {
            case SECTION, LOFT, STATION_OUTSIDE, PLATE_VANISHED, PLATE_SPLIT, PART_FLAWED, BAY_SHUT, NO_CAVITY, TOO_MANY_LIFTS, CREAM_TOO_SHORT, ROLL_TOO_NARROW, NO_PLY, TOO_MANY_PIECES, FIGURE,
                    NAME, CIRCULAR_PRECEDENCE, TASK_TOO_LONG -> Severity.ERROR;
            case SECTION_DOUBTFUL, SURVEY_OUTSIDE, END_PLATE_LARGER_OUTSIDE, POCKET_OPEN, SHELL_TOO_THICK, GEL_OUTSIDE_TABLE, CATALYST_CLAMPED, NO_CATALYST, OTHER_CURRENCY, PACK_MEASURE, PIECE_TOO_LONG -> Severity.WARNING;
        };
    }
}
