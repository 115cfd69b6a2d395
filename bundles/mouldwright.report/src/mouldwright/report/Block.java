package mouldwright.report;

import java.util.List;

/** A piece of a paper, one below the other. */
sealed interface Block permits Table, Block.Note, Block.Lead, Block.Steps, Block.Cautions {

    /** Words that belong to what stands above them. */
    record Note(String words) implements Block { }

    /** Words that belong to what stands below them. */
    record Lead(String words) implements Block { }

    /** Things to do, one after the other.
     *  @param title over them
     *  @param words of each step */
    record Steps(String title, List<String> words) implements Block {
        /** Takes a copy. */
        public Steps {
            words = List.copyOf(words);
        }
    }

    /** What can hurt people at this work. */
    record Cautions(List<String> words) implements Block {
        /** Takes a copy. */
        public Cautions {
            words = List.copyOf(words);
        }
    }
}
