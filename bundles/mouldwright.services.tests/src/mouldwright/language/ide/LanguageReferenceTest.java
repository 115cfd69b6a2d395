package mouldwright.language.ide;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.inject.Injector;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import mouldwright.language.PlugDocumentation;
import mouldwright.language.PlugStandaloneSetup;
import org.eclipse.xtext.IGrammarAccess;
import org.junit.jupiter.api.Test;

/** Whoever reads the reference reads the language that is parsed. */
class LanguageReferenceTest {

    private static final Path REFERENCE = Path.of("../mouldwright.language/reference/language.md").toAbsolutePath().normalize();

    private static String made() {
        Injector language = new PlugStandaloneSetup().createInjectorAndDoEMFRegistration();
        return new LanguageReference(language.getInstance(IGrammarAccess.class).getGrammar(), language.getInstance(PlugDocumentation.class)).text();
    }

    @Test void theReferenceIsMadeOfTheGrammarTheModelAndTheDefaults() throws IOException {
        String made = made();
        if (Boolean.getBoolean("mouldwright.golden.renew"))
            Files.writeString(REFERENCE, made);
        assertThat(Files.readString(REFERENCE)).isEqualTo(made);
    }

    @Test void aFigureIsAskedForByWhatItMeasures() {
        assertThat(made()).contains("density <density range>", "wait <time>", "pour (upright | upside down | on side)");
    }

    @Test void aDefaultIsToldWithItsReason() {
        assertThat(made()).containsPattern("\\| overfill \\| .* \\| \\d+ mm: ");
    }
}
