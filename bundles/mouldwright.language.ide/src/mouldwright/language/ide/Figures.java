package mouldwright.language.ide;

import java.util.List;
import java.util.Optional;
import mouldwright.model.Mat;
import mouldwright.model.Named;
import mouldwright.model.Plug;
import mouldwright.model.Station;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.ledger.Derivation;
import mouldwright.plan.spec.Given;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;

/** The figures of a plan that belong to a part of a spec. */
final class Figures {

    private static final Display DISPLAY = Display.of(UnitSystem.METRIC);

    private Figures() { }

    /** Figures shown at a part: of a block those of its stage, of a station or a mat its own. */
    static List<Quantity> of(SpecView view, EObject part) {
        return plan(view, part).map(plan -> switch (part) {
            case Station station -> begin(plan, "station." + station.getName() + ".");
            case Mat mat -> begin(plan, "skin.mat." + mat.getName() + ".");
            case Plug plug -> ids(plan, "shape.length", "shape.volume", "shape.area.moulded", "mass.plug", "mass.mould", "plan.labour", "plan.elapsed", "plan.cost");
            default -> block(plan, part.eClass());
        }).orElse(List.of());
    }

    private static List<Quantity> block(BuildPlan plan, EClass kind) {
        return switch (kind.getName()) {
            case "Frame" -> ids(plan, "frame.sheets", "frame.mass");
            case "Fill" -> ids(plan, "fill.cavity", "fill.mass", "fill.mass.a", "fill.mass.b", "fill.liquid", "fill.pots");
            case "Carve" -> ids(plan, "fill.trim", "fair.filler.volume");
            case "Skin" -> ids(plan, "skin.thickness", "skin.area", "skin.resin.mass", "skin.catalyst.mass", "skin.pots");
            case "Finish" -> ids(plan, "finish.hours");
            case "Mould" -> ids(plan, "mould.area", "mould.mass", "mould.thickness", "mould.draft.min");
            case "Air" -> ids(plan, "air.styrene", "air.flow");
            default -> List.of();
        };
    }

    /** The plan of the plug a part stands in; of a material that of the first plug. */
    static Optional<BuildPlan> plan(SpecView view, EObject part) {
        Plug plug = EcoreUtil2.getContainerOfType(part, Plug.class);
        if (plug == null) {
            return part instanceof Named ? view.plans().values().stream().findFirst() : Optional.empty();
        }
        return Optional.ofNullable(view.plans().get(plug.getName()));
    }

    private static List<Quantity> begin(BuildPlan plan, String id) {
        return plan.quantities().stream().filter(quantity -> quantity.id().startsWith(id)).toList();
    }

    private static List<Quantity> ids(BuildPlan plan, String... ids) {
        return java.util.Arrays.stream(ids).map(plan::quantity).flatMap(Optional::stream).toList();
    }

    /** A likely figure with its unit: {@code 19.4 kg}. */
    static String likely(Quantity quantity) {
        return words(quantity, quantity.value());
    }

    /** A figure with its low and high, where these differ. */
    static String range(Quantity quantity) {
        String range = quantity.low() < quantity.high() ? " (" + words(quantity, quantity.low()) + " to " + words(quantity, quantity.high()) + ")" : "";
        return likely(quantity) + range;
    }

    private static String words(Quantity quantity, double si) {
        if (!quantity.currency().isEmpty()) {
            return java.math.BigDecimal.valueOf(si).setScale(2, java.math.RoundingMode.HALF_UP).toPlainString() + " " + quantity.currency();
        }
        if (quantity.id().equals("plan.labour") || quantity.id().equals("finish.hours")) {
            return Display.number(si / 3600) + " h";
        }
        return words(si, quantity.dimension());
    }

    /** A figure in the units of the trade; a count without a unit. */
    static String words(double si, Dimension dimension) {
        boolean count = dimension.equals(Dimension.RATIO) && (Math.abs(si) > 1 || si == Math.rint(si));
        return count ? Display.number(si) : DISPLAY.format(si, dimension);
    }

    /** A stated figure with its range. */
    static String words(Given given) {
        return words(given.likely(), given.dimension()) + (given.ranged() ? " (" + words(given.low(), given.dimension()) + " to " + words(given.high(), given.dimension()) + ")" : "");
    }

    /** How a figure came about, in a line; empty for one nobody reckoned. */
    static String formula(BuildPlan plan, Quantity quantity) {
        return plan.derivation(quantity.id()).map(derivation -> switch (derivation) {
            case Derivation.Reckoned reckoned -> reckoned.formula();
            case Derivation.Measured measured -> measured.measurement().how();
            case Derivation.Stated stated -> "";
        }).orElse("");
    }
}
