package mouldwright.services.serve;

import java.util.ArrayList;
import java.util.List;
import mouldwright.language.ide.Edit;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;

/** Places of a text as the protocol counts them: lines end at a line feed, a return, or both; characters are UTF-16 units. */
final class Positions {

    private final String text;
    private final int[] starts;

    Positions(String text) {
        this.text = text;
        List<Integer> lines = new ArrayList<>(List.of(0));
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n')) {
                lines.add(i + 1);
            }
        }
        starts = lines.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The offset of a position; one past the end of its line is the line's end, one past the last line the end of the text. */
    int offset(Position position) {
        if (position.getLine() < 0) {
            return 0;
        }
        if (position.getLine() >= starts.length) {
            return text.length();
        }
        int start = starts[position.getLine()];
        return Math.clamp((long) start + position.getCharacter(), start, end(position.getLine()));
    }

    /** Where a line ends, before what ends it. */
    private int end(int line) {
        int end = line + 1 < starts.length ? starts[line + 1] : text.length();
        while (line + 1 < starts.length && end > starts[line] && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
            end--;
        }
        return end;
    }

    Position position(int offset) {
        int at = Math.clamp(offset, 0, text.length());
        int line = java.util.Arrays.binarySearch(starts, at);
        line = line < 0 ? -line - 2 : line;
        return new Position(line, at - starts[line]);
    }

    Range range(int offset, int length) {
        return new Range(position(offset), position(offset + length));
    }

    TextEdit edit(Edit edit) {
        return new TextEdit(range(edit.offset(), edit.length()), edit.text());
    }

    List<TextEdit> edits(List<Edit> edits) {
        return edits.stream().map(this::edit).toList();
    }

    /** The offset of a line and column of a finding, both counted from 1, its lines ending at line feeds alone. */
    int offset(int line, int column) {
        int start = 0;
        for (int i = 1; i < line; i++) {
            int next = text.indexOf('\n', start);
            if (next < 0) {
                return text.length();
            }
            start = next + 1;
        }
        return Math.min(text.length(), start + column - 1);
    }
}
