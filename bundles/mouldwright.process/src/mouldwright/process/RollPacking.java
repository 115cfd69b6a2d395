package mouldwright.process;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Pieces of mat laid out on rolls. The roll is cut straight across, the longest cut first; pieces lie side by side in a cut, each in the
 * tightest cut that holds it, and cuts lie one after the other on the rolls. Pieces are not turned, since the fibres of a woven mat have a
 * direction. Source: best-fit decreasing-height shelf packing, a textbook method; it takes n log n steps.
 *
 * @param width  of the rolls, m
 * @param placed where each piece lies, in the order the pieces were given
 * @param rolls  how many rolls are cut into
 * @param length off the rolls, over all cuts, m
 */
public record RollPacking(double width, List<Placed> placed, int rolls, double length) {

    /** Cuts that differ by less than this are the same to scissors, m: rounding of the figures. */
    private static final double SAME = 1e-9;

    /**
     * A piece of mat.
     *
     * @param width  across the roll, m
     * @param length along the roll, m
     */
    public record Piece(double width, double length) {
        /** Refuses a piece without size. */
        public Piece {
            Require.positive(width, "width of a piece");
            Require.positive(length, "length of a piece");
        }

        /** m2. */
        public double area() {
            return width * length;
        }
    }

    /**
     * Where a piece lies.
     *
     * @param piece  which
     * @param roll   counted from 1
     * @param cut    which cut across the rolls it lies in, counted from 1
     * @param along  its near edge from the start of the roll, m
     * @param across its edge from the side of the roll, m
     */
    public record Placed(Piece piece, int roll, int cut, double along, double across) { }

    /** A cut straight across a roll, as long as the first piece put in it. */
    private static final class Cut {
        private final double length;
        private double used;
        private int roll;
        private double along;

        Cut(double length) {
            this.length = length;
        }
    }

    /** Copies its list. */
    public RollPacking {
        placed = List.copyOf(placed);
    }

    /**
     * Packs pieces.
     *
     * @param width      of a roll, m
     * @param rollLength of a roll, m; infinite where it is not known
     * @throws IllegalArgumentException if a piece does not fit on a roll
     */
    public static RollPacking of(List<Piece> pieces, double width, double rollLength) {
        Require.positive(width, "width of a roll");
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (piece.width() > width + SAME || piece.length() > rollLength + SAME) {
                throw new IllegalArgumentException("no piece of " + piece.width() + " m by " + piece.length() + " m comes off a roll of " + width
                        + " m by " + rollLength + " m");
            }
            order.add(i);
        }
        order.sort(Comparator.comparingDouble((Integer i) -> -Math.rint(pieces.get(i).length() / SAME))
                .thenComparingDouble(i -> -Math.rint(pieces.get(i).width() / SAME)));
        List<Cut> cuts = new ArrayList<>();
        Cut[] cutOf = new Cut[pieces.size()];
        double[] across = new double[pieces.size()];
        TreeMap<Double, List<Cut>> free = new TreeMap<>();
        for (int i : order) {
            Piece piece = pieces.get(i);
            Cut cut = take(free, piece.width());
            if (cut == null) {
                cut = new Cut(piece.length());
                cuts.add(cut);
            }
            cutOf[i] = cut;
            across[i] = cut.used;
            cut.used += piece.width();
            put(free, width - cut.used, cut);
        }
        int rolls = onRolls(cuts, rollLength);
        List<Placed> placed = new ArrayList<>();
        Map<Cut, Integer> numbers = numbers(cuts);
        for (int i = 0; i < cutOf.length; i++) {
            placed.add(new Placed(pieces.get(i), cutOf[i].roll, numbers.get(cutOf[i]), cutOf[i].along, across[i]));
        }
        return new RollPacking(width, placed, rolls, cuts.stream().mapToDouble(cut -> cut.length).sum());
    }

    /** Puts each cut on the roll with the least left that still holds it; returns how many rolls that takes. */
    private static int onRolls(List<Cut> cuts, double rollLength) {
        int rolls = 0;
        TreeMap<Double, List<double[]>> left = new TreeMap<>(); // number and used length of a roll, by what is left of it
        for (Cut cut : cuts) {
            double[] roll = take(left, cut.length);
            if (roll == null) {
                roll = new double[] {++rolls, 0};
            }
            cut.roll = (int) roll[0];
            cut.along = roll[1];
            roll[1] += cut.length;
            put(left, rollLength - roll[1], roll);
        }
        return rolls;
    }

    private static Map<Cut, Integer> numbers(List<Cut> cuts) {
        Map<Cut, Integer> numbers = new IdentityHashMap<>();
        cuts.stream().sorted(Comparator.comparingInt((Cut cut) -> cut.roll).thenComparingDouble(cut -> cut.along))
                .forEach(cut -> numbers.put(cut, numbers.size() + 1));
        return numbers;
    }

    /** Takes the first of those with the least room that is enough; null where there is none. */
    private static <T> T take(TreeMap<Double, List<T>> byRoom, double wanted) {
        Map.Entry<Double, List<T>> tightest = byRoom.ceilingEntry(wanted - SAME);
        if (tightest == null) {
            return null;
        }
        T taken = tightest.getValue().removeLast();
        if (tightest.getValue().isEmpty()) {
            byRoom.remove(tightest.getKey());
        }
        return taken;
    }

    private static <T> void put(TreeMap<Double, List<T>> byRoom, double room, T one) {
        if (room > SAME) {
            byRoom.computeIfAbsent(room, any -> new ArrayList<>()).add(one);
        }
    }

    /** Mat left beside the pieces within the cuts, m2; what stays on the rolls is no offcut. */
    public double offcut() {
        return Math.max(0, length * width - placed.stream().mapToDouble(each -> each.piece().area()).sum());
    }
}
