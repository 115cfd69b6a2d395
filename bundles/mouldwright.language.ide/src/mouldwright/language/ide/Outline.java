package mouldwright.language.ide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.language.Trade;
import mouldwright.model.LibraryHeader;
import mouldwright.model.Named;
import mouldwright.model.PlugPackage.Literals;
import mouldwright.model.StationRow;
import mouldwright.model.Survey;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** The parts of a text as a tree: declarations, in a plug its stations, lines, named amounts and blocks. */
public final class Outline {

    /**
     * A part.
     *
     * @param name        what it is called
     * @param kind        what people call its kind
     * @param detail      a few words more
     * @param offset      where it begins
     * @param length      of all of it
     * @param nameOffset  where its name stands, or its first word
     * @param nameLength  of that
     * @param parts       inside it
     */
    public record Part(String name, String kind, String detail, int offset, int length, int nameOffset, int nameLength, List<Part> parts) { }

    /** The parts of a file, in its order. */
    public List<Part> of(SpecView view) {
        return view.document().map(document -> parts(document)).orElse(List.of());
    }

    private static List<Part> parts(EObject whole) {
        List<Part> parts = new ArrayList<>();
        for (EObject part : whole.eContents()) {
            title(part).ifPresent(title -> part(part, title).ifPresent(parts::add));
        }
        parts.sort(java.util.Comparator.comparingInt(Part::offset));
        return parts;
    }

    private static Optional<Part> part(EObject part, String title) {
        ICompositeNode node = NodeModelUtils.findActualNodeFor(part);
        if (node == null || node.getLength() == 0) {
            return Optional.empty();
        }
        INode name = NodeModelUtils.findNodesForFeature(part, nameFeature(part)).stream().findFirst().orElse(null);
        boolean here = name != null && name.getOffset() >= node.getOffset() && name.getEndOffset() <= node.getEndOffset();
        int nameOffset = here ? name.getOffset() : node.getOffset();
        int nameLength = here ? name.getLength() : Math.min(node.getLength(), title.length());
        String detail = part instanceof Named named && named.getLabel() != null ? named.getLabel() : "";
        return Optional.of(new Part(title, Trade.kind(part.eClass()), detail, node.getOffset(), node.getLength(), nameOffset, nameLength, parts(part)));
    }

    private static org.eclipse.emf.ecore.EStructuralFeature nameFeature(EObject part) {
        return switch (part) {
            case Survey survey -> Literals.SURVEY__PLUG;
            case StationRow row -> Literals.STATION_ROW__FIRST;
            case LibraryHeader header -> Literals.LIBRARY_HEADER__NAME;
            default -> Literals.NAMED__NAME;
        };
    }

    /** What a part is listed as; empty for what is too small to be listed. */
    private static Optional<String> title(EObject part) {
        return switch (part) {
            case Survey survey -> Optional.of("survey" + (survey.getDate() == null ? "" : " of " + survey.getDate()));
            case StationRow row -> Optional.of(row.getFirst() + " to " + row.getLast());
            case LibraryHeader header -> Optional.ofNullable(header.getName());
            case Named named -> Optional.ofNullable(named.getName());
            default -> switch (part.eClass().getName()) {
                case "Frame", "Fill", "Carve", "Skin", "Finish", "Mould", "Air", "Release" -> Optional.of(Trade.kind(part.eClass()));
                default -> Optional.empty();
            };
        };
    }
}
