package mouldwright.report;

import java.util.List;

/**
 * How large a card is written, in points. Body of 14 and more, and figures of 28 and more, are read at arm's length.
 *
 * @param margin  of the page
 * @param title   of the card
 * @param body    of words
 * @param key     of the figures that must be seen first
 * @param gap     between pieces
 * @param caution words of the cautions
 * @param picture share of the page's height a drawing may take
 */
record CardStyle(double margin, double title, double body, double key, double gap, double caution, double picture) {

    private static final List<CardStyle> LARGE = List.of(new CardStyle(38, 32, 17, 58, 20, 15, 0.56), new CardStyle(38, 30, 16, 48, 15, 14.5, 0.54), new CardStyle(38, 28, 15, 40, 12, 14, 0.50),
            new CardStyle(36, 26, 14, 32, 9, 14, 0.45), new CardStyle(34, 24, 14, 28, 6, 14, 0.40));
    private static final List<CardStyle> SMALL = List.of(new CardStyle(24, 24, 15, 36, 12, 14, 0.50), new CardStyle(24, 22, 14, 30, 8, 14, 0.42), new CardStyle(22, 20, 14, 28, 5, 12, 0.38),
            new CardStyle(20, 18, 14, 28, 3, 10.5, 0.34));

    /** Those that suit a paper, the largest first. */
    static List<CardStyle> of(PdfPaper paper) {
        return paper == PdfPaper.A5 ? SMALL : LARGE;
    }

    /** From one line of words to the next. */
    double line() {
        return body * 1.32;
    }
}
