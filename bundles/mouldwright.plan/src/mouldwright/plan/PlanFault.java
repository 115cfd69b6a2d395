package mouldwright.plan;

import java.util.Objects;
import java.util.Optional;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;

/** Something met while planning that cannot be built as stated, or only with trouble. A value, never an exception; a
 *  check may make a finding with a code of it.
 *  @param kind    what is wrong
 *  @param place   where in the text
 *  @param what    the part concerned, such as {@code station S2} or {@code bay S1-S2}
 *  @param message what is wrong, in words
 *  @param figure  the figure that is wrong
 *  @param limit   what it would have to keep
 *  @param remedy  what mends it, in words */
public record PlanFault(Kind kind, Origin place, String what, String message, Optional<Figure> figure,
        Optional<Figure> limit, String remedy) {

    /** What can be wrong. */
    public enum Kind {
        /** A stated figure that cannot be. */ FIGURE,
        /** A section cannot be made of what its station states. */ SECTION,
        /** The section was made, but looks wrong. */ SECTION_DOUBTFUL,
        /** Stations do not make a body. */ LOFT,
        /** A name that is not there, or twice. */ NAME,
        /** A lofted station outside the body. */ STATION_OUTSIDE,
        /** Nothing is left of a plate. */ PLATE_VANISHED,
        /** A plate falls into pieces. */ PLATE_SPLIT,
        /** An end plate whose outer face is the larger one. */ END_PLATE_LARGER_OUTSIDE,
        /** A part that cannot be cut as it comes out. */ PART_FLAWED,
        /** A plate's pocket opens on a bay that is poured solid. */ POCKET_OPEN,
        /** Plates leave no room between them. */ BAY_SHUT,
        /** No cavity to fill. */ NO_CAVITY,
        /** More lifts than any bay takes. */ TOO_MANY_LIFTS,
        /** A shell thicker than the section it lines. */ SHELL_TOO_THICK,
        /** Foam that creams before any pot is mixed and poured. */ CREAM_TOO_SHORT,
        /** A gel time outside the resin's table. */ GEL_OUTSIDE_TABLE,
        /** A gel time that the catalyst limits do not allow. */ CATALYST_CLAMPED,
        /** A shop too cold or warm for any catalyst guide. */ NO_CATALYST,
        /** A roll no wider than its lap. */ ROLL_TOO_NARROW,
        /** A skin without any ply. */ NO_PLY,
        /** Tasks that wait for each other. */ CIRCULAR_PRECEDENCE,
        /** A task that takes longer than any shop lives. */ TASK_TOO_LONG,
        /** A price in another currency than the plug's. */ OTHER_CURRENCY,
        /** A material used in one measure and sold in another, with nothing to turn one into the other. */ PACK_MEASURE,
        /** A reading of a survey that lies outside what was built. */ SURVEY_OUTSIDE,
        /** A skin cut in more pieces than anybody lays. */ TOO_MANY_PIECES,
        /** A piece longer than its roll. */ PIECE_TOO_LONG
    }

    /** A figure with its dimension.
     *  @param value SI */
    public record Figure(double value, Dimension dimension) { }

    /** Refuses missing parts. */
    public PlanFault {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(figure, "figure");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(remedy, "remedy");
    }

    /** A fault without a figure. */
    public static PlanFault of(Kind kind, Origin place, String what, String message, String remedy) {
        return new PlanFault(kind, place, what, message, Optional.empty(), Optional.empty(), remedy);
    }

    /** The same fault with its figure.
     *  @param value SI */
    public PlanFault at(double value, Dimension dimension) {
        return new PlanFault(kind, place, what, message, Optional.of(new Figure(value, dimension)), limit, remedy);
    }

    /** The same fault with its limit.
     *  @param value SI */
    public PlanFault against(double value, Dimension dimension) {
        return new PlanFault(kind, place, what, message, figure, Optional.of(new Figure(value, dimension)), remedy);
    }
}
