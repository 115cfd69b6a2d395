package mouldwright.report;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Lines of the texts that were read, found without cutting a text into lines more than once. A line ends with a line feed, a carriage
 * return, or both. Not for use by several threads at once.
 */
public final class SourceLines {

    private final Map<Path, String> texts;
    private final Map<Path, int[]> starts = new HashMap<>();

    /** Lines of some texts.
     *  @param texts by absolute path */
    public SourceLines(Map<Path, String> texts) {
        this.texts = texts;
    }

    /** A line without its end; empty where the file or the line is not there.
     *  @param number counted from 1 */
    public String line(Path file, int number) {
        String text = texts.get(file);
        if (text == null) {
            return "";
        }
        int[] begin = starts.computeIfAbsent(file, f -> starts(text));
        if (number > begin.length) {
            return "";
        }
        int from = begin[number - 1];
        int to = number < begin.length ? begin[number] : text.length();
        while (to > from && (text.charAt(to - 1) == '\n' || text.charAt(to - 1) == '\r')) {
            to--;
        }
        return text.substring(from, to);
    }

    /** A place in a text.
     *  @param line   counted from 1
     *  @param column counted from 1, in characters */
    public record Place(int line, int column) { }

    /** Where a character stands.
     *  @param offset from the start of the text */
    public Place place(Path file, int offset) {
        String text = texts.getOrDefault(file, "");
        int[] begin = starts.computeIfAbsent(file, f -> starts(text));
        int found = Arrays.binarySearch(begin, offset);
        int line = found >= 0 ? found : -found - 2;
        return new Place(line + 1, offset - begin[line] + 1);
    }

    private static int[] starts(String text) {
        IntStream.Builder begin = IntStream.builder().add(0);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean lonelyReturn = c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n');
            if (c == '\n' || lonelyReturn) {
                begin.add(i + 1);
            }
        }
        return begin.build().toArray();
    }
}
