package mouldwright.services.serve;

import java.util.ArrayList;
import java.util.List;
import mouldwright.language.ide.Colours;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.SemanticTokenModifiers;
import org.eclipse.lsp4j.SemanticTokenTypes;
import org.eclipse.lsp4j.SemanticTokensLegend;

/** Coloured words in the numbers of the protocol: five a word, each counted from the word before. */
final class TokenColours {

    private static final List<String> TYPES = List.of(SemanticTokenTypes.Keyword, SemanticTokenTypes.Number, SemanticTokenTypes.Type, SemanticTokenTypes.String,
            SemanticTokenTypes.Comment, SemanticTokenTypes.Class, SemanticTokenTypes.Variable, SemanticTokenTypes.Namespace, SemanticTokenTypes.Operator);

    private TokenColours() { }

    static SemanticTokensLegend legend() {
        return new SemanticTokensLegend(TYPES, List.of(SemanticTokenModifiers.Declaration));
    }

    private static String type(Colours.Kind kind) {
        return switch (kind) {
            case KEYWORD -> SemanticTokenTypes.Keyword;
            case NUMBER -> SemanticTokenTypes.Number;
            case UNIT -> SemanticTokenTypes.Type;
            case TEXT -> SemanticTokenTypes.String;
            case COMMENT -> SemanticTokenTypes.Comment;
            case DECLARATION -> SemanticTokenTypes.Class;
            case PART -> SemanticTokenTypes.Variable;
            case LIBRARY -> SemanticTokenTypes.Namespace;
            case SIGN -> SemanticTokenTypes.Operator;
        };
    }

    static List<Integer> of(Desk.About about) {
        List<Integer> numbers = new ArrayList<>();
        Position before = new Position(0, 0);
        for (Colours.Coloured word : about.spec().part(Colours.class).of(about.view())) {
            int from = word.offset();
            int end = word.offset() + word.length();
            // A comment over several lines is one token a line.
            while (from < end) {
                Position at = about.positions().position(from);
                int lineEnd = about.positions().offset(new Position(at.getLine(), Integer.MAX_VALUE / 2));
                int to = Math.min(end, lineEnd);
                if (to > from) {
                    boolean sameLine = at.getLine() == before.getLine();
                    numbers.addAll(List.of(at.getLine() - before.getLine(), at.getCharacter() - (sameLine ? before.getCharacter() : 0), to - from,
                            TYPES.indexOf(type(word.kind())), word.declares() ? 1 : 0));
                    before = at;
                }
                from = to < end ? about.positions().offset(new Position(at.getLine() + 1, 0)) : end;
            }
        }
        return numbers;
    }
}
