package mouldwright.report;

import java.util.ArrayList;
import java.util.List;

/** A part of a paper under one heading. Empty tables and lists are left out. */
final class Section {

    private final String name;
    private final String heading;
    private final List<Block> blocks = new ArrayList<>();

    /** @param name of a stage, or of what else it shows; lower case, no spaces */
    Section(String name, String heading) {
        this.name = name;
        this.heading = heading;
    }

    Section table(Table table) {
        return table.rows().isEmpty() ? this : add(table);
    }

    /** Words that belong to what stands above them. */
    Section note(String words) {
        return add(new Block.Note(words));
    }

    /** Words that belong to the table that follows. */
    Section lead(String words) {
        return add(new Block.Lead(words));
    }

    Section steps(String title, List<String> words) {
        return words.isEmpty() ? this : add(new Block.Steps(title, words));
    }

    /** Cautions, with the words that none of the figures is a permission. */
    Section cautions(List<Caution> cautions) {
        if (cautions.isEmpty()) {
            return this;
        }
        List<String> words = new ArrayList<>(cautions.stream().map(Caution::words).toList());
        words.add(Caution.DEFERENCE);
        return add(new Block.Cautions(words));
    }

    private Section add(Block block) {
        blocks.add(block);
        return this;
    }

    String name() {
        return name;
    }

    String heading() {
        return heading;
    }

    List<Block> blocks() {
        return List.copyOf(blocks);
    }

    List<Table> tables() {
        return blocks.stream().filter(Table.class::isInstance).map(Table.class::cast).toList();
    }
}
