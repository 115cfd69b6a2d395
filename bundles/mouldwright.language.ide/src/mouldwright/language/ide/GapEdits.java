package mouldwright.language.ide;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import mouldwright.language.parser.RepairingParser;
import mouldwright.language.parser.Word;
import org.eclipse.xtext.parser.IParser;

/** The way from a text to the same words laid out otherwise, as changes of the space between them, so that nothing else moves. */
public final class GapEdits {

    @Inject
    private IParser parser;

    /** The changes from one text to another with the same words; one change of all where the words differ. */
    public List<Edit> between(String before, String after) {
        List<Word> old = visible(before);
        List<Word> laid = visible(after);
        if (old.size() != laid.size()) {
            return List.of(new Edit(0, before.length(), after));
        }
        List<Edit> edits = new ArrayList<>();
        int from = 0;
        int to = 0;
        for (int i = 0; i <= old.size(); i++) {
            int end = i < old.size() ? old.get(i).offset() : before.length();
            int laidEnd = i < laid.size() ? laid.get(i).offset() : after.length();
            String gap = after.substring(to, laidEnd);
            if (!before.substring(from, end).equals(gap)) {
                edits.add(new Edit(from, end - from, gap));
            }
            if (i < old.size()) {
                from = old.get(i).end();
                to = laid.get(i).end();
            }
        }
        return edits;
    }

    private List<Word> visible(String text) {
        return ((RepairingParser) parser).words(text).stream().filter(word -> !word.isHidden()).toList();
    }
}
