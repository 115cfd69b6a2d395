package mouldwright.services.serve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;

/** A folder with a small library and specs that use it, and a place in a text marked with a bar. */
final class Served {

    static final String STOCK = """
            /** A small stock. */
            library stock.small version "1.0" currency EUR

            /** The only foam. */
            foam Pour36 "Pour foam" {
                expansion 32
                density 36 kg/m3
            }
            resin Laminating { density 1.13 kg/l }
            mat Csm450 { areal 450 g/m2 glass 28.6 % }
            sheet BirchPly12 { thickness 12.0 mm }
            coating Surfacer { wet 200 um dry 150 um }
            schedule Skin using Laminating { ply Csm450 }
            """;

    static final String BOX = """
            use stock.small version "1.0"

            plug Box "A box" {
                units mm
                half sections
                line edge
                station A at 0 {
                    0 0
                    100 0 knuckle edge
                    100 50 knuckle
                    0 50
                }
                station B at 400 like A
                fill Pour36 solid {
                    overfill 15
                }
                skin Skin {
                    lap 50
                }
            }
            """;

    private final Path folder;

    Served(Path folder) {
        this.folder = folder;
        write("stock/small.plug", STOCK);
        write("mouldwright.project", "");
    }

    Path folder() {
        return folder;
    }

    Path write(String name, String text) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            return Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String uri(String name) {
        return folder.resolve(name).toUri().toString();
    }

    TextDocumentIdentifier document(String name) {
        return new TextDocumentIdentifier(uri(name));
    }

    /** Where a piece of text stands, counted as the protocol does by an own way of counting: lines by splitting, columns by UTF-16. */
    static Position at(String text, String piece) {
        int offset = text.indexOf(piece);
        if (offset < 0) {
            throw new IllegalArgumentException("not in the text: " + piece);
        }
        String before = text.substring(0, offset);
        String[] lines = before.split("\r\n|\n|\r", -1);
        return new Position(lines.length - 1, lines[lines.length - 1].length());
    }

    static Position after(String text, String piece) {
        return at(text + "\u0000", text.substring(text.indexOf(piece) + piece.length()) + "\u0000");
    }

    /** A text after edits, each counted in the text as it was. */
    static String applied(String text, List<? extends TextEdit> edits) {
        List<TextEdit> sorted = new ArrayList<>(edits);
        sorted.sort(Comparator.comparing((TextEdit edit) -> edit.getRange().getStart(), Comparator.comparingInt(Position::getLine).thenComparingInt(Position::getCharacter)).reversed());
        StringBuilder result = new StringBuilder(text);
        for (TextEdit edit : sorted) {
            result.replace(offset(text, edit.getRange().getStart()), offset(text, edit.getRange().getEnd()), edit.getNewText());
        }
        return result.toString();
    }

    private static int offset(String text, Position position) {
        int offset = 0;
        for (int line = 0; line < position.getLine(); line++) {
            int feed = text.indexOf('\n', offset);
            offset = feed < 0 ? text.length() : feed + 1;
        }
        return offset + position.getCharacter();
    }

    static Path examples() {
        Path root = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(root.resolve("examples"))) {
            root = root.getParent();
        }
        return root.resolve("examples");
    }

    /** All specs and libraries of the examples. */
    static List<Path> exampleSpecs() {
        try (Stream<Path> files = Files.walk(examples())) {
            return files.filter(file -> file.toString().endsWith(".plug")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
