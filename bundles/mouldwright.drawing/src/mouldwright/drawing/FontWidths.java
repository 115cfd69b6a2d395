package mouldwright.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;

/** How wide the letters of a TrueType font are. Reads the tables {@code head}, {@code hhea}, {@code hmtx} and {@code cmap} (formats 4 and 12), as
 *  ISO/IEC 14496-22 lays them out; kerning is left out. */
final class FontWidths {

    private final ByteBuffer font;
    private final double unit;
    private final int metrics;
    private final int advances;
    private final int letters;
    private final int format;

    FontWidths(byte[] bytes) {
        font = ByteBuffer.wrap(bytes);
        unit = word(table("head") + 18);
        metrics = word(table("hhea") + 34);
        advances = table("hmtx");
        letters = letters(table("cmap"));
        format = word(letters);
    }

    /** The font of that name among the resources. */
    static FontWidths resource(String name) {
        try (InputStream in = FontWidths.class.getResourceAsStream(name)) {
            if (in == null)
                throw new IllegalStateException("the font " + name + " is missing from the program");
            return new FontWidths(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int word(int at) {
        return font.getShort(at) & 0xffff;
    }

    private int table(String name) {
        for (int i = 0; i < word(4); i++) {
            int entry = 12 + 16 * i;
            if (font.getInt(entry) == (name.charAt(0) << 24 | name.charAt(1) << 16 | name.charAt(2) << 8 | name.charAt(3)))
                return font.getInt(entry + 8);
        }
        throw new IllegalArgumentException("a font without " + name);
    }

    /** The subtable with most letters: of all Unicode (format 12), else of its first plane (format 4). */
    private int letters(int cmap) {
        int best = -1;
        for (int i = 0; i < word(cmap + 2); i++) {
            int at = cmap + font.getInt(cmap + 8 + 8 * i), is = word(at);
            if (is == 12 || is == 4 && best < 0)
                best = at;
        }
        if (best < 0)
            throw new IllegalArgumentException("a font without a table of letters");
        return best;
    }

    /** Whether the font has a letter for a code point. */
    boolean has(int c) {
        return glyph(c) != 0;
    }

    /** Advance of a letter as a share of the font's size; what the font does not have is as wide as its box. */
    double advance(int c) {
        int glyph = Math.min(glyph(c), metrics - 1);
        return word(advances + 4 * glyph) / unit;
    }

    private int glyph(int c) {
        return format == 12 ? glyphOfGroups(c) : c > 0xffff ? 0 : glyphOfSegments(c);
    }

    private int glyphOfGroups(int c) {
        int low = 0, high = font.getInt(letters + 12) - 1;
        while (low <= high) {
            int middle = (low + high) / 2, group = letters + 16 + 12 * middle;
            if (c < font.getInt(group))
                high = middle - 1;
            else if (c > font.getInt(group + 4))
                low = middle + 1;
            else
                return font.getInt(group + 8) + c - font.getInt(group);
        }
        return 0;
    }

    private int glyphOfSegments(int c) {
        int twice = word(letters + 6), ends = letters + 14, starts = ends + twice + 2, deltas = starts + twice, offsets = deltas + twice;
        for (int i = 0; i < twice; i += 2)
            if (c <= word(ends + i)) {
                if (c < word(starts + i))
                    return 0;
                int offset = word(offsets + i);
                int glyph = offset == 0 ? c : word(offsets + i + offset + 2 * (c - word(starts + i)));
                return offset != 0 && glyph == 0 ? 0 : glyph + word(deltas + i) & 0xffff;
            }
        return 0;
    }
}
