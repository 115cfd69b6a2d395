package mouldwright.report;

import mouldwright.plan.PieceEntry;
import mouldwright.plan.Quantity;

/** The figures of an estimate as comma-separated values: {@code id,stage,label,value,low,high,unit}, one row each, units as UCUM codes; with draws,
 *  {@code p10,p50,p90} follow. Or the pieces of mat: {@code piece,ply,mat,where,width,length,roll,cut,along,across,laminate}, metres. */
public final class CsvReport {

    /** The figures, a whole file. */
    public String print(Estimate estimate) {
        Csv csv = new Csv();
        heads(csv, "id", "stage", "label", "value", "low", "high", "unit");
        if (estimate.draws().isPresent()) {
            heads(csv, "p10", "p50", "p90");
        }
        csv.end();
        for (Quantity quantity : estimate.quantities()) {
            csv.words(quantity.id()).words(quantity.stage()).words(quantity.label()).number(quantity.published(quantity.value()))
                    .number(quantity.published(quantity.low())).number(quantity.published(quantity.high())).words(quantity.ucum());
            estimate.draws().ifPresent(draws -> draws.spread(quantity.id()).ifPresentOrElse(
                    spread -> csv.number(quantity.published(spread.tenth())).number(quantity.published(spread.half())).number(quantity.published(spread.ninety())),
                    () -> csv.words("").words("").words("")));
            csv.end();
        }
        return csv.text();
    }

    /** The pieces of mat in the order of laying, a whole file. */
    public String pieces(Estimate estimate) {
        Csv csv = new Csv();
        heads(csv, "piece", "ply", "mat", "where", "width", "length", "roll", "cut", "along", "across", "laminate");
        csv.end();
        for (PieceEntry piece : estimate.pieces()) {
            csv.number(piece.piece()).number(piece.ply()).words(piece.mat()).words(piece.where()).number(piece.width()).number(piece.length())
                    .number(piece.roll()).number(piece.cut()).number(piece.along()).number(piece.across()).words(piece.laminate()).end();
        }
        return csv.text();
    }

    private static void heads(Csv csv, String... heads) {
        for (String head : heads) {
            csv.words(head);
        }
    }
}
