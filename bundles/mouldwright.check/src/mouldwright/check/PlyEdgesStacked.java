package mouldwright.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Skin;

/** MW507: plies that end in one line make a step that prints through and starts a crack. Edges at the ends of the body, at the centrelines and where the
 *  face turns bare are no such edges: all plies end there. Common practice. */
final class PlyEdgesStacked implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().skin().ifPresent(skin -> {
            List<PlyEdges> before = new ArrayList<>();
            for (Skin.Rule rule : skin.rules())
                if (rule instanceof Skin.Rule.AddPlies add)
                    PlyEdges.of(plan.spec(), add).ifPresent(edges -> {
                        tell(edges, before, skin, plan, out);
                        before.add(edges);
                    });
        });
    }

    private static void tell(PlyEdges edges, List<PlyEdges> before, Skin skin, BuildPlan plan, Findings out) {
        Map<String, Integer> plies = new HashMap<>();
        edges.all().forEach(edge -> plies.put(edge, edges.rule().count()));
        for (PlyEdges other : before)
            edges.sharedWith(other).forEach(edge -> plies.merge(edge, other.rule().count(), Integer::sum));
        edges.all().stream().filter(edge -> plies.get(edge) > 1).findFirst().ifPresent(edge -> out.warn("MW507", edges.rule().span().origin(),
                plies.get(edge) + " plies end in one line " + edge + ", 1 at most: their step prints through", "let each ply end a lap short of the one below it", StaggeredEdges.of(edges, plies, skin, plan)));
    }
}
