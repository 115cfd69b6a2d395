package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import mouldwright.report.PdfSheet.Tint;

/** Fills pages from top to bottom, and begins another where something would not fit. */
final class PdfFlow {

    private static final double MARGIN = 42;
    private static final double HEAD = 58;
    private static final double FOOT = 50;
    private static final double LEADING = 1.35;

    private final PdfSheet sheet;
    private double y;

    PdfFlow(PdfSheet sheet) {
        this.sheet = sheet;
        page();
    }

    private void page() {
        sheet.page();
        y = HEAD;
    }

    PdfSheet sheet() {
        return sheet;
    }

    double left() {
        return MARGIN;
    }

    double width() {
        return sheet.width() - 2 * MARGIN;
    }

    /** Whether so much still fits on this page. */
    boolean fits(double high) {
        return y + high <= sheet.height() - FOOT;
    }

    /** Begins a page unless so much still fits on this one. */
    void keep(double high) {
        if (!fits(high) && y > HEAD) {
            page();
        }
    }

    /** Takes a strip across the page and says where its upper edge is. */
    double take(double high) {
        keep(high);
        double at = y;
        y += high;
        return at;
    }

    /** Leaves some room, unless at the top of a page. */
    void space(double high) {
        if (y > HEAD) {
            y += high;
        }
    }

    /** Running text. */
    void words(String words, double points, boolean bold, Tint tint) {
        for (String line : sheet.lines(words, width(), points, bold)) {
            double top = take(points * LEADING);
            sheet.text(MARGIN, top + points, points, bold, tint, line);
        }
    }

    /** A step of a list. */
    void numbered(int number, String words, double points) {
        double indent = 26;
        List<String> lines = sheet.lines(words, width() - indent, points, false);
        keep(lines.size() * points * LEADING);
        for (int i = 0; i < lines.size(); i++) {
            double top = take(points * LEADING);
            if (i == 0) {
                sheet.textTo(MARGIN + indent - 8, top + points, points, false, Tint.SOFT, String.valueOf(number));
            }
            sheet.text(MARGIN + indent, top + points, points, false, Tint.INK, lines.get(i));
        }
    }

    void rule(double thick, Tint tint) {
        double top = take(14);
        sheet.line(MARGIN, top + 5, MARGIN + width(), top + 5, thick, tint);
    }

    /** A heading that never stands last on a page, with its place in the contents. */
    void heading(String words) {
        space(22);
        keep(110);
        double top = take(24);
        sheet.bookmark(words, top);
        sheet.text(MARGIN, top + 15, 15, true, Tint.INK, words);
        sheet.line(MARGIN, top + 21, MARGIN + width(), top + 21, 0.7, Tint.BLUE);
    }

    /** Words in a frame, all on one page. */
    void framed(String title, List<String> words, double points) {
        double pad = 8;
        List<String> lines = new ArrayList<>();
        for (String each : words) {
            lines.addAll(sheet.lines(each, width() - 3 * pad, points, false));
        }
        double high = (lines.size() + 1) * points * LEADING + 2 * pad;
        space(10);
        double top = take(high);
        sheet.box(MARGIN, top, width(), high, 1.2, Tint.INK);
        sheet.fill(MARGIN, top, 5, high, Tint.INK);
        sheet.text(MARGIN + 2 * pad, top + pad + points, points, true, Tint.INK, title);
        for (int i = 0; i < lines.size(); i++) {
            sheet.text(MARGIN + 2 * pad, top + pad + points + (i + 1) * points * LEADING, points, false, Tint.INK, lines.get(i));
        }
    }

    /** Writes the head and foot of every page, now that their number is known, and ends the file. */
    byte[] finish(String head, String code, String foot) {
        int pages = sheet.pages();
        for (int n = 0; n < pages; n++) {
            sheet.turnTo(n);
            double right = sheet.width() - MARGIN;
            if (n > 0) {
                sheet.text(MARGIN, 36, 8, false, Tint.SOFT, sheet.fitting(head.strip(), width() - sheet.width(code, 8, false) - 20, 8, false));
                sheet.textTo(right, 36, 8, false, Tint.SOFT, code);
                sheet.line(MARGIN, 42, right, 42, 0.5, Tint.LINE);
            }
            String page = "page " + (n + 1) + " of " + pages;
            sheet.text(MARGIN, sheet.height() - 28, 7, false, Tint.SOFT, sheet.fitting(foot, width() - sheet.width(page, 8, false) - 20, 7, false));
            sheet.textTo(right, sheet.height() - 28, 8, false, Tint.SOFT, page);
        }
        return sheet.bytes();
    }
}
