package mouldwright.plan.sheets;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.nest.NestOrder;
import mouldwright.geometry.nest.NestPart;
import mouldwright.geometry.nest.NestProgress;
import mouldwright.geometry.nest.Nester;
import mouldwright.geometry.nest.Turns;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Fittings;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Sheet;

/** Lays the parts of a plan's frame on sheets, material by material. */
public final class SheetLaying {

    private SheetLaying() { }

    /** Lays them.
     *  @param progress  told after each round of the search
     *  @param cancelled stops the search, which then gives the best so far
     *  @return one for each material, in the order they are first cut from; none where there is nothing to cut */
    public static List<SheetLayout> lay(BuildPlan plan, SheetChoice choice, Consumer<NestProgress> progress, BooleanSupplier cancelled) {
        List<SheetLayout> layouts = new ArrayList<>();
        for (Sheet sheet : sheets(plan)) {
            List<PlatePart> parts = plan.parts().stream().filter(part -> part.kind() != PlatePart.Kind.GAUGE && part.sheet().equals(sheet.name())).toList();
            if (!parts.isEmpty())
                layouts.add(lay(sheet, parts, choice, progress, cancelled));
        }
        return layouts;
    }

    private static List<Sheet> sheets(BuildPlan plan) {
        List<Sheet> sheets = new ArrayList<>();
        plan.spec().frame().ifPresent(frame -> {
            sheets.add(frame.sheet());
            frame.fittings().base().map(Fittings.Base::sheet).filter(sheet -> !sheet.name().equals(frame.sheet().name())).ifPresent(sheets::add);
        });
        return sheets;
    }

    private static SheetLayout lay(Sheet sheet, List<PlatePart> parts, SheetChoice choice, Consumer<NestProgress> progress, BooleanSupplier cancelled) {
        Given kerf = sheet.kerf().orElseGet(Defaults::kerf), margin = sheet.margin().orElseGet(Defaults::margin);
        double length = Math.max(sheet.length().likely(), sheet.width().likely()), width = Math.min(sheet.length().likely(), sheet.width().likely());
        List<NestPart> pieces = parts.stream().flatMap(part -> Collections.nCopies(part.quantity(), piece(part, sheet.grain(), choice)).stream())
                .toList();
        NestOrder order = new NestOrder(length, width, kerf.likely(), margin.likely(), pieces, choice.trials().orElse(NestOrder.usualTrials(pieces.size())),
                choice.seed());
        return new SheetLayout(sheet, parts.getFirst().thickness(), kerf, margin, parts, Nester.nest(order, progress, cancelled));
    }

    /** A layer of a backbone bears along its length, so it is cut with the grain where that is known. */
    private static NestPart piece(PlatePart part, Sheet.Grain grain, SheetChoice choice) {
        Turns turns = part.kind() != PlatePart.Kind.BACKBONE ? choice.turns() : switch (grain) {
            case ALONG -> Turns.ALONG;
            case ACROSS -> Turns.ACROSS;
            case ANY -> choice.turns();
        };
        return new NestPart(part.key(), part.outer(), part.openings().stream().map(PlatePart.Opening::ring).toList(), turns);
    }
}
