package mouldwright.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Laying specs out without touching a word of them. */
class LayoutTest {

    private static SpecSession session;

    @TempDir
    private Path folder;

    @BeforeAll
    static void setUp() {
        session = SpecSession.start();
    }

    private Layout layOut(String text) throws IOException {
        return session.layOut(Files.writeString(folder.resolve("tried.plug"), text));
    }

    @Test void everyWordAndCommentStaysAndOnlyTheSpaceChanges() throws IOException {
        String text = "plug Box{units mm   half sections // half\nstation A at 0{0 0 100.50 0 knuckle 100 50 knuckle 0 50}\n"
                + "/* second */ station B at   4.0e2 like A}";
        Layout.Laid laid = (Layout.Laid) layOut(text);
        assertThat(laid.changed()).isTrue();
        assertThat(laid.text().replaceAll("\\s+", "")).isEqualTo(text.replaceAll("\\s+", ""));
        assertThat(laid.text()).contains("100.50", "4.0e2");
    }

    @Test void whatIsLaidOutStaysAsItIs() throws IOException {
        Layout.Laid once = (Layout.Laid) layOut("plug Box{units mm half sections station A at 0 point 0 1 station B at 1 like A}");
        assertThat(((Layout.Laid) layOut(once.text())).changed()).isFalse();
    }

    @Test void aTextThatCannotBeReadIsLeftAlone() throws IOException {
        assertThat(layOut("plug Box { unts mm }")).isInstanceOfSatisfying(Layout.Refused.class,
                refused -> assertThat(refused.findings()).isNotEmpty());
    }

    @Test void anUnknownNameDoesNotHinderTheLayout() throws IOException { // a text in the making
        assertThat(layOut("plug Box{fill Nothing solid{}}")).isInstanceOf(Layout.Laid.class);
    }

    @Test void anEmptyFileIsLaidOutAlready() throws IOException {
        assertThat(layOut("")).isEqualTo(new Layout.Laid("", false));
    }
}
