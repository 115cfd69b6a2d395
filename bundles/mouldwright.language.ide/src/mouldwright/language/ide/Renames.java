package mouldwright.language.ide;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.language.Trade;
import mouldwright.language.parser.RepairingParser;
import mouldwright.language.parser.Word;
import mouldwright.model.Named;
import mouldwright.units.Units;
import org.eclipse.xtext.parser.IParser;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.resource.XtextResource;

/** Gives something another name, everywhere. */
public final class Renames {

    @Inject
    private Names names;
    @Inject
    private IParser parser;

    /** What came of it. */
    public sealed interface Result {

        /** The changes, by text. */
        record Changes(Map<XtextResource, List<Edit>> edits) implements Result { }

        /** Nothing is changed, and why. */
        record Refused(String message) implements Result { }
    }

    /** The place of the name that would be changed, for the one who types the new one; refused where no name can be changed. */
    public Optional<Names.Use> target(SpecView view, int offset) {
        Optional<Named> named = names.at(view, offset);
        if (named.isEmpty() || names.given(named.get()).isEmpty()) {
            return Optional.empty();
        }
        return places(named.get(), List.of(view.resource())).stream().filter(use -> use.resource() == view.resource())
                .filter(use -> use.offset() <= offset && offset <= use.offset() + use.length()).findFirst();
    }

    /**
     * Changes a name.
     *
     * @param view   the text the name is changed in
     * @param texts  in which it may be used, its own among them
     * @param wanted the new name
     */
    public Result rename(SpecView view, int offset, List<XtextResource> texts, String wanted) {
        Optional<Named> found = names.at(view, offset);
        if (found.isEmpty()) {
            return new Result.Refused("there is no name here");
        }
        Named named = found.get();
        if (names.given(named).isEmpty()) {
            return new Result.Refused("`" + named.getName() + "` is named by its row; change the row");
        }
        Optional<String> refusal = refusal(named, wanted);
        if (refusal.isPresent()) {
            return new Result.Refused(refusal.get());
        }
        Map<XtextResource, List<Edit>> edits = new LinkedHashMap<>();
        places(named, texts).forEach(use -> edits.computeIfAbsent(use.resource(), text -> new ArrayList<>()).add(new Edit(use.offset(), use.length(), wanted)));
        for (Map.Entry<XtextResource, List<Edit>> text : edits.entrySet()) {
            if (breaks(text.getKey(), text.getValue())) {
                return new Result.Refused("`" + wanted + "` cannot stand where `" + named.getName() + "` stands; choose another name");
            }
        }
        return new Result.Changes(edits);
    }

    private Optional<String> refusal(Named named, String wanted) {
        List<Word> words = ((RepairingParser) parser).words(wanted);
        boolean word = words.size() == 1 && (words.getFirst().kind().equals("ID") || words.getFirst().kind().startsWith("'") && Character.isLetter(wanted.charAt(0)));
        if (!word) {
            return Optional.of("`" + wanted + "` is no name: a letter, then letters, digits and _");
        }
        if (Units.isUnit(wanted)) {
            return Optional.of("`" + wanted + "` is a unit; choose another name");
        }
        boolean taken = named.eContainer().eContents().stream().anyMatch(other -> other != named && other.eClass() == named.eClass() && other instanceof Named
                && wanted.equals(((Named) other).getName()));
        return taken ? Optional.of("another " + Trade.kind(named.eClass()) + " is called `" + wanted + "`") : Optional.empty();
    }

    /** Whether a text that could be read could not be read any more. */
    private boolean breaks(XtextResource text, List<Edit> edits) {
        String before = text.getParseResult().getRootNode().getText();
        return !text.getParseResult().hasSyntaxErrors()
                && parser.parse(new java.io.StringReader(Edit.applied(before, edits))).hasSyntaxErrors();
    }

    private List<Names.Use> places(Named named, List<XtextResource> texts) {
        List<Names.Use> places = new ArrayList<>();
        names.given(named).ifPresent(places::add);
        texts.forEach(text -> places.addAll(names.uses(named, text)));
        return places;
    }
}
