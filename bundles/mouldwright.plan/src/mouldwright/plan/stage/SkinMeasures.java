package mouldwright.plan.stage;

import java.util.List;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.measure.Measured;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Skin;

/** What is measured of the skin, on the plug.
 *  @param area      moulded surface, end faces counted, m2
 *  @param layings   what is laid, in order
 *  @param uncovered moulded surface without any ply, m2
 *  @param lacking   moulded surface with fewer plies than asked for, m2
 *  @param gaps      where that is
 *  @param overBare  where plies are asked for over what is bare */
public record SkinMeasures(Measured area, List<Laying> layings, Measured uncovered, Measured lacking, List<Gap> gaps,
        List<OverBare> overBare) {

    /** Equal plies over one region.
     *  @param mat    what is laid
     *  @param count  how many plies
     *  @param first  whether the first of them lies on cut foam
     *  @param words  where, in words
     *  @param fields bay by bay */
    public record Laying(Mat mat, int count, boolean first, String words, List<Field> fields) {
        /** Copies its list. */
        public Laying {
            fields = List.copyOf(fields);
        }
    }

    /** A field that is covered with pieces of its own: a bay's part of a region, or an end face.
     *  @param words  which
     *  @param area   m2
     *  @param runs   across the girth, where it is widest
     *  @param length along the body over the surface, on average, m
     *  @param longest along the body over the surface, where it is longest, m */
    public record Field(String words, Measured area, GirthRuns runs, double length, double longest) { }

    /** A part of the moulded face with fewer plies than asked for.
     *  @param fromX on the plug, m
     *  @param toX   on the plug, m
     *  @param laid  plies that cover it
     *  @param asked plies asked for
     *  @param area  m2 */
    public record Gap(double fromX, double toX, GirthBand band, int laid, int asked, double area) { }

    /** A rule whose band reaches over what is bare.
     *  @param rule whose plies
     *  @param area bare, m2 */
    public record OverBare(Skin.Rule.AddPlies rule, double area) { }

    /** Copies its lists. */
    public SkinMeasures {
        layings = List.copyOf(layings);
        gaps = List.copyOf(gaps);
        overBare = List.copyOf(overBare);
    }
}
