package mouldwright.services.serve;

import java.util.ArrayList;
import java.util.List;
import mouldwright.language.ide.Folds;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeKind;
import org.eclipse.lsp4j.Position;

/** Folds as the protocol counts them, by lines; the closing brace stays in sight. */
final class FoldingRanges {

    private FoldingRanges() { }

    static List<FoldingRange> of(Desk.About about) {
        List<FoldingRange> ranges = new ArrayList<>();
        for (Folds.Fold fold : about.spec().part(Folds.class).of(about.spec().text())) {
            Position from = about.positions().position(fold.from());
            Position to = about.positions().position(fold.to());
            int last = fold.kind() == Folds.Kind.BLOCK ? to.getLine() - 1 : to.getLine();
            if (last > from.getLine()) {
                FoldingRange range = new FoldingRange(from.getLine(), last);
                switch (fold.kind()) {
                    case COMMENT -> range.setKind(FoldingRangeKind.Comment);
                    case USES -> range.setKind(FoldingRangeKind.Imports);
                    case BLOCK -> { }
                }
                ranges.add(range);
            }
        }
        return ranges;
    }
}
