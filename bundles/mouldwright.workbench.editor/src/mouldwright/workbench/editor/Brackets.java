package mouldwright.workbench.editor;

import org.eclipse.jface.text.source.DefaultCharacterPairMatcher;

/** Braces and brackets that belong together. */
public final class Brackets extends DefaultCharacterPairMatcher {

    /** Made by the platform for each editor. */
    public Brackets() {
        super(new char[] {'{', '}', '(', ')'});
    }
}
