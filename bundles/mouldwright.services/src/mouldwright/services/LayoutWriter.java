package mouldwright.services;

import com.google.inject.Injector;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mouldwright.report.TextFinding;
import org.eclipse.xtext.formatting2.FormatterRequest;
import org.eclipse.xtext.formatting2.IFormatter2;
import org.eclipse.xtext.formatting2.regionaccess.ITextRegionAccess;
import org.eclipse.xtext.formatting2.regionaccess.TextRegionAccessBuilder;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.resource.XtextResource;

/** Lays a spec out, and makes sure that every word and every comment of it is still there, in its order. */
final class LayoutWriter {

    /** A word that cannot stand there, and a property given twice, the first of which the model has lost. */
    private static final Set<String> IN_THE_WAY = Set.of("MW901", "MW909");

    private final Injector injector;

    LayoutWriter(Injector injector) {
        this.injector = injector;
    }

    Layout layOut(Path file, String text) {
        if (text.isBlank()) {
            return new Layout.Laid(text, false);
        }
        Optional<TextFinding> nesting = Nesting.finding(file, text);
        if (nesting.isPresent()) {
            return new Layout.Refused(List.of(nesting.get()), Map.of(file, text));
        }
        XtextResource resource = LoadedSpec.parse(LanguageSetup.resources(injector), file, text);
        if (resource.getParseResult().hasSyntaxErrors() || hasLost(resource)) {
            List<TextFinding> errors = LoadedSpec.load(injector, LanguageSetup.resources(injector), file, text, new LibraryFindings(), () -> false).findings().stream()
                    .filter(finding -> finding.file().equals(file) && IN_THE_WAY.contains(finding.code())).toList();
            return new Layout.Refused(errors, Map.of(file, text));
        }
        String laid = format(resource);
        List<String> before = words(resource);
        List<String> after = words(LoadedSpec.parse(LanguageSetup.resources(injector), file, laid));
        for (int i = 0; i < Math.max(before.size(), after.size()); i++) {
            if (i >= before.size() || i >= after.size() || !before.get(i).equals(after.get(i))) {
                return new Layout.MeaningLost(i < before.size() ? before.get(i) : after.get(i));
            }
        }
        return new Layout.Laid(laid, !laid.equals(text));
    }

    /** Whether a part that was read has no place in the model, as one that a second of its kind has replaced. */
    private static boolean hasLost(XtextResource resource) {
        for (INode node : resource.getParseResult().getRootNode().getAsTreeIterable()) {
            if (node.getSemanticElement() != null && node.getSemanticElement().eContainer() == null && !resource.getContents().contains(node.getSemanticElement())) {
                return true;
            }
        }
        return false;
    }

    private String format(XtextResource resource) {
        ITextRegionAccess regions = injector.getInstance(TextRegionAccessBuilder.class).forNodeModel(resource).create();
        FormatterRequest request = injector.getInstance(FormatterRequest.class);
        request.setTextRegionAccess(regions);
        return regions.getRewriter().renderToString(injector.getInstance(IFormatter2.class).format(request));
    }

    /** The words of a text and its comments, the space in these aside. */
    private static List<String> words(XtextResource resource) {
        List<String> words = new ArrayList<>();
        for (ILeafNode leaf : resource.getParseResult().getRootNode().getLeafNodes()) {
            String word = leaf.isHidden() ? leaf.getText().strip().replaceAll("\\s+", " ") : leaf.getText();
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words;
    }
}
