package mouldwright.language.validation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.model.Amount;
import mouldwright.model.Bare;
import mouldwright.model.Coating;
import mouldwright.model.Fill;
import mouldwright.model.FillBay;
import mouldwright.model.Foam;
import mouldwright.model.GelTable;
import mouldwright.model.GirthPlace;
import mouldwright.model.Mould;
import mouldwright.model.Piece;
import mouldwright.model.Plug;
import mouldwright.model.PlugPackage.Literals;
import mouldwright.model.Resin;
import mouldwright.model.SkinBay;
import mouldwright.model.YieldTable;
import mouldwright.plan.read.StatedAmounts;
import mouldwright.units.Dimension;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.validation.Check;

/** Statements that make sense each for itself and none together: spans the wrong way round or without extent, a rule stated twice, tables without a row. */
public class SenseChecks extends Concern {

	static final String SPAN = "MW936";
	static final String TWICE = "MW937";
	static final String EMPTY = "MW938";

	@Check
	public void temperaturesRise(Foam foam) {
		rising(foam.getColdest(), foam.getWarmest(), Dimension.TEMPERATURE, "the coldest", "the warmest", foam, Literals.FOAM__COLDEST);
	}

	@Check
	public void catalystRises(Resin resin) {
		rising(resin.getCatalystLow(), resin.getCatalystHigh(), Dimension.RATIO, "the least catalyst", "the most", resin, Literals.RESIN__CATALYST_LOW);
	}

	@Check
	public void catalystRises(Coating coating) {
		rising(coating.getCatalystLow(), coating.getCatalystHigh(), Dimension.RATIO, "the least catalyst", "the most", coating, Literals.COATING__CATALYST_LOW);
	}

	private void rising(Amount low, Amount high, Dimension dimension, String least, String most, EObject where, EStructuralFeature feature) {
		if (low == null || high == null)
			return;
		Optional<Double> from = StatedAmounts.si(dimension, low), to = StatedAmounts.si(dimension, high);
		if (from.isPresent() && to.isPresent() && from.get() > to.get())
			fault(least + ", " + text(low) + ", is above " + most + ", " + text(high) + ": `" + text(high) + " to " + text(low) + "`?", where, feature, SPAN, "turn them round");
	}

	@Check
	public void bareGoesUp(Bare bare) {
		upward(bare.getFrom(), bare.getTo(), "bare", bare, Literals.BARE__FROM);
	}

	@Check
	public void bandGoesUp(SkinBay bay) {
		upward(bay.getLow(), bay.getHigh(), "girth", bay, Literals.SKIN_BAY__LOW);
	}

	private void upward(GirthPlace low, GirthPlace high, String word, EObject where, EStructuralFeature feature) {
		if (low == null || high == null)
			return;
		boolean oneLine = low.getLine() != null && low.getLine() == high.getLine();
		Optional<Double> from = share(low), to = share(high);
		boolean nothing = oneLine || from.isPresent() && from.equals(to);
		if (nothing)
			fault("`" + word + " " + text(low) + " to " + text(high) + "` reaches from a place to itself: nothing lies between", where, feature, SPAN, "state two places");
		else if (from.isPresent() && to.isPresent() && from.get() > to.get())
			fault("`" + word + " " + text(low) + " to " + text(high) + "` goes down the girth: `" + text(high) + " to " + text(low) + "`?", where, feature, SPAN, "turn them round");
	}

	private static Optional<Double> share(GirthPlace place) {
		return place.getAt() == null ? Optional.empty() : StatedAmounts.si(Dimension.RATIO, place.getAt());
	}

	/** The part is trimmed inside the run-out, or there is nothing to trim. */
	@Check
	public void trimLiesInTheRunOut(Plug plug) {
		if (plug.getRunOut() == null || plug.getTrim() == null)
			return;
		Optional<Double> runOut = StatedAmounts.si(Dimension.LENGTH, plug.getRunOut()), trim = StatedAmounts.si(Dimension.LENGTH, plug.getTrim());
		if (runOut.isPresent() && trim.isPresent() && trim.get() > runOut.get())
			fault("trim line " + text(plug.getTrim()) + " past the finished edge, and the run-out ends at " + text(plug.getRunOut()), plug, Literals.PLUG__TRIM, SPAN,
					"run out farther or trim nearer");
	}

	@Check
	public void baysOnce(Fill fill) {
		Map<List<Object>, FillBay> seen = new HashMap<>();
		for (FillBay bay : fill.getBays()) {
			FillBay first = bay.getFrom() == null || bay.getTo() == null ? null : seen.putIfAbsent(List.of(bay.getFrom(), bay.getTo()), bay);
			if (first != null)
				fault("bay " + bay.getFrom().getName() + " to " + bay.getTo().getName() + " has a rule already, in line " + line(first) + ": one of them would be lost", bay,
						Literals.FILL_BAY__FROM, TWICE, "keep one of them");
		}
	}

	@Check
	public void oneOrHalves(Mould mould) {
		List<Piece> whole = mould.getPieces().stream().filter(Piece::isWhole).toList();
		if (!whole.isEmpty() && mould.getPieces().size() > 1)
			fault("a mould in one piece has no other part, and this one states " + mould.getPieces().size(), whole.getLast(), Literals.PIECE__WHOLE, TWICE, "keep `one piece` or the halves");
	}

	@Check
	public void hasRows(GelTable table) {
		if (table.getRows().isEmpty())
			fault("a gel table without a row tells nothing", table.eContainer(), Literals.RESIN__GEL, EMPTY, "state rows, or leave the table out");
	}

	@Check
	public void hasRows(YieldTable table) {
		if (table.getRows().isEmpty())
			fault("a yield table without a row tells nothing", table.eContainer(), Literals.FOAM__YIELDS, EMPTY, "state rows, or leave the table out");
	}

	private static int line(EObject object) {
		return NodeModelUtils.findActualNodeFor(object).getStartLine();
	}

	private static String text(EObject object) {
		return NodeModelUtils.getTokenText(NodeModelUtils.findActualNodeFor(object));
	}
}
