package mouldwright.language.ide;

import com.google.inject.Inject;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import mouldwright.language.parser.RepairingParser;
import mouldwright.language.parser.Word;
import org.eclipse.xtext.parser.IParser;

/** What can be folded away: blocks, long comments, and the libraries used. */
public final class Folds {

    @Inject
    private IParser parser;

    /** Sorts of folds. */
    public enum Kind {
        /** Between braces. */
        BLOCK,
        /** A comment. */
        COMMENT,
        /** The libraries a file uses. */
        USES
    }

    /** A fold. @param from offset of its first word @param to offset of its last character */
    public record Fold(Kind kind, int from, int to) { }

    /** All that lies on several lines. */
    public List<Fold> of(String text) {
        List<Fold> folds = new ArrayList<>();
        Deque<Word> open = new ArrayDeque<>();
        Word firstUse = null;
        Word lastOfUses = null;
        boolean inUse = false;
        for (Word word : ((RepairingParser) parser).words(text)) {
            switch (word.kind()) {
                case "'{'" -> open.push(word);
                case "'}'" -> {
                    if (!open.isEmpty()) {
                        add(folds, Kind.BLOCK, open.pop().offset(), word.offset(), text);
                    }
                }
                case "ML_COMMENT" -> add(folds, Kind.COMMENT, word.offset(), word.end() - 1, text);
                default -> { }
            }
            if (!word.isHidden() && open.isEmpty()) {
                boolean begins = word.kind().equals("'use'");
                inUse = begins || inUse && !List.of("'plug'", "'library'", "'survey'", "'resin'", "'mat'", "'foam'", "'filler'", "'coating'", "'sheet'", "'schedule'",
                        "'hardener'", "'consumable'", "'rates'").contains(word.kind());
                firstUse = begins && firstUse == null ? word : firstUse;
                lastOfUses = inUse ? word : lastOfUses;
            }
        }
        if (firstUse != null) {
            add(folds, Kind.USES, firstUse.offset(), lastOfUses.end() - 1, text);
        }
        return folds;
    }

    private static void add(List<Fold> folds, Kind kind, int from, int to, String text) {
        if (text.indexOf('\n', from) >= 0 && text.indexOf('\n', from) < to) {
            folds.add(new Fold(kind, from, to));
        }
    }
}
