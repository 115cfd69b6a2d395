package mouldwright.report;

import java.util.Locale;
import mouldwright.units.UnitSystem;

/** Sheets that papers are printed on, in points. */
public enum PdfPaper {
    /** ISO 216, 210 x 297 mm. */
    A4(595.276, 841.890),
    /** ISO 216, 148 x 210 mm. */
    A5(419.528, 595.276),
    /** 8.5 x 11 in. */
    LETTER(612, 792);

    private final double width;
    private final double height;

    PdfPaper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    /** What lies in the printers of people who use these units. */
    public static PdfPaper of(UnitSystem system) {
        return system == UnitSystem.US ? LETTER : A4;
    }

    /** The paper of a name in lower case, which must be one of them. */
    public static PdfPaper named(String name) {
        return valueOf(name.toUpperCase(Locale.ROOT));
    }
}
