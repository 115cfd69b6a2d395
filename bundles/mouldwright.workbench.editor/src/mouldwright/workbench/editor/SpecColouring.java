package mouldwright.workbench.editor;

import java.util.Map;
import mouldwright.language.parser.Keywords;
import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.TextAttribute;
import org.eclipse.jface.text.presentation.PresentationReconciler;
import org.eclipse.jface.text.rules.DefaultDamagerRepairer;
import org.eclipse.jface.text.rules.IRule;
import org.eclipse.jface.text.rules.RuleBasedScanner;
import org.eclipse.jface.text.rules.Token;
import org.eclipse.jface.text.rules.WordRule;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.SWT;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.themes.IThemeManager;

/** Colours words, figures, texts and comments at once, without waiting for the language. */
public final class SpecColouring extends PresentationReconciler {

    /** What the names of the colours begin with; a theme may set them. */
    static final String PREFIX = "mouldwright.colour.";

    private final Map<String, RuleBasedScanner> scanners = Map.of(IDocument.DEFAULT_CONTENT_TYPE, new RuleBasedScanner(),
            SpecPartitions.DOC, new RuleBasedScanner(), SpecPartitions.COMMENT, new RuleBasedScanner(), SpecPartitions.TEXT, new RuleBasedScanner());
    private final IPropertyChangeListener themes = event -> themeChanged(event.getProperty());
    private ITextViewer viewer;

    /** Made by the platform for each editor. */
    public SpecColouring() {
        setDocumentPartitioning(SpecPartitions.NAME);
        colour();
        scanners.forEach((kind, scanner) -> {
            DefaultDamagerRepairer repairer = new DefaultDamagerRepairer(scanner);
            setDamager(repairer, kind);
            setRepairer(repairer, kind);
        });
    }

    @Override
    public void install(ITextViewer shown) {
        super.install(shown);
        viewer = shown;
        themeManager().addPropertyChangeListener(themes);
    }

    @Override
    public void uninstall() {
        themeManager().removePropertyChangeListener(themes);
        super.uninstall();
    }

    private void themeChanged(String property) {
        if (!property.startsWith(PREFIX) && !property.equals(IThemeManager.CHANGE_CURRENT_THEME))
            return;
        colour();
        if (viewer.getTextWidget() != null && !viewer.getTextWidget().isDisposed())
            viewer.invalidateTextPresentation();
    }

    private void colour() {
        scanners.get(SpecPartitions.DOC).setDefaultReturnToken(token("doc", SWT.NORMAL));
        scanners.get(SpecPartitions.COMMENT).setDefaultReturnToken(token("comment", SWT.NORMAL));
        scanners.get(SpecPartitions.TEXT).setDefaultReturnToken(token("text", SWT.NORMAL));
        scanners.get(IDocument.DEFAULT_CONTENT_TYPE).setRules(new IRule[] {new FigureRule(token("figure", SWT.NORMAL)), words()});
    }

    private static WordRule words() {
        WordRule rule = new WordRule(new LetterOfWord(), new Token(null));
        Token word = token("word", SWT.BOLD);
        Keywords.all().forEach(keyword -> rule.addWord(keyword, word));
        return rule;
    }

    private static Token token(String name, int style) {
        ColorRegistry colours = themeManager().getCurrentTheme().getColorRegistry();
        return new Token(new TextAttribute(colours.get(PREFIX + name), null, style));
    }

    private static IThemeManager themeManager() {
        return PlatformUI.getWorkbench().getThemeManager();
    }
}
