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
import mouldwright.geometry.nest.NestSheet;
import mouldwright.geometry.nest.Nester;
import mouldwright.geometry.nest.Turns;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Frame;
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
        for (Sheet sheet : plan.spec().frame().map(Frame::sheets).orElse(List.of())) {
            List<PlatePart> parts = plan.parts().stream().filter(part -> part.kind() != PlatePart.Kind.GAUGE && part.sheet().equals(sheet.name())).toList();
            if (!parts.isEmpty())
                layouts.add(lay(sheet, parts, choice, progress, cancelled));
        }
        return layouts;
    }

    private static SheetLayout lay(Sheet sheet, List<PlatePart> parts, SheetChoice choice, Consumer<NestProgress> progress, BooleanSupplier cancelled) {
        Given kerf = sheet.kerf().orElseGet(Defaults::kerf), margin = sheet.margin().orElseGet(Defaults::margin);
        List<NestPart> pieces = parts.stream().flatMap(part -> Collections.nCopies(part.quantity(), piece(part, sheet.grain(), choice)).stream())
                .toList();
        NestOrder order = new NestOrder(sizes(sheet), kerf.likely(), margin.likely(), pieces, choice.trials().orElse(NestOrder.usualTrials(pieces.size())),
                choice.seed());
        return new SheetLayout(sheet, parts.getFirst().thickness(), kerf, margin, parts, Nester.nest(order, progress, cancelled));
    }

    /** By their price where every size has one, else by their area. */
    private static List<NestSheet> sizes(Sheet sheet) {
        boolean priced = SheetLayout.priced(sheet);
        return sheet.sizes().stream().map(size -> {
            double length = Math.max(size.length().likely(), size.width().likely()), width = Math.min(size.length().likely(), size.width().likely());
            return priced ? new NestSheet(length, width, size.price().orElseThrow()) : NestSheet.byArea(length, width);
        }).toList();
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
