package mouldwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.eclipse.ui.IViewReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** How the workbench opens. */
@ExtendWith(NothingLogged.class)
class OpeningTest {

    private final Bench bench = new Bench();

    @Test void theWindowOpensInTheViewOfAPlug() {
        assertEquals("Plug", bench.inWindow(() -> bench.window().getActivePage().getPerspective().getLabel()));
    }

    @Test void viewsOfThePlanStandReadyInIt() {
        List<String> titles = bench.inWindow(() -> Arrays.stream(bench.window().getActivePage().getViewReferences()).map(IViewReference::getId).toList());
        assertTrue(titles.containsAll(List.of("mouldwright.views.section", "mouldwright.views.lines", "mouldwright.views.surface")), titles.toString());
    }
}
