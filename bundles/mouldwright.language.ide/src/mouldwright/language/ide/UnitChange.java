package mouldwright.language.ide;

import com.google.inject.Singleton;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.model.Amount;
import mouldwright.model.Binary;
import mouldwright.model.Bracket;
import mouldwright.model.Measure;
import mouldwright.model.Negative;
import mouldwright.model.Plug;
import mouldwright.plan.read.Expected;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.Unit;
import mouldwright.units.UnitSystem;
import mouldwright.units.Units;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Writes the amounts of a block in the other family of units, to six figures, so that nothing moves by more than a saw can show. A bare length is
 * given its unit, since the plug's own stays as it is. Amounts inside formulas are left alone: a formula may count on its units.
 */
@Singleton
public final class UnitChange {

    private static final MathContext FIGURES = new MathContext(6);

    /** The amounts of a block, each in a unit of a family.
     *  @param block any part of the text
     *  @return the changes; none where all are in it */
    public List<Edit> of(SpecView view, EObject block, UnitSystem family) {
        List<Edit> edits = new ArrayList<>();
        EcoreUtil2.eAllOfType(block, Measure.class).stream().filter(UnitChange::standsAlone).forEach(measure -> edit(view, measure, family).ifPresent(edits::add));
        return edits;
    }

    /** The smallest block round a place, that is one in braces; empty outside of them. */
    public Optional<EObject> block(SpecView view, int offset) {
        EObject part = view.word(offset).flatMap(SpecView::owner).orElse(null);
        while (part != null && part.eContainer() != null && !isBlock(part)) {
            part = part.eContainer();
        }
        return Optional.ofNullable(part).filter(one -> one.eContainer() != null);
    }

    private static boolean isBlock(EObject part) {
        INode node = NodeModelUtils.findActualNodeFor(part);
        return node != null && node.getText().stripTrailing().endsWith("}");
    }

    private static boolean standsAlone(Measure measure) {
        return !(measure.eContainer() instanceof Bracket || measure.eContainer() instanceof Binary || measure.eContainer() instanceof Negative
                || measure.eContainer() instanceof Amount);
    }

    private static Optional<Edit> edit(SpecView view, Measure measure, UnitSystem family) {
        INode node = NodeModelUtils.findActualNodeFor(measure);
        Optional<Unit> unit = unit(measure);
        if (node == null || unit.isEmpty() || measure.getNumber() == null || node.getText().contains("*/")) {
            return Optional.empty();
        }
        double written;
        double si;
        try {
            written = Double.parseDouble(measure.getNumber().replace(',', '.')) * (measure.isNegative() ? -1 : 1);
            si = unit.get().toSi(written);
        } catch (NumberFormatException | mouldwright.units.NotANumber e) {
            return Optional.empty();
        }
        Dimension dimension = unit.get().dimension();
        Optional<Unit> other = Display.of(family).unitFor(si, dimension);
        boolean same = dimension.equals(Dimension.RATIO) || dimension.equals(Dimension.TIME) || dimension.equals(Dimension.ANGLE) || isOf(family, unit.get());
        if (same || other.isEmpty()) {
            return Optional.empty();
        }
        String number = new BigDecimal(other.get().fromSi(si)).round(FIGURES).stripTrailingZeros().toPlainString();
        return Optional.of(new Edit(node.getOffset(), node.getLength(), number + " " + other.get().symbol()));
    }

    /** Whether a unit belongs to a family: one that is made of inches, feet, ounces, pounds, gallons or degF to the US one. */
    private static boolean isOf(UnitSystem family, Unit unit) {
        boolean us = unit.ucum().contains("[") || unit.symbol().equals("thou") || unit.symbol().equals("mil");
        return us == (family == UnitSystem.US);
    }

    /** The unit as written; of a bare length that of the plug, or millimetres. */
    private static Optional<Unit> unit(Measure measure) {
        if (measure.getUnit() != null) {
            return Units.find(measure.getUnit());
        }
        EObject part = measure;
        while (part.eContainer() != null && (part instanceof Amount || part instanceof mouldwright.model.Range) && Expected.of(part.eContainmentFeature()).isEmpty()) {
            part = part.eContainer();
        }
        boolean length = part.eContainmentFeature() != null && Expected.of(part.eContainmentFeature()).filter(expected -> expected.dimensions().equals(List.of(Dimension.LENGTH))).isPresent();
        if (!length) {
            return Optional.empty();
        }
        Plug plug = EcoreUtil2.getContainerOfType(measure, Plug.class);
        return Units.find(plug == null || plug.getUnits() == null ? "mm" : plug.getUnits());
    }
}
