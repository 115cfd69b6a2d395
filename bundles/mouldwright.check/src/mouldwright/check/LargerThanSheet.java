package mouldwright.check;

import java.util.List;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.CutParts;
import mouldwright.plan.spec.Fittings;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Sheet;

/** MW207: a part larger than its sheet is cut in pieces, or cannot be made of it at all. */
final class LargerThanSheet implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().frame().ifPresent(frame -> plan.measurements().find(CutParts.class).ifPresent(cut -> {
            for (String key : cut.jointed())
                jointed(key, cut.parts(), frame, out);
            for (String key : cut.tooLarge())
                out.add(new Finding("MW207", Severity.ERROR, frame.origin(), words(key) + " is larger than a sheet of " + size(sheet(key, frame))
                        + ", and eight pieces do not make it fit", "use a larger sheet, or part the body"));
        }));
    }

    private static void jointed(String key, List<PlatePart> parts, Frame frame, Findings out) {
        boolean layers = parts.stream().anyMatch(part -> part.key().startsWith(key + ".even."));
        String pieces = layers ? count(key + ".odd.", parts) + " pieces, its even layers in " + count(key + ".even.", parts) : count(key + ".", parts) + " pieces";
        boolean scarf = frame.fittings().join() instanceof Fittings.Join.Scarf;
        out.add(new Finding("MW207", Severity.INFO, frame.origin(), words(key) + " is larger than a sheet of " + size(sheet(key, frame)) + ": it is cut in " + pieces
                + ", " + (scarf ? "scarfed" : layers ? "butted, each butt between layers that run through" : "butted with a strap over each joint")
                + (layers ? "; joints of neighbouring layers are staggered" : ""),
                scarf ? "use a larger sheet, or `join strap`, which needs no planing" : "use a larger sheet, or `join scarf 8`, which leaves both faces flush"));
    }

    private static long count(String key, List<PlatePart> parts) {
        return parts.stream().filter(part -> part.key().startsWith(key) && part.kind() != PlatePart.Kind.STRAP).count();
    }

    private static Sheet sheet(String key, Frame frame) {
        return key.equals("base") ? frame.fittings().base().map(Fittings.Base::sheet).orElse(frame.sheet()) : frame.sheet();
    }

    private static String size(Sheet sheet) {
        Sheet.Size size = sheet.largest();
        return Findings.length(size.width().likely()) + " by " + Findings.length(size.length().likely());
    }

    /** A key as one says it: {@code plate.S2} is plate S2. */
    private static String words(String key) {
        return key.equals("base") ? "the base" : key.replaceFirst("\\.", " ");
    }
}
