package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mouldwright.plan.PieceEntry;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Skin;
import mouldwright.process.RollPacking;

/** The pieces a laminate is laid in, and how they come off the rolls. Field by field, ply by ply: full roll widths round the girth and a
 *  rest, each as long as the field and a lap. The pieces of all plies of a mat are packed together.
 *  @param mat      what they are cut from
 *  @param layings  those of this mat, each with the number of its first ply */
record CutList(Mat mat, List<Numbered> layings) {

    /** More pieces than anybody cuts: beyond this the figures are nonsense. */
    static final int MOST_PIECES = 5_000;

    /** A laying in the order of laying.
     *  @param firstPly counted from 1 */
    record Numbered(SkinMeasures.Laying laying, int firstPly) { }

    /** The cut lists of a laminate, one for each mat, in the order of first use. */
    static List<CutList> of(List<SkinMeasures.Laying> layings) {
        Map<String, CutList> byMat = new LinkedHashMap<>();
        int ply = 1;
        for (SkinMeasures.Laying laying : layings) {
            byMat.computeIfAbsent(laying.mat().name(), name -> new CutList(laying.mat(), new ArrayList<>())).layings.add(new Numbered(laying, ply));
            ply += laying.count();
        }
        return List.copyOf(byMat.values());
    }

    /** Adds the pieces of a laminate, in the order of laying, numbered on over the whole job.
     *  @param laminate what they belong to: {@code skin}, {@code mould} */
    static void list(String laminate, Skin skin, List<SkinMeasures.Laying> layings, Lists lists) {
        List<PieceEntry> pieces = new ArrayList<>();
        for (CutList list : of(layings))
            pieces.addAll(list.entries(laminate, Cloth.likely(list.mat(), skin)));
        pieces.sort(Comparator.comparingInt(PieceEntry::ply));
        pieces.forEach(piece -> lists.piece(piece.numbered(lists.pieces().size() + 1)));
    }

    /** What rolls and laps are like for one reckoning.
     *  @param width  of the roll, m
     *  @param length of the roll, m; infinite where it is not stated
     *  @param lap    m
     *  @param scale  of the plug against the one measured */
    record Cloth(double width, double length, double lap, double scale) {

        /** The widest lap reckoned with, as a share of the roll: wider ones never pass the guard, but a draw might. */
        private static final double WIDEST_LAP = 0.99;

        /** Keeps the lap within the roll. */
        Cloth {
            lap = Math.min(lap, WIDEST_LAP * width);
        }

        /** As stated, likely values. */
        static Cloth likely(Mat mat, Skin skin) {
            return new Cloth(MatFacts.rollWidth(mat).likely(), MatFacts.rollLength(mat), skin.lap().likely(), 1);
        }
    }

    /** How many pieces there are; without making them. */
    double count(Cloth cloth) {
        double count = 0;
        for (Numbered each : layings)
            for (SkinMeasures.Field field : each.laying.fields())
                for (double girth : field.runs().lengths())
                    count += each.laying.count() * across(field, girth, cloth);
        return count;
    }

    /** Pieces side by side: n = ceil((G - l)/(W - l)); all round, the last laps the first. */
    private static double across(SkinMeasures.Field field, double girth, Cloth cloth) {
        return GirthRuns.across(girth * cloth.scale, field.runs().closed(), cloth.width, cloth.lap);
    }

    /** Area of all pieces, m2. */
    double area(Cloth cloth) {
        double area = 0;
        for (Numbered each : layings)
            for (SkinMeasures.Field field : each.laying.fields())
                for (double girth : field.runs().lengths())
                    area += each.laying.count() * (covered(field, girth, cloth)) * length(field, cloth);
        return area;
    }

    /** What the pieces over a run measure together across, laps included, m. */
    private static double covered(SkinMeasures.Field field, double girth, Cloth cloth) {
        double pieces = across(field, girth, cloth);
        return girth * cloth.scale + (field.runs().closed() ? pieces : pieces - 1) * cloth.lap;
    }

    private static double length(SkinMeasures.Field field, Cloth cloth) {
        return field.longest() * cloth.scale + cloth.lap;
    }

    /** Packs the pieces. A piece longer than a roll counts as if the roll were long enough; {@link SkinStage} reports it. */
    RollPacking packed(Cloth cloth) {
        List<RollPacking.Piece> pieces = new ArrayList<>();
        for (Numbered each : layings)
            for (int ply = 0; ply < each.laying.count(); ply++)
                for (SkinMeasures.Field field : each.laying.fields())
                    pieces(field, cloth, pieces);
        return RollPacking.of(pieces, cloth.width, Math.max(cloth.length, longest(cloth)));
    }

    /** The longest piece, m. */
    double longest(Cloth cloth) {
        return layings.stream().flatMap(each -> each.laying.fields().stream()).mapToDouble(field -> length(field, cloth)).max().orElse(0);
    }

    private static void pieces(SkinMeasures.Field field, Cloth cloth, List<RollPacking.Piece> into) {
        for (double girth : field.runs().lengths()) {
            int pieces = (int) across(field, girth, cloth);
            double rest = covered(field, girth, cloth) - (pieces - 1) * cloth.width;
            for (int i = 1; i <= pieces; i++)
                into.add(new RollPacking.Piece(i < pieces ? cloth.width : Math.min(rest, cloth.width), length(field, cloth)));
        }
    }

    /** The pieces with their places on the rolls, in the order of laying; not numbered yet. */
    private List<PieceEntry> entries(String laminate, Cloth cloth) {
        RollPacking packing = packed(cloth);
        List<PieceEntry> entries = new ArrayList<>();
        int at = 0;
        for (Numbered each : layings)
            for (int ply = 0; ply < each.laying.count(); ply++)
                for (SkinMeasures.Field field : each.laying.fields()) {
                    int pieces = 0;
                    for (double girth : field.runs().lengths())
                        pieces += (int) across(field, girth, cloth);
                    for (int i = 0; i < pieces; i++)
                        entries.add(entry(laminate, mat, each.firstPly + ply, field, packing.placed().get(at++)));
                }
        return entries;
    }

    private static PieceEntry entry(String laminate, Mat mat, int ply, SkinMeasures.Field field, RollPacking.Placed placed) {
        return new PieceEntry(0, laminate, ply, mat.name(), field.words(), placed.piece().width(), placed.piece().length(), placed.roll(), placed.cut(),
                placed.along(), placed.across());
    }
}
