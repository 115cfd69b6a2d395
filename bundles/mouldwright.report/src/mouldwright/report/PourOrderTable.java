package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The order of the pours as a list to work through: trial cup, turnings, lifts and waits. Lifts poured one after the other stand in one line. */
final class PourOrderTable implements StageTable {

    @Override
    public String stage() {
        return "fill";
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        List<PourSteps.Line> lines = PourSteps.of(estimate);
        List<String> steps = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            int end = i;
            while (lines.get(i).act().equals("pour") && end + 1 < lines.size() && lines.get(end + 1).act().equals("pour")) {
                end++;
            }
            steps.add(words(lines.subList(i, end + 1), display));
            i = end;
        }
        out.steps("in this order", steps);
    }

    private static String words(List<PourSteps.Line> together, Display display) {
        PourSteps.Line line = together.getFirst();
        return switch (line.act()) {
            case "trial" -> "trial cup: see when the foam creams and how far it rises today";
            case "turn" -> "turn the plug " + (line.lies().equals("upright") ? "upright again" : line.lies())
                    + "; weigh it first, with enough people or gear made for it";
            case "wait" -> "wait " + display.format(line.time().orElse(0), Dimension.TIME) + " " + line.note();
            default -> "pour lift " + line.lift() + " of " + String.join(", ", together.stream().map(PourSteps.Line::bays).toList());
        };
    }
}
