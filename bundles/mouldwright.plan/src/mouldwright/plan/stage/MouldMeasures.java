package mouldwright.plan.stage;

import java.util.List;
import java.util.Optional;
import mouldwright.geometry.draft.DraftReport;
import mouldwright.geometry.draft.PartEdge;
import mouldwright.geometry.draft.PartingStrip;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Stiffener;

/** What is measured of the mould, on the plug.
 *  @param pieces    its parts
 *  @param layings   what is laid, in order
 *  @param stiffened what stiffeners stand on its back, kind by kind
 *  @param boards    parting boards, one for each parting line, those over end faces last
 *  @param uncovered moulded surface that no part covers, m2
 *  @param doubled   moulded surface that more than one part covers, m2 */
public record MouldMeasures(List<Piece> pieces, List<SkinMeasures.Laying> layings, List<Stiffened> stiffened, List<Board> boards, Measured uncovered, Measured doubled) {

    /** One part of the mould.
     *  @param part    as the spec states it
     *  @param draft   of the lofted surface it covers
     *  @param ends    its shares of moulded end faces
     *  @param edges   along the body and round its ends
     *  @param parting length of its edges to other parts, m
     *  @param open    length of its other edges, m */
    public record Piece(Mould.Part part, DraftReport draft, List<EndShare> ends, List<PartEdge> edges, double parting, double open) {
        /** Copies its lists. */
        public Piece {
            ends = List.copyOf(ends);
            edges = List.copyOf(edges);
        }

        /** @return lofted surface it covers, m2 */
        public Measured lofted() {
            return draft.undercut().plus(draft.lowAtParting()).plus(draft.lowElsewhere()).plus(draft.enough());
        }

        /** @return all it covers, m2 */
        public double area() {
            return lofted().value() + ends.stream().mapToDouble(EndShare::area).sum();
        }

        /** @return surface caught by the mould, m2 */
        public double undercut() {
            return draft.undercut().value() + ends.stream().filter(end -> end.draft() < 0).mapToDouble(EndShare::area).sum();
        }

        /** Surface with too little draft away from the parting line.
         *  @param limit least draft wanted, radians
         *  @return m2 */
        public double low(double limit) {
            return draft.lowElsewhere().value()
                    + ends.stream().filter(end -> end.draft() >= 0 && end.draft() < limit).mapToDouble(EndShare::area).sum();
        }

        /** @return the least draft outside the strip that touches the parting line, radians; empty where nothing lies outside */
        public Optional<Double> least() {
            double ends = this.ends.stream().mapToDouble(EndShare::draft).min().orElse(Double.POSITIVE_INFINITY);
            double least = Math.min(ends, draft.least().map(place -> place.angle()).orElse(Double.POSITIVE_INFINITY));
            return Double.isFinite(least) ? Optional.of(least) : Optional.empty();
        }

        /** @return in words */
        public String words() {
            return part.name().map(name -> "half " + name).orElse("the mould");
        }
    }

    /** A part's share of a moulded end face.
     *  @param station whose end it is
     *  @param area    m2
     *  @param across  its lesser extent, m
     *  @param along   its greater extent, m
     *  @param draft   of the flat face, radians
     *  @param cuts    parting lines that run straight over the face */
    public record EndShare(String station, double area, double across, double along, double draft, List<FaceCut> cuts) {
        /** Copies its list. */
        public EndShare {
            cuts = List.copyOf(cuts);
        }
    }

    /** A parting line that runs straight over an end face.
     *  @param x    of the face, m aft
     *  @param from one end of it
     *  @param to   the other */
    public record FaceCut(double x, PlanePoint from, PlanePoint to) {
        /** m. */
        public double length() {
            return Math.hypot(to.y() - from.y(), to.z() - from.z());
        }
    }

    /** Stiffeners of one kind.
     *  @param stated as the spec states them
     *  @param ribs   each for itself, part by part
     *  @param layings their plies, in order */
    public record Stiffened(Stiffener stated, List<Rib> ribs, List<SkinMeasures.Laying> layings) {
        /** Copies its lists. */
        public Stiffened {
            ribs = List.copyOf(ribs);
            layings = List.copyOf(layings);
        }

        /** @return all of them end to end, m */
        public double length() {
            return ribs.stream().mapToDouble(Rib::length).sum();
        }
    }

    /** One stiffener.
     *  @param part   it stands on
     *  @param where  in words
     *  @param length over the face, m */
    public record Rib(Mould.Part part, String where, double length) { }

    /** The board a half is laid up against.
     *  @param part  the half that is laid up against it
     *  @param runs  where
     *  @param end   station of the end face it stands on; empty where it runs along the body or round it
     *  @param strip its face
     *  @param marks where it passes stations */
    public record Board(Mould.Part part, Runs runs, Optional<String> end, PartingStrip strip, List<StationMark> marks) {

        /** A board of some millimetres gives way so far without a word, m; common practice. */
        private static final double SPRUNG = 1e-3;

        /** Copies its list. */
        public Board {
            marks = List.copyOf(marks);
        }

        /** Where a board runs. */
        public enum Runs { PORT, STARBOARD, TOP, BOTTOM, ROUND, END }

        /** @return where it runs, in words */
        public String words() {
            return switch (runs) {
                case PORT -> "port";
                case STARBOARD -> "starboard";
                case TOP -> "top";
                case BOTTOM -> "bottom";
                case ROUND -> "round the body";
                case END -> "end " + end.orElse("");
            };
        }

        /** @return what it can be cut from, in words */
        public String cutFrom() {
            if (strip.crowded())
                return "strips, for the line bends closer than the flange is wide";
            return strip.standOff() <= SPRUNG ? "a flat sheet" : "a sheet that bends, by the outline laid out flat";
        }
    }

    /** A station on a board.
     *  @param station its name
     *  @param rung    in the layout */
    public record StationMark(String station, PartingStrip.Rung rung) { }

    /** Copies its lists. */
    public MouldMeasures {
        pieces = List.copyOf(pieces);
        layings = List.copyOf(layings);
        stiffened = List.copyOf(stiffened);
        boards = List.copyOf(boards);
    }

    /** @return length of the parting line, each length counted once though two parts meet there, m */
    public double parting() {
        return pieces.stream().mapToDouble(Piece::parting).sum() / 2;
    }

    /** @return length of the open edges of all parts, m */
    public double open() {
        return pieces.stream().mapToDouble(Piece::open).sum();
    }

    /** @return all the mould covers, m2 */
    public double area() {
        return pieces.stream().mapToDouble(Piece::area).sum();
    }
}
