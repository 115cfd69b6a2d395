package mouldwright.language.ide;

/**
 * Something that may be written at a place.
 *
 * @param kind    of what sort it is
 * @param label   what is listed
 * @param insert  what is written; in a template {@code ${1:word}} is a gap to fill, with a word to begin with
 * @param detail  a few words beside it
 * @param about   what it is, for reading
 */
public record Proposal(Kind kind, String label, String insert, String detail, String about) {

    /** Sorts of proposals, in the order they are listed. */
    public enum Kind {
        /** A figure, a date or another value. */
        VALUE,
        /** A name that is declared somewhere. */
        NAME,
        /** A unit that measures what is asked for. */
        UNIT,
        /** A word of the language. */
        KEYWORD,
        /** A whole block. */
        TEMPLATE
    }

    /** One that is written as it is listed. */
    static Proposal plain(Kind kind, String word, String detail, String about) {
        return new Proposal(kind, word, word, detail, about);
    }

    /** What a template writes where gaps cannot be shown: each has its first word. */
    public String plainInsert() {
        return kind == Kind.TEMPLATE ? insert.replaceAll("\\$\\{\\d+:([^}]*)}", "$1").replace("$0", "") : insert;
    }
}
