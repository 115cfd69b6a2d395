package mouldwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.InputStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.junit.jupiter.api.Test;

/** Widths of words, held to those PDFBox reads out of the same font. */
class LetteringTest {

    private static double byPdfBox(String text) throws Exception {
        try (PDDocument document = new PDDocument(); InputStream font = LetteringTest.class.getResourceAsStream("/fonts/DejaVuSans.ttf")) {
            return PDType0Font.load(document, font, true).getStringWidth(text) / 1000;
        }
    }

    @Test void wordsAreAsWideAsAnotherReaderOfTheFontFindsThem() throws Exception {
        for (String text : new String[] {"Plate S2", "iiiiWWWW", "2006 mm, 12.5\u00b0, 7 m\u00b2 \u00b1", "\u0416\u03a9\u00e9\u00df\u2026"})
            assertThat(Lettering.width(text, Lettering.CAPITAL)).as(text).isCloseTo(byPdfBox(text), within(0.002));
    }

    @Property(tries = 100) void shortenedWordsFitTheirRoom(@ForAll @CharRange(from = ' ', to = '~') String text, @ForAll @DoubleRange(min = 0, max = 60) double room) {
        assertThat(Lettering.width(Lettering.fitted(text, 3, room), 3)).isLessThanOrEqualTo(Math.max(room, 0));
    }

    @Property(tries = 100) void wrappedWordsAreAllThereAndFit(@ForAll @CharRange(from = 'a', to = 'f') String word) {
        String text = (word.isEmpty() ? "x" : word) + " of bay S1 to S2";
        double room = Math.max(12, Lettering.width(word, 2));
        assertThat(String.join(" ", Lettering.wrapped(text, 2, room))).isEqualTo(text);
        assertThat(Lettering.wrapped(text, 2, room)).allSatisfy(line -> assertThat(Lettering.width(line, 2)).isLessThanOrEqualTo(room));
    }

    @Test void signsThatTurnTheDirectionOfANameRoundAreLeftOut() {
        Mark.Words words = new Mark.Words("S\u202e2\u2066\u200fx", new Spot(0, 0), 3, Mark.Anchor.START, 0, Tone.INK);
        assertThat(words.text()).isEqualTo("S2x");
    }
}
