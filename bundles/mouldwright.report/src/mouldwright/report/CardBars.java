package mouldwright.report;

import java.util.List;
import mouldwright.report.PdfSheet.Tint;

/** Tasks on a card, each with its bar on the days of the whole job: work in grey, framed where the job ends later if it does, waits hatched. */
final class CardBars {

    private static final double BAR = 9;
    private static final double PITCH = 4;

    private final PdfSheet sheet;
    private final CardStyle style;
    private final double days;

    CardBars(PdfSheet sheet, CardStyle style, double days) {
        this.sheet = sheet;
        this.style = style;
        this.days = days;
    }

    private double each() {
        return style.line() + BAR + 10;
    }

    double high(List<Card.Bar> bars) {
        return bars.size() * each();
    }

    void print(List<Card.Bar> bars, double top) {
        double left = style.margin() + style.body() * 1.8;
        double right = sheet.width() - style.margin();
        double scale = (right - left) / days;
        double y = top;
        for (Card.Bar bar : bars) {
            sheet.box(style.margin(), y + style.line() * 0.12, style.body(), style.body(), 1.4, Tint.INK);
            double room = right - left - sheet.width(bar.when(), style.body(), false) - 12;
            sheet.text(left, y + style.body(), style.body(), false, Tint.INK, sheet.fitting(bar.words(), room, style.body(), false));
            sheet.textTo(right, y + style.body(), style.body(), false, Tint.INK, bar.when());
            double under = y + style.line() + 1;
            sheet.line(left, under + BAR, right, under + BAR, 0.4, Tint.LINE);
            double from = left + bar.from() * scale;
            double to = Math.max(from + 2.5, left + bar.to() * scale);
            wait(to, left + bar.ready() * scale, under);
            sheet.fill(from, under, to - from, BAR, bar.critical() ? Tint.SOFT : Tint.LINE);
            if (bar.critical()) {
                sheet.box(from, under, to - from, BAR, 1.4, Tint.INK);
            }
            y += each();
        }
    }

    private void wait(double from, double to, double under) {
        if (to - from < 1) {
            return;
        }
        for (double x = from; x < to; x += PITCH) {
            double end = Math.min(x + PITCH, to);
            sheet.line(x, under + BAR, end, under + BAR - BAR * (end - x) / PITCH, 0.5, Tint.SOFT);
        }
        sheet.box(from, under, to - from, BAR, 0.4, Tint.SOFT);
    }
}
