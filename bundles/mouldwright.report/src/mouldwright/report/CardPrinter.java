package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mouldwright.report.PdfSheet.Tint;

/** Puts cards on pages, each on one: as large as they can be written, cautions at the foot. A list too long for a page becomes several cards. */
final class CardPrinter {

    private static final double BAND = 30;
    private static final double FOOT = 22;
    private static final int CODE = 8;

    private final Estimate estimate;
    private final PdfPaper paper;
    private final PdfSheet sheet;

    CardPrinter(Estimate estimate, PdfPaper paper) {
        this.estimate = estimate;
        this.paper = paper;
        this.sheet = new PdfSheet(estimate.plan().plug() + ", cards, revision " + estimate.revision(), paper);
    }

    byte[] print(List<Card> cards) {
        List<Card> all = cards.stream().flatMap(card -> onPages(card).stream()).toList();
        for (int i = 0; i < all.size(); i++) {
            print(all.get(i), i + 1, all.size());
        }
        return sheet.bytes();
    }

    /** The card itself where it fits, else as many as it takes, their lists shared out evenly. */
    private List<Card> onPages(Card card) {
        int rows = card.pieces().stream().mapToInt(CardShare::rows).max().orElse(0);
        for (int count = 1; count <= Math.max(1, rows); count++) {
            List<Card> shares = new ArrayList<>();
            for (int n = 0; n < count; n++) {
                int from = n;
                int of = count;
                shares.add(card.share(n + 1, count, card.pieces().stream().map(piece -> CardShare.of(piece, from, of)).toList()));
            }
            if (shares.stream().allMatch(share -> style(share).isPresent())) {
                return shares;
            }
        }
        return List.of(card);
    }

    private Optional<CardStyle> style(Card card) {
        return CardStyle.of(paper).stream().filter(style -> high(card, style) <= sheet.height() - 2 * style.margin() - FOOT).findFirst();
    }

    private double width(CardStyle style) {
        return sheet.width() - 2 * style.margin();
    }

    private double high(Card card, CardStyle style) {
        CardPieces pieces = new CardPieces(sheet, style);
        double high = BAND + style.gap() + titles(card, style).size() * style.title() * 1.15 + unders(card, style).size() * style.line();
        for (Card.Piece piece : card.pieces()) {
            high += style.gap() + pieces.high(piece);
        }
        return high + style.gap() + cautionHigh(card, style);
    }

    private List<String> titles(Card card, CardStyle style) {
        return sheet.lines(card.title(), width(style), style.title(), true);
    }

    private List<String> unders(Card card, CardStyle style) {
        return card.under().stream().flatMap(words -> sheet.lines(words, width(style), style.body(), false).stream()).toList();
    }

    private static List<String> cautions(Card card) {
        List<String> words = new ArrayList<>();
        words.add("Caution");
        words.addAll(card.cautions().stream().map(Caution::words).toList());
        words.add(Caution.DEFERENCE);
        return words;
    }

    private List<String> cautionLines(Card card, CardStyle style) {
        return cautions(card).stream().flatMap(words -> sheet.lines(words, width(style) - 30, style.caution(), false).stream()).toList();
    }

    private double cautionHigh(Card card, CardStyle style) {
        return cautionLines(card, style).size() * style.caution() * 1.25 + 18;
    }

    private void print(Card card, int number, int of) {
        CardStyle style = style(card).orElse(CardStyle.of(paper).getLast());
        double left = style.margin();
        double width = width(style);
        sheet.page();
        sheet.bookmark(card.kind() + ": " + card.title(), 0);
        double y = style.margin();
        band(card, left, y, width);
        y += BAND + style.gap();
        for (String line : titles(card, style)) {
            sheet.text(left, y + style.title() * 0.85, style.title(), true, Tint.INK, line);
            y += style.title() * 1.15;
        }
        for (String line : unders(card, style)) {
            sheet.text(left, y + style.body(), style.body(), false, Tint.INK, line);
            y += style.line();
        }
        CardPieces pieces = new CardPieces(sheet, style);
        for (Card.Piece piece : card.pieces()) {
            y += style.gap();
            pieces.print(piece, y);
            y += pieces.high(piece);
        }
        double foot = sheet.height() - style.margin();
        cautions(card, style, foot - FOOT - cautionHigh(card, style));
        String count = "card " + number + " of " + of;
        sheet.text(left, foot - 4, 11, false, Tint.INK, sheet.fitting(estimate.plan().plug() + ", revision " + estimate.revision(), width - 90, 11, false));
        sheet.textTo(left + width, foot - 4, 11, false, Tint.INK, count);
    }

    /** What is done, and the code by which a card is known: plug, revision, part. */
    private void band(Card card, double left, double y, double width) {
        String kind = card.kind().toUpperCase(Locale.ROOT);
        double kindWidth = sheet.width(kind, 17, true) + 24;
        String code = estimate.plan().plug() + " " + estimate.revision().substring(0, Math.min(CODE, estimate.revision().length())) + " " + card.part();
        sheet.fill(left, y, width, BAND, Tint.INK);
        sheet.text(left + 12, y + 21, 17, true, Tint.PAPER, kind);
        sheet.textTo(left + width - 10, y + 21, 14, true, Tint.PAPER, sheet.fitting(code, width - kindWidth - 20, 14, true));
    }

    private void cautions(Card card, CardStyle style, double top) {
        List<String> lines = cautionLines(card, style);
        double high = lines.size() * style.caution() * 1.25 + 14;
        sheet.box(style.margin(), top, width(style), high, 2, Tint.INK);
        sheet.fill(style.margin(), top, 8, high, Tint.INK);
        double y = top + 7;
        for (int i = 0; i < lines.size(); i++) {
            sheet.text(style.margin() + 20, y + style.caution() * 0.95, style.caution(), i == 0, Tint.INK, lines.get(i));
            y += style.caution() * 1.25;
        }
    }
}
