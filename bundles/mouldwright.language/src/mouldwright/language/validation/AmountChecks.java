package mouldwright.language.validation;

import mouldwright.model.Amount;
import mouldwright.model.Call;
import mouldwright.model.Measure;
import mouldwright.model.Plug;
import mouldwright.model.PlugPackage;
import mouldwright.model.Range;
import mouldwright.plan.read.Amounts;
import mouldwright.plan.read.Expected;
import mouldwright.plan.read.PlugUnits;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.validation.Check;

/** Every amount measures what its property asks for, lies within reason, and is written with a decimal point. */
public class AmountChecks extends Concern {

	static final String DECIMAL_COMMA = "MW908";
	static final String RANGE = "MW906";

	/** Length, mass per area, share: as the model says of each property. */
	@Check
	public void measuresWhatIsExpected(EObject owner) {
		for (EReference feature : owner.eClass().getEAllContainments())
			Expected.of(feature).ifPresent(expected -> {
				Amounts amounts = new Amounts(PlugUnits.of(EcoreUtil2.getContainerOfType(owner, Plug.class)));
				switch (owner.eGet(feature)) {
					case Amount amount -> check(amounts, amount, expected);
					case Range range -> range(amounts, range, expected);
					case null, default -> { }
				}
			});
	}

	private void range(Amounts amounts, Range range, Expected expected) {
		double likely = check(amounts, range.getLikely(), expected);
		if (range.getLow() == null || range.getHigh() == null)
			return;
		double low = check(amounts, range.getLow(), expected);
		double high = check(amounts, range.getHigh(), expected);
		if (low > likely || likely > high)
			fault("the likely value must lie between the low and the high one", range, PlugPackage.Literals.RANGE__LIKELY, RANGE);
	}

	/** The value in SI; not a number where it makes no sense, so that nothing is compared with it. */
	private double check(Amounts amounts, Amount amount, Expected expected) {
		if (amount == null)
			return Double.NaN;
		return switch (amounts.value(amount, expected)) {
			case Amounts.Outcome.Value value -> value.si();
			case Amounts.Outcome.Wrong wrong -> {
				if (!"MW902".equals(wrong.slip().code()))
					slip(wrong.slip());
				yield Double.NaN;
			}
		};
	}

	/** A decimal comma is read, and said. */
	@Check
	public void decimalPoint(Measure measure) {
		String number = measure.getNumber();
		if (number != null && number.indexOf(',') >= 0 && !(measure.eContainer() instanceof Call)) {
			String point = number.replace(',', '.');
			warning("a decimal comma in " + number + "; it is read as " + point, measure, PlugPackage.Literals.MEASURE__NUMBER, DECIMAL_COMMA, "write `" + point + "`");
		}
	}
}
