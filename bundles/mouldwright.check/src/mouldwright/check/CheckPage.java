package mouldwright.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/** What there is to know about a finding: why it is one, what it does on the shop floor, and what mends it. Each lies in a file of its own beside the
 *  checks, {@code page/MW412.txt}, of four lines; a code without one is none.
 *  @param code        such as {@code MW412}
 *  @param title       in a few words
 *  @param cause       what brings it about
 *  @param consequence what comes of it in the shop
 *  @param remedy      what is to be done */
public record CheckPage(String code, String title, String cause, String consequence, String remedy) {

    private static final int LINES = 4;
    private static final List<String> AREAS = List.of("Shape", "Frame", "Fill", "Carve and survey", "Skin and laminate", "Cure and conditions", "Finish and mould", "Plan",
            "Library and language");

    /** Refuses missing parts. */
    public CheckPage {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(cause, "cause");
        Objects.requireNonNull(consequence, "consequence");
        Objects.requireNonNull(remedy, "remedy");
    }

    /** The page of a code.
     *  @return empty for a code that is none */
    public static Optional<CheckPage> of(String code) {
        if (!code.matches("MW[1-9][0-9]{2}"))
            return Optional.empty();
        try (InputStream file = CheckPage.class.getResourceAsStream("page/" + code + ".txt")) {
            return file == null ? Optional.empty() : Optional.of(read(code, new String(file.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException("the page of " + code + " cannot be read", e);
        }
    }

    private static CheckPage read(String code, String text) {
        List<String> lines = text.lines().toList();
        if (lines.size() != LINES)
            throw new IllegalStateException("the page of " + code + " has " + lines.size() + " lines, not " + LINES);
        return new CheckPage(code, lines.get(0), lines.get(1), lines.get(2), lines.get(3));
    }

    /** All pages in the order of their codes. */
    public static List<CheckPage> all() {
        return IntStream.range(100, 1000).mapToObj(number -> of("MW" + number)).flatMap(Optional::stream).toList();
    }

    /** What a code's hundred is about, in words. */
    public String area() {
        return AREAS.get(code.charAt(2) - '1');
    }

    /** The page as plain text, for a terminal. */
    public String words() {
        return code + "  " + title + "\n\nCause\n    " + cause + "\n\nOn the shop floor\n    " + consequence + "\n\nRemedy\n    " + remedy + "\n";
    }
}
