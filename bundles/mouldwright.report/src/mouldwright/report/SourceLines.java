package mouldwright.report;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/** Lines of the texts that were read, found without cutting a text into lines more than once. */
final class SourceLines {

    private final Map<Path, String> texts;
    private final Map<Path, int[]> starts = new HashMap<>();

    SourceLines(Map<Path, String> texts) {
        this.texts = texts;
    }

    /** A line without its end; empty where the file or the line is not there. */
    String line(Path file, int number) {
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

    private static int[] starts(String text) {
        int count = 1;
        for (int i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) {
            count++;
        }
        int[] begin = new int[count];
        int at = 0;
        for (int i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) {
            begin[++at] = i + 1;
        }
        return begin;
    }
}
