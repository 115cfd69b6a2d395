package mouldwright.language.validation;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import mouldwright.language.resource.RowNames;
import mouldwright.model.Coats;
import mouldwright.model.Grit;
import mouldwright.model.Plug;
import mouldwright.model.PlugPackage;
import mouldwright.model.Ply;
import mouldwright.model.SandRate;
import mouldwright.model.SkinBay;
import mouldwright.model.StationRow;
import mouldwright.model.Stiffener;
import mouldwright.units.Dimension;
import mouldwright.units.Unit;
import mouldwright.units.Units;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.validation.Check;

/** Words and numbers that are no amounts: units of the plug, counts, dates, currencies. */
public class WordChecks extends Concern {

	static final String UNIT = "MW904";
	static final String COUNT = "MW915";
	static final String DATE = "MW916";
	static final String CURRENCY = "MW917";
	static final String ROW = "MW918";

	@Check
	public void unitsAreLengths(Plug plug) {
		if (plug.getUnits() == null)
			return;
		Optional<Unit> unit = Units.find(plug.getUnits());
		if (unit.isEmpty() || !unit.get().dimension().equals(Dimension.LENGTH))
			fault("`" + plug.getUnits() + "` is no unit of length; mm, cm, m, in or ft expected", plug, PlugPackage.Literals.PLUG__UNITS, UNIT);
	}

	@Check
	public void wageIsForATime(Plug plug) {
		if (plug.getWagePer() == null)
			return;
		Optional<Unit> unit = Units.find(plug.getWagePer());
		if (unit.isEmpty() || !unit.get().dimension().equals(Dimension.TIME))
			fault("`" + plug.getWagePer() + "` is no unit of time; `per h` expected", plug, PlugPackage.Literals.PLUG__WAGE_PER, UNIT, "write `h`");
	}

	@Check
	public void counts(Ply ply) {
		count(ply.getCount(), ply, PlugPackage.Literals.PLY__COUNT);
	}

	@Check
	public void counts(Coats coats) {
		count(coats.getCount(), coats, PlugPackage.Literals.COATS__COUNT);
	}

	@Check
	public void counts(SkinBay bay) {
		count(bay.getRequire(), bay, PlugPackage.Literals.SKIN_BAY__REQUIRE);
	}

	@Check
	public void counts(Plug plug) {
		count(plug.getCrew(), plug, PlugPackage.Literals.PLUG__CREW);
	}

	@Check
	public void counts(Grit grit) {
		count(grit.getNumber(), grit, PlugPackage.Literals.GRIT__NUMBER);
	}

	@Check
	public void counts(SandRate rate) {
		count(rate.getGrit(), rate, PlugPackage.Literals.SAND_RATE__GRIT);
	}

	@Check
	public void counts(Stiffener stiffener) {
		count(stiffener.getCount(), stiffener, PlugPackage.Literals.STIFFENER__COUNT);
	}

	private void count(String written, EObject where, EAttribute feature) {
		if (written != null && !(written.matches("[0-9]{1,5}") && Integer.parseInt(written) > 0))
			fault(written + " is no count: a whole number from 1 on is expected", where, feature, COUNT);
	}

	/** Dates exist in the calendar. */
	@Check
	public void dates(EObject owner) {
		for (EAttribute attribute : owner.eClass().getEAllAttributes()) {
			boolean date = switch (attribute.getName()) {
				case "review", "start", "until", "date", "mended", "readyBy", "readyAfter" -> true;
				default -> false;
			};
			if (date && owner.eGet(attribute) instanceof String written && !exists(written))
				fault(written + " is no day of the calendar", owner, attribute, DATE);
		}
	}

	/** Whether there is such a day. */
	static boolean exists(String written) {
		try {
			LocalDate.parse(written);
			return true;
		} catch (DateTimeException e) {
			return false;
		}
	}

	@Check
	public void currency(EObject owner) {
		if (owner.eClass().getEStructuralFeature("currency") instanceof EAttribute attribute && owner.eGet(attribute) instanceof String code && !code.matches("[A-Z]{3}"))
			fault("`" + code + "` is no currency code; three capital letters as in ISO 4217, such as EUR", owner, attribute, CURRENCY);
	}

	@Check
	public void rowHasNames(StationRow row) {
		if (row.getFirst() != null && row.getLast() != null && RowNames.between(row.getFirst(), row.getLast()).isEmpty())
			fault("`" + row.getFirst() + "` to `" + row.getLast() + "` is no row: the same word with a rising number expected, as R1 to R3, " + RowNames.MOST + " at most", row,
					PlugPackage.Literals.STATION_ROW__FIRST, ROW);
	}
}
