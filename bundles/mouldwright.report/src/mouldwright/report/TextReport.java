package mouldwright.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import mouldwright.units.UnitSystem;

/**
 * An estimate for reading at a terminal of a hundred columns: stage by stage the figures with their range and the id that
 * {@code explain} takes, then the tables of the stage, the cautions, what was assumed and what was found.
 */
public final class TextReport {

    private final UnitSystem system;
    private final PathNames names;

    /**
     * A writer of text reports.
     *
     * @param system family of units the figures are shown in
     * @param names  how files are named in findings
     */
    public TextReport(UnitSystem system, PathNames names) {
        this.system = system;
        this.names = names;
    }

    /** The whole text, each line ending with a line feed. */
    public String print(Estimate estimate) {
        StringBuilder out = new StringBuilder();
        EstimatePaper paper = new EstimatePaper(estimate, system, names);
        Optional<String> title = estimate.plan().spec().title();
        out.append(estimate.plan().plug()).append(title.map(words -> "   " + Printable.of(words)).orElse("")).append('\n');
        out.append("revision ").append(estimate.revision()).append('\n');
        paper.draws().ifPresent(words -> Paragraph.print("", "", words, out));
        paper.stages().forEach(section -> section(section, out));
        new AssumedText(system).print(estimate.assumed(), out);
        findings(estimate, out);
        return out.toString();
    }

    private static void section(Section section, StringBuilder out) {
        heading(section.heading(), out);
        List<Block> blocks = section.blocks();
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            boolean joined = i == 0 ? !(block instanceof Block.Cautions) : block instanceof Block.Note || blocks.get(i - 1) instanceof Block.Lead;
            out.append(joined ? "" : "\n");
            block(block, out);
        }
    }

    private static void block(Block block, StringBuilder out) {
        switch (block) {
            case Table table -> table.print("  ", out);
            case Block.Note(String words) -> Paragraph.print("  ", "  ", words, out);
            case Block.Lead(String words) -> Paragraph.print("  ", "  ", words, out);
            case Block.Steps(String title, List<String> words) -> {
                out.append("  ").append(title).append('\n');
                for (int i = 0; i < words.size(); i++) {
                    Paragraph.print(String.format(Locale.ROOT, "  %3d   ", i + 1), "        ", words.get(i), out);
                }
            }
            case Block.Cautions(List<String> words) -> words.forEach(caution -> Paragraph.print("  ! ", "    ", caution, out));
        }
    }

    private void findings(Estimate estimate, StringBuilder out) {
        heading("Findings", out);
        FindingsText text = new FindingsText(names, Map.of(), Ink.NONE);
        estimate.findings().forEach(finding -> Paragraph.print("  ", "      ", text.headline(finding), out));
        out.append("  ").append(estimate.findings().isEmpty() ? "none" : FindingsText.summary(estimate.findings())).append('\n');
    }

    static void heading(String title, StringBuilder out) {
        out.append('\n').append(title).append(' ').append("-".repeat(Paragraph.WIDTH - title.length() - 1)).append('\n');
    }
}
