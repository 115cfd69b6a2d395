package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.nest.Nest;
import mouldwright.geometry.nest.Placement;
import mouldwright.plan.sheets.SheetLayout;

/** A sheet at full size with the parts laid on it, each with all that is marked on it; the sheet's corner is at 0, 0. */
public final class NestedSheet {

    private static final double MM = 1000;
    private static final double PAPER_MARGIN = 30;
    private static final double TITLE = 24;
    private static final double WOOD = 0.45;

    private NestedSheet() { }

    /** All sheets of some materials, in order. @param code of plug and revision, written beside each */
    public static List<Drawing> of(List<SheetLayout> layouts, String code) {
        List<Drawing> drawings = new ArrayList<>();
        for (SheetLayout layout : layouts)
            for (int sheet = 0; sheet < layout.nest().sheets(); sheet++)
                drawings.add(of(layout, sheet, code));
        return drawings;
    }

    /** One sheet. @param sheet counted from 0 */
    public static Drawing of(SheetLayout layout, int sheet, String code) {
        Nest nest = layout.nest();
        double length = nest.taken().get(sheet).length() * MM, width = nest.taken().get(sheet).width() * MM, margin = nest.order().margin() * MM;
        Draughtsman board = new Draughtsman();
        board.path(Role.SHEET, Path.box(new Extent(0, 0, length, width)));
        if (margin > 0)
            board.path(Role.HIDDEN, Path.box(new Extent(margin, margin, length - margin, width - margin)));
        for (Placement placement : nest.on(sheet)) {
            PlatePart laid = LaidPart.of(layout.part(placement), placement);
            board.about(laid.key());
            List<Path> rings = new ArrayList<>(List.of(PartTemplate.ring(laid.outer())));
            laid.openings().forEach(opening -> rings.add(PartTemplate.ring(opening.ring())));
            board.draw(Role.AREA, new Mark.Area(rings, new Mark.Fill.Even(Tone.WOOD, WOOD)));
            PartTemplate.draw(board, laid);
        }
        String title = layout.sheet().name() + ", sheet " + (sheet + 1) + " of " + nest.sheets();
        board.about("").words(title + "   " + code, new Spot(0, width + TITLE / 2), TITLE, Mark.Anchor.START);
        return board.finish(title, words(layout, sheet), PAPER_MARGIN);
    }

    private static String words(SheetLayout layout, int sheet) {
        Nest nest = layout.nest();
        return String.format(Locale.ROOT, "%s of %.1f mm, %.0f by %.0f mm, %.0f %% of it used: %s", layout.sheet().name(), layout.thickness() * MM, nest.taken().get(sheet).width() * MM,
                nest.taken().get(sheet).length() * MM, 100 * nest.shareUsed(sheet), String.join(", ", nest.on(sheet).stream().map(placement -> layout.part(placement).name()).toList()));
    }
}
