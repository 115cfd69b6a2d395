package mouldwright.services;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import mouldwright.check.Severity;
import mouldwright.check.TextEdit;
import mouldwright.check.TextFix;
import mouldwright.report.TextFinding;

/** Does the safe fixes of a text, several at a time where they stand apart, and looks again. A pass that leaves more errors than it found is not done. */
final class Mender {

    /** So many passes that a text which is mended to and fro comes to an end. */
    private static final int PASSES = 20;

    private final Path file;
    private final Function<String, Checked> check;

    /** A mender.
     *  @param file  whose findings count; those of libraries are theirs
     *  @param check looks at a text in its place */
    Mender(Path file, Function<String, Checked> check) {
        this.file = file;
        this.check = check;
    }

    Mended mend(String before) {
        String text = before;
        List<String> done = new ArrayList<>();
        Checked checked = check.apply(text);
        for (int pass = 0; pass < PASSES; pass++) {
            List<String> titles = new ArrayList<>();
            TextFix all = together(checked, titles);
            if (all.edits().isEmpty()) {
                break;
            }
            String next = all.applyTo(text);
            Checked after = check.apply(next);
            if (errors(after) > errors(checked)) {
                break;
            }
            text = next;
            checked = after;
            done.addAll(titles);
        }
        return new Mended(before, text, done);
    }

    private TextFix together(Checked checked, List<String> titles) {
        TextFix all = new TextFix("safe fixes", true, List.of());
        for (TextFinding finding : checked.findings()) {
            TextFix safe = finding.file().equals(file) ? finding.fixes().stream().filter(TextFix::safe).findFirst().orElse(null) : null;
            if (safe != null && all.apartFrom(safe)) {
                List<TextEdit> edits = new ArrayList<>(all.edits());
                edits.addAll(safe.edits());
                all = new TextFix(all.title(), true, edits);
                titles.add(finding.line() + ":" + finding.column() + "  " + finding.code() + "  " + safe.title());
            }
        }
        return all;
    }

    private static long errors(Checked checked) {
        return checked.findings().stream().filter(finding -> finding.severity() == Severity.ERROR).count();
    }
}
