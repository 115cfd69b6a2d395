package mouldwright.check;

import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Sheet;
import mouldwright.plan.spec.Stiffener;

/** MW221: a margin on both sides that takes up a whole sheet, in any size it is to be had in, leaves nothing to cut parts from. */
final class SheetAllMargin implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().frame().ifPresent(frame -> frame.sheets().forEach(sheet -> examine(sheet, frame.origin(), out)));
        plan.spec().mould().ifPresent(mould -> mould.stiffeners().forEach(stiffener -> {
            if (stiffener.core() instanceof Stiffener.Core.Cut(Sheet sheet))
                examine(sheet, stiffener.origin(), out);
        }));
    }

    private static void examine(Sheet sheet, Origin origin, Findings out) {
        double margin = sheet.margin().orElseGet(Defaults::margin).likely();
        for (Sheet.Size size : sheet.sizes()) {
            double narrow = Math.min(size.width().likely(), size.length().likely());
            if (!(2 * margin < narrow))
                out.add(new Finding("MW221", Severity.ERROR, origin, "margins of " + Findings.length(margin) + " leave nothing of a sheet of " + sheet.name() + ", "
                        + Findings.length(narrow) + " wide", "state a `margin` of less than " + Findings.length(narrow / 2) + " in the sheet, or a larger `size`", List.of()));
        }
    }
}
