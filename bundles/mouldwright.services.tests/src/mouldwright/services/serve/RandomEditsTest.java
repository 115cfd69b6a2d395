package mouldwright.services.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import mouldwright.report.TextFinding;
import mouldwright.services.Checked;
import mouldwright.services.SpecSession;
import org.eclipse.lsp4j.*;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever is typed into a spec, the server goes on, has every stroke, and finds in the end what a fresh look at the same text finds. The strokes
 * are random, from seeds that are the same each time.
 */
class RandomEditsTest {

    private static final int ROUNDS = 2;
    /** Slips at a time; whoever types mends some before the next. */
    private static final int EDITS = 3;
    private static final String[] WORDS = { "{", "}", "(", ")", "\"", "/*", "*/", "//", "\r\n", "\n", "\r", " ", "station", "S9", "at", "kg", "0", "1e9", ",", ".", "use ", "plug",
        "\uD834\uDD1E", "\u00e9", "\u0416", "\t", "bay S1 to S2", "mm", "-", "%", "\ufeff", "let x = ", "from 1 to 2", "accept MW205 \"x\"" };

    private static Client client;

    @TempDir
    private Path folder;

    @BeforeAll
    static void serve() {
        client = new Client(true);
    }

    /** After all of it the server is still there to say goodbye. */
    @AfterAll
    static void end() {
        assertThat(client.end()).isZero();
    }

    static List<Path> specs() {
        return Served.exampleSpecs();
    }

    @ParameterizedTest
    @MethodSource("specs")
    void theServerFindsWhatAFreshLookFinds(Path example) throws IOException {
        Path examples = Served.examples();
        copy(examples, folder);
        Path file = folder.resolve(examples.relativize(example).toString());
        String uri = file.toUri().toString();
        Random random = new Random(examples.relativize(example).toString().replace('\\', '/').hashCode());
        String text = Files.readString(file);
        String sound = text;
        client.open(uri, text);
        for (int round = 0; round < ROUNDS; round++) {
            if (round > 0) {
                client.change(uri, new TextDocumentContentChangeEvent(sound));
                text = sound;
            }
            for (int i = 0; i < EDITS; i++) {
                text = edited(client, uri, text, random);
            }
        }
        List<String> found = told(client.settled(uri));
        Files.writeString(file, text);
        assertThat(found).isEqualTo(fresh(file, text));
        client.close(uri);
        assertThat(client.err()).as("faults of the program").isEmpty();
    }

    /** One random stroke, or a piece pasted or cut, and a question after it. */
    private static String edited(Client client, String uri, String text, Random random) {
        int from = place(text, random);
        int to = Math.min(text.length(), from + (random.nextInt(3) == 0 ? random.nextInt(12) : 0));
        if (splits(text, from) || splits(text, to)) {
            return text;
        }
        String put = random.nextInt(4) == 0 ? "" : random.nextInt(3) > 0 ? WORDS[random.nextInt(WORDS.length)] : piece(text, random);
        client.change(uri, new TextDocumentContentChangeEvent(new Range(position(text, from), position(text, to)), put));
        String edited = text.substring(0, from) + put + text.substring(to);
        ask(client, uri, position(edited, from + put.length()), random.nextInt(8));
        return edited;
    }

    private static List<String> told(List<Diagnostic> diagnostics) {
        return diagnostics.stream().map(one -> one.getSeverity() + " " + one.getCode().getLeft() + " " + one.getRange().getStart().getLine() + ":" + one.getRange().getStart().getCharacter() + " "
                + readable(one.getMessage().getLeft())).sorted().toList();
    }

    /** Reports of tests do not carry every character. */
    private static String readable(String message) {
        StringBuilder words = new StringBuilder();
        message.chars().forEach(c -> words.append(c >= ' ' && c < 127 ? String.valueOf((char) c) : String.format("<%04x>", c)));
        return words.toString();
    }

    private static List<String> fresh(Path file, String text) {
        Checked checked = SpecSession.start().check(file, () -> false);
        Positions positions = new Positions(text);
        List<Diagnostic> diagnostics = new ArrayList<>();
        for (TextFinding finding : checked.findings()) {
            if (finding.file().equals(file)) {
                diagnostics.add(Publisher.diagnostic(finding, positions));
            }
        }
        return told(diagnostics);
    }

    /** A question in between, so that every service meets texts that are half typed. */
    private static void ask(Client client, String uri, Position at, int which) {
        TextDocumentIdentifier document = new TextDocumentIdentifier(uri);
        var texts = client.server().getTextDocumentService();
        CompletableFuture<?> answer = switch (which) {
            case 0 -> texts.completion(new CompletionParams(document, at));
            case 1 -> texts.hover(new HoverParams(document, at));
            case 2 -> texts.semanticTokensFull(new SemanticTokensParams(document));
            case 3 -> texts.documentSymbol(new DocumentSymbolParams(document));
            case 4 -> texts.foldingRange(new FoldingRangeRequestParams(document));
            case 5 -> texts.codeAction(new CodeActionParams(document, new Range(at, at), new CodeActionContext(List.of())));
            case 6 -> texts.signatureHelp(new SignatureHelpParams(document, at));
            default -> texts.definition(new DefinitionParams(document, at));
        };
        try {
            Client.get(answer);
        } catch (IllegalStateException silent) {
            throw new AssertionError("question " + which + " is not answered: " + client.err(), silent);
        }
    }

    private static int place(String text, Random random) {
        return text.isEmpty() ? 0 : random.nextInt(text.length() + 1);
    }

    private static String piece(String text, Random random) {
        int from = place(text, random);
        int to = Math.min(text.length(), from + random.nextInt(20));
        return splits(text, from) || splits(text, to) ? "" : text.substring(from, to);
    }

    /** An editor never splits a pair of UTF-16 units, and never the two characters that end a line together. */
    private static boolean splits(String text, int at) {
        return at > 0 && at < text.length() && (Character.isLowSurrogate(text.charAt(at)) || text.charAt(at) == '\n' && text.charAt(at - 1) == '\r');
    }

    /** Counted by an own way of counting. */
    private static Position position(String text, int offset) {
        String[] lines = text.substring(0, offset).split("\r\n|\n|\r", -1);
        return new Position(lines.length - 1, lines[lines.length - 1].length());
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from, new FileVisitOption[0])) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }
}
