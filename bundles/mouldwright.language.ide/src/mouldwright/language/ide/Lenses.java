package mouldwright.language.ide;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import mouldwright.model.Plug;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** Figures of the plan, shown above the plug and the blocks they belong to. */
public final class Lenses {

    private static final int MOST = 4;

    /**
     * Figures above a line.
     *
     * @param offset of the block they belong to
     * @param words  the figures
     * @param plug   whose plan they are of
     * @param id     of the first of them
     */
    public record Lens(int offset, String words, String plug, String id) { }

    /** The lenses of a text, in its order; none before there is a plan. */
    public List<Lens> of(SpecView view) {
        List<Lens> lenses = new ArrayList<>();
        view.document().ifPresent(document -> document.getDeclarations().forEach(declaration -> {
            if (declaration instanceof Plug plug && view.plans().containsKey(plug.getName())) {
                BuildPlan plan = view.plans().get(plug.getName());
                add(view, plug, plan, lenses);
                plug.eContents().stream().filter(part -> !(part instanceof mouldwright.model.AbstractStation)).forEach(part -> add(view, part, plan, lenses));
            }
        }));
        lenses.sort(java.util.Comparator.comparingInt(Lens::offset));
        return lenses;
    }

    private static void add(SpecView view, EObject part, BuildPlan plan, List<Lens> lenses) {
        ICompositeNode node = NodeModelUtils.findActualNodeFor(part);
        List<Quantity> figures = Figures.of(view, part);
        if (node != null && !figures.isEmpty()) {
            String words = figures.stream().limit(MOST).map(figure -> figure.label() + " " + Figures.likely(figure)).collect(Collectors.joining(" | "));
            lenses.add(new Lens(node.getOffset(), words, plan.plug(), figures.getFirst().id()));
        }
    }
}
