package mouldwright.plan.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.units.Dimension;
import org.eclipse.emf.ecore.EAnnotation;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What a property of a spec measures, as the model's annotation says.
 *  @param dimensions  what it may measure; empty: anything
 *  @param share       whether it is a share of a whole, 0 to 1
 *  @param least       the least value that makes sense, SI
 *  @param zero        whether {@code least} itself makes sense
 *  @param most        the greatest value that makes sense, SI
 *  @param usual       what is met in workshops; a figure outside it is asked after, and taken */
public record Expected(List<Dimension> dimensions, boolean share, double least, boolean zero, double most, Optional<Usual> usual) {

    /** Bounds of what is met in workshops, SI; common practice, widely drawn. */
    public record Usual(double least, double most) { }

    private static final String SOURCE = "http://mouldwright/amount";

    /** What a property measures; empty for one that is no amount. */
    public static Optional<Expected> of(EStructuralFeature feature) {
        EAnnotation annotation = feature.getEAnnotation(SOURCE);
        return Optional.ofNullable(annotation).map(a -> of(a.getDetails().get("dimension"), a.getDetails().get("sign"), a.getDetails().get("usual")));
    }

    private static Expected of(String names, String sign, String usual) {
        List<Dimension> dimensions = new ArrayList<>();
        double most = 1e6;
        for (String name : names.split(" ")) {
            Optional<Dimension> dimension = dimension(name);
            dimension.ifPresent(dimensions::add);
            most = most(name);
        }
        double least = sign.equals("any") ? (names.equals("TEMPERATURE") ? -60 : -most) : 0;
        return new Expected(List.copyOf(dimensions), names.equals("SHARE"), least, !sign.equals("positive"), most, Optional.ofNullable(usual).map(Expected::usual));
    }

    private static Usual usual(String bounds) {
        int gap = bounds.indexOf(' ');
        return new Usual(Double.parseDouble(bounds.substring(0, gap)), Double.parseDouble(bounds.substring(gap + 1)));
    }

    private static Optional<Dimension> dimension(String name) {
        return Optional.ofNullable(switch (name) {
            case "LENGTH" -> Dimension.LENGTH;
            case "AREA" -> Dimension.AREA;
            case "MASS" -> Dimension.MASS;
            case "VOLUME" -> Dimension.VOLUME;
            case "TIME" -> Dimension.TIME;
            case "TEMPERATURE" -> Dimension.TEMPERATURE;
            case "ANGLE" -> Dimension.ANGLE;
            case "RATIO", "SHARE" -> Dimension.RATIO;
            case "AREAL_MASS" -> Dimension.AREAL_MASS;
            case "DENSITY" -> Dimension.DENSITY;
            case "AREA_RATE" -> Dimension.AREA_RATE;
            case "VOLUME_RATE" -> Dimension.VOLUME_RATE;
            case "COVERAGE_MASS" -> Dimension.COVERAGE_MASS;
            case "COVERAGE_VOLUME" -> Dimension.COVERAGE_VOLUME;
            case "ANY" -> null;
            default -> throw new IllegalStateException("the model names a dimension that is not known: " + name);
        });
    }

    /** Bounds far outside any workshop, so that a slip of the finger cannot become a figure: a body of 1 km, a year of cure. */
    private static double most(String name) {
        return switch (name) {
            case "LENGTH" -> 1000;
            case "AREAL_MASS" -> 100;
            case "DENSITY" -> 30_000;
            case "TIME" -> 4e7;
            case "TEMPERATURE" -> 400;
            case "ANGLE" -> Math.PI / 2;
            case "SHARE" -> 1;
            default -> 1e6;
        };
    }
}
