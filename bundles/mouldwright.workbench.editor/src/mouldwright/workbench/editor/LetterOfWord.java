package mouldwright.workbench.editor;

import org.eclipse.jface.text.rules.IWordDetector;

/** What a word is made of. */
final class LetterOfWord implements IWordDetector {

    @Override
    public boolean isWordStart(char c) {
        return Character.isLetter(c) || c == '_' || c == '\u00B0' || c == '\u00B5';
    }

    @Override
    public boolean isWordPart(char c) {
        return isWordStart(c) || Character.isDigit(c);
    }
}
