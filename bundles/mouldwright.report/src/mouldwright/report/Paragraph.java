package mouldwright.report;

/** Running text broken into lines for a terminal. */
final class Paragraph {

    /** Columns a report is made for. */
    static final int WIDTH = 100;

    private Paragraph() { }

    /** Prints words after a first indent, following lines after another one. */
    static void print(String first, String following, String words, StringBuilder out) {
        StringBuilder line = new StringBuilder(first);
        int begun = line.length();
        for (String word : words.split(" ")) {
            if (line.length() > begun && line.length() + 1 + word.length() > WIDTH) {
                out.append(line.toString().stripTrailing()).append('\n');
                line = new StringBuilder(following);
                begun = line.length();
            }
            line.append(line.length() > begun ? " " : "").append(word);
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }
}
