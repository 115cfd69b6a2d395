package mouldwright.plan.stage;

import java.util.List;
import java.util.Optional;
import mouldwright.geometry.draft.DraftReport;
import mouldwright.geometry.draft.PartEdge;
import mouldwright.geometry.draft.PartingStrip;
import mouldwright.geometry.measure.Measured;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Stiffener;

/** What is measured of the mould, on the plug.
 *  @param pieces    its parts
 *  @param layings   what is laid, in order
 *  @param stiffened what stiffeners stand on its back, kind by kind
 *  @param boards    parting boards, one for each parting line
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
     *  @param draft   of the flat face, radians */
    public record EndShare(String station, double area, double across, double along, double draft) { }

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
     *  @param port  whether the line runs on the port side
     *  @param strip its face */
    public record Board(Mould.Part part, boolean port, PartingStrip strip) { }

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
