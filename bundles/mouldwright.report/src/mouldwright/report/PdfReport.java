package mouldwright.report;

import java.util.List;
import mouldwright.plan.Quantity;
import mouldwright.report.PdfSheet.Tint;
import mouldwright.units.UnitSystem;

/** An estimate as a PDF to print and to file: the key figures, then stage by stage what every paper has, with contents, page numbers and the code of
 *  plug and revision on each page. */
public final class PdfReport {

    private static final double GAP = 8;
    private static final double BODY = 9;
    private static final int KEYS_A_ROW = 4;

    private final UnitSystem system;
    private final PathNames names;

    /** @param system family of units the figures are shown in
     *  @param names  how files are named in findings */
    public PdfReport(UnitSystem system, PathNames names) {
        this.system = system;
        this.names = names;
    }

    /** The whole file. */
    public byte[] print(Estimate estimate) {
        EstimatePaper paper = new EstimatePaper(estimate, system, names);
        PdfFlow flow = new PdfFlow(new PdfSheet(estimate.plan().plug() + ", build plan, revision " + estimate.revision(), PdfPaper.of(system)));
        title(estimate, paper, flow);
        paper.stages().forEach(section -> section(section, flow));
        section(paper.findings(), flow);
        if (!estimate.assumed().isEmpty()) {
            section(paper.assumed(), flow);
        }
        return flow.finish(estimate.plan().plug() + "   " + estimate.plan().spec().title().orElse(""), "revision " + estimate.revision(), Caution.DEFERENCE);
    }

    private void title(Estimate estimate, EstimatePaper paper, PdfFlow flow) {
        flow.words("Build plan", 10, false, Tint.SOFT);
        flow.words(estimate.plan().plug(), 26, true, Tint.INK);
        estimate.plan().spec().title().ifPresent(title -> flow.words(title, 12, false, Tint.INK));
        flow.words("Revision " + estimate.revision(), 10, false, Tint.SOFT);
        paper.draws().ifPresent(words -> flow.words(words, BODY, false, Tint.INK));
        flow.rule(2, Tint.BLUE);
        keys(HtmlReport.key(estimate), paper, flow);
    }

    private static void keys(List<Quantity> keys, EstimatePaper paper, PdfFlow flow) {
        double width = flow.width() / KEYS_A_ROW;
        double high = 62;
        PdfSheet sheet = flow.sheet();
        for (int i = 0; i < keys.size(); i += KEYS_A_ROW) {
            double y = flow.take(high);
            for (int k = i; k < Math.min(keys.size(), i + KEYS_A_ROW); k++) {
                double x = flow.left() + (k - i) * width;
                Quantity quantity = keys.get(k);
                Figure figure = paper.figure(quantity);
                sheet.box(x, y, width, high, 0.5, Tint.LINE);
                sheet.text(x + GAP, y + 14, 7.5, false, Tint.SOFT, sheet.fitting(quantity.label(), width - 2 * GAP, 7.5, false));
                String value = figure.of(quantity.value());
                sheet.text(x + GAP, y + 36, 17, false, Tint.INK, value);
                sheet.text(x + GAP + sheet.width(value, 17, false) + 4, y + 36, 10, false, Tint.INK, figure.unit());
                if (quantity.low() < quantity.high()) {
                    sheet.text(x + GAP, y + 51, 8, false, Tint.SOFT, figure.of(quantity.low()) + " to " + figure.of(quantity.high()) + " " + figure.unit());
                }
            }
        }
    }

    private static void section(Section section, PdfFlow flow) {
        flow.heading(section.heading());
        for (Block block : section.blocks()) {
            switch (block) {
                case Table table -> new PdfTable(table, flow).print();
                case Block.Note(String words) -> flow.words(words, 8, false, Tint.SOFT);
                case Block.Lead(String words) -> {
                    flow.space(6);
                    flow.words(words, 8, false, Tint.SOFT);
                }
                case Block.Steps(String title, List<String> words) -> steps(title, words, flow);
                case Block.Cautions(List<String> words) -> flow.framed("Caution", words, BODY);
            }
        }
    }

    private static void steps(String title, List<String> words, PdfFlow flow) {
        flow.space(GAP);
        flow.keep(40);
        flow.words(Character.toUpperCase(title.charAt(0)) + title.substring(1), BODY, true, Tint.INK);
        for (int i = 0; i < words.size(); i++) {
            flow.numbered(i + 1, words.get(i), BODY);
        }
    }
}
