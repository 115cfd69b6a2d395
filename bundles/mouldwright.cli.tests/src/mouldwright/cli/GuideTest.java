package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Whoever follows the pages of the help sees what they show. A block {@code plug file=NAME} is saved in the folder of the examples, a block
 *  {@code console} is run there; a line {@code ...} stands for lines that are left out. */
class GuideTest {

    private static final Path PAGES = Path.of("../mouldwright.help/pages").toAbsolutePath().normalize();
    private static final Path EXAMPLES = Path.of("../../examples").toAbsolutePath().normalize();

    @TempDir
    private Path folder;

    @TestFactory Stream<DynamicTest> whatAPageShowsIsWhatHappens() throws IOException {
        copyStock();
        List<Path> pages;
        try (Stream<Path> files = Files.list(PAGES)) {
            pages = files.filter(file -> file.toString().endsWith(".md")).sorted().toList();
        }
        assertThat(pages).hasSizeGreaterThan(5);
        return pages.stream().map(page -> DynamicTest.dynamicTest(page.getFileName().toString(), () -> follow(Files.readAllLines(page))));
    }

    private void copyStock() throws IOException {
        Files.copy(EXAMPLES.resolve("mouldwright.project"), folder.resolve("mouldwright.project"));
        Files.createDirectories(folder.resolve("stock"));
        try (Stream<Path> files = Files.list(EXAMPLES.resolve("stock"))) {
            for (Path file : files.toList())
                Files.copy(file, folder.resolve("stock").resolve(file.getFileName()));
        }
    }

    private void follow(List<String> lines) throws IOException {
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).startsWith("```") || lines.get(i).equals("```"))
                continue;
            int from = i + 1;
            while (!lines.get(++i).equals("```")) { }
            String kind = lines.get(from - 1).substring(3);
            List<String> block = lines.subList(from, i);
            if (kind.startsWith("plug file="))
                save(kind.substring("plug file=".length()), block);
            else if (kind.equals("console"))
                run(block);
            else
                assertThat(kind).as("a block that nothing tries").isEmpty();
        }
    }

    private void save(String name, List<String> block) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, block);
    }

    private void run(List<String> block) {
        assertThat(block.getFirst()).startsWith("$ mouldwright ");
        Run run = Run.in(folder, block.getFirst().substring("$ mouldwright ".length()).split(" "));
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.FINE);
        shows(run.out().lines().toList(), block.subList(1, block.size()));
    }

    /** Whether lines stand in an output in their order, those between two {@code ...} without a gap. */
    private static void shows(List<String> output, List<String> shown) {
        List<List<String>> runs = new ArrayList<>(List.of(new ArrayList<>()));
        for (String line : shown) {
            if (line.equals("..."))
                runs.add(new ArrayList<>());
            else
                runs.getLast().add(line);
        }
        int at = 0;
        for (int i = 0; i < runs.size(); i++) {
            List<String> run = runs.get(i);
            int found = i == 0 ? (output.subList(0, Math.min(run.size(), output.size())).equals(run) ? 0 : -1) : find(output, run, at);
            assertThat(found).as("in this order:\n%s\nis shown:\n%s", String.join("\n", output), String.join("\n", run)).isGreaterThanOrEqualTo(0);
            at = found + run.size();
        }
        if (runs.size() == 1)
            assertThat(output).isEqualTo(shown);
    }

    private static int find(List<String> output, List<String> run, int from) {
        for (int at = from; at + run.size() <= output.size(); at++) {
            if (output.subList(at, at + run.size()).equals(run))
                return at;
        }
        return -1;
    }
}
