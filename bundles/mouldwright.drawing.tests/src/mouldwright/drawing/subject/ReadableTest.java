package mouldwright.drawing.subject;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.FileFormat.NamedDrawing;
import mouldwright.drawing.Layer;
import mouldwright.drawing.Mark;
import mouldwright.plan.BuildPlan;
import mouldwright.services.SpecSession;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every drawing of every example: nothing leaves the paper, no words stand over others, and all can be read at arm's length. ISO 3098
 *  knows letters of 1.8, 2.5, 3.5 mm and more. */
class ReadableTest {

    private static final double LEAST = 2.2;

    private static List<NamedDrawing> drawings(String example) {
        List<NamedDrawing> all = new ArrayList<>();
        for (BuildPlan plan : SpecSession.start().check(Path.of("../../examples", example).toAbsolutePath().normalize(), () -> false).plans().values())
            for (Subjects subject : Subjects.values())
                all.addAll(subject.draw(plan, plan.plug() + " 1234567890ab"));
        assertThat(all).isNotEmpty();
        return all;
    }

    @ParameterizedTest
    @ValueSource(strings = {"rain-canopy/canopy.plug", "wheel-fairing/fairing.plug", "nacelle-cowl/cowl.plug", "box/box.plug", "ten-lines/hatch.plug"})
    void wordsAreLargeEnoughAndClearOfOneAnother(String example) {
        for (NamedDrawing named : drawings(example)) {
            List<Mark.Words> words = Plans.words(named.drawing()).toList();
            assertThat(words).as(named.name()).allSatisfy(one -> assertThat(one.height()).as(one.text()).isGreaterThanOrEqualTo(LEAST));
            for (int i = 0; i < words.size(); i++)
                for (int j = 0; j < i; j++)
                    assertThat(meet(words.get(i).extent(), words.get(j).extent())).as(named.name() + ": " + words.get(i).text() + " over " + words.get(j).text()).isFalse();
            onPaper(named);
        }
    }

    private static boolean meet(Extent a, Extent b) {
        return a.left() < b.right() && b.left() < a.right() && a.bottom() < b.top() && b.bottom() < a.top();
    }

    private static void onPaper(NamedDrawing named) {
        Drawing drawing = named.drawing();
        Extent paper = drawing.extent();
        for (Layer layer : drawing.layers())
            for (Layer.Item item : layer.items())
                assertThat(item.mark().extent().with(paper)).as(named.name() + ": " + item.mark()).isEqualTo(paper);
    }
}
