package mouldwright.services;

import mouldwright.plan.PlanFault;
import mouldwright.report.Severity;

/** Codes of the findings that are made here, and how much each weighs. */
final class Codes {

    /** A file that was not read. */
    static final String UNREAD = "MW990";
    /** A line of the project file. */
    static final String PROJECT = "MW991";
    /** A file with nothing in it. */
    static final String EMPTY = "MW992";
    /** Brackets or blocks too deep to follow. */
    static final String TOO_DEEP = "MW993";

    private Codes() { }

    static String of(PlanFault.Kind kind) {
        return switch (kind) {
            case SECTION -> "MW101";
            case SECTION_DOUBTFUL -> "MW102";
            case LOFT -> "MW103";
            case STATION_OUTSIDE -> "MW104";
            case PLATE_VANISHED -> "MW201";
            case PLATE_SPLIT -> "MW202";
            case END_PLATE_LARGER_OUTSIDE -> "MW203";
            case BAY_SHUT -> "MW204";
            case NO_CAVITY -> "MW301";
            case SHELL_TOO_THICK -> "MW302";
            case CREAM_TOO_SHORT -> "MW303";
            case NO_PLY -> "MW501";
            case ROLL_TOO_NARROW -> "MW502";
            case GEL_OUTSIDE_TABLE -> "MW601";
            case CATALYST_CLAMPED -> "MW602";
            case NO_CATALYST -> "MW603";
            case NAME -> "MW902";
            case FIGURE -> "MW906";
        };
    }

    /** A fault that takes figures out of the plan is an error; one the plan finds a way round is a warning. */
    static Severity severity(PlanFault.Kind kind) {
        return switch (kind) {
            case SECTION_DOUBTFUL, END_PLATE_LARGER_OUTSIDE, SHELL_TOO_THICK, CREAM_TOO_SHORT, GEL_OUTSIDE_TABLE, CATALYST_CLAMPED ->
                    Severity.WARNING;
            case FIGURE, SECTION, LOFT, NAME, STATION_OUTSIDE, PLATE_VANISHED, PLATE_SPLIT, BAY_SHUT, NO_CAVITY, NO_CATALYST,
                    ROLL_TOO_NARROW, NO_PLY -> Severity.ERROR;
        };
    }
}
