package mouldwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever meets a code finds its page. */
class CheckPageTest {

    private static final Path BUNDLES = Path.of("..").toAbsolutePath().normalize();
    private static final Path FAULTY = Path.of("../../examples/faulty").toAbsolutePath().normalize();
    private static final Path REFERENCE = Path.of("../mouldwright.check/reference/checks.md").toAbsolutePath().normalize();
    private static final Pattern CODE = Pattern.compile("\"(MW[1-9][0-9]{2})\"");

    private static Set<String> codes() throws IOException {
        Set<String> codes = new TreeSet<>();
        try (Stream<Path> files = Files.walk(BUNDLES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java") && f.toString().contains("/src/") && !f.toString().contains(".tests/")).toList()) {
                Matcher code = CODE.matcher(Files.readString(file));
                while (code.find())
                    codes.add(code.group(1));
            }
        }
        return codes;
    }

    @Test void everyCodeThatIsToldHasItsPage() throws IOException {
        Set<String> codes = codes();
        assertThat(codes).hasSizeGreaterThan(90);
        assertThat(CheckPage.all().stream().map(CheckPage::code).toList()).containsAll(codes);
    }

    @Test void aPageSaysWhatItDoesOnTheShopFloorAndWhatMendsIt() {
        CheckPage page = CheckPage.of("MW412").orElseThrow();
        assertThat(page.area()).isEqualTo("Carve and survey");
        assertThat(page.words()).startsWith("MW412  Crown between stations over the limit\n\nCause\n    ").contains("the flat shows between the bulkheads", "Insert a lofted station");
    }

    @Test void aCodeThatIsNoneHasNoPage() {
        assertThat(CheckPage.of("MW499")).isEmpty();
        assertThat(CheckPage.of("../MW412")).isEmpty();
    }

    /** The reference that is read is the pages and the examples that are run. */
    @Test void theReferenceIsMadeOfThePagesAndTheExamples() throws IOException {
        String made = reference();
        if (Boolean.getBoolean("mouldwright.golden.renew"))
            Files.writeString(REFERENCE, made);
        assertThat(Files.readString(REFERENCE)).isEqualTo(made);
    }

    private static String reference() throws IOException {
        StringBuilder out = new StringBuilder("# What is found\n\nEvery finding has a code that stays. `./mouldwright explain MW412` prints its page. An example of a code lies in\n"
                + "`examples/faulty`; its finding stands in the line whose comment names it.\n");
        String area = "";
        for (CheckPage page : CheckPage.all()) {
            if (!page.area().equals(area))
                out.append("\n## ").append(page.area()).append('\n');
            area = page.area();
            out.append("\n### ").append(page.code()).append(' ').append(page.title()).append("\n\n").append("**Cause.** ").append(page.cause()).append("\n\n**On the shop floor.** ")
                    .append(page.consequence()).append("\n\n**Remedy.** ").append(page.remedy()).append('\n');
            String files = examples(page.code()).stream().map(file -> "`examples/faulty/" + file.getFileName() + "`").collect(Collectors.joining(", "));
            if (!files.isEmpty())
                out.append("\n**Example.** ").append(files).append('\n');
        }
        return out.toString();
    }

    private static List<Path> examples(String code) throws IOException {
        try (Stream<Path> files = Files.list(FAULTY)) {
            return files.filter(file -> file.getFileName().toString().startsWith(code.toLowerCase(java.util.Locale.ROOT) + "-")).sorted().toList();
        }
    }
}
