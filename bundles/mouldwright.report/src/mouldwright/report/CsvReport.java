package mouldwright.report;

import mouldwright.plan.Quantity;

/** The figures of an estimate as comma-separated values: {@code id,stage,label,value,low,high,unit}, one row each, units as UCUM codes. */
public final class CsvReport {

    /** The whole file. */
    public String print(Estimate estimate) {
        Csv csv = new Csv();
        for (String head : new String[] {"id", "stage", "label", "value", "low", "high", "unit"}) {
            csv.words(head);
        }
        csv.end();
        for (Quantity quantity : estimate.quantities()) {
            csv.words(quantity.id()).words(quantity.stage()).words(quantity.label()).number(quantity.published(quantity.value()))
                    .number(quantity.published(quantity.low())).number(quantity.published(quantity.high())).words(quantity.ucum()).end();
        }
        return csv.text();
    }
}
