package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Frame;
import mouldwright.units.Display;

/** MW208: a backbone of layers is as wide as its layers measure; a stated width that differs by more than the clearance tells that the sheet was not the one
 *  thought of. */
final class SlotNotMatching implements Check {

    private static final double ROUNDING = 1e-9;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().frame().ifPresent(frame -> frame.backbones().forEach(backbone -> {
            double stated = backbone.width().likely(), built = frame.builtWidth(backbone);
            if (Math.abs(stated - built) > frame.clearance().likely() + ROUNDING)
                out.warn("MW208", backbone.origin(), "backbone " + Findings.length(stated) + " wide, but " + layers(frame, backbone) + " of "
                        + Findings.length(frame.thickness().likely()) + " measure" + (frame.layers(backbone) == 1 ? "s " : " ") + Findings.length(built)
                        + ", " + Findings.length(frame.clearance().likely()) + " of clearance: slots are cut for the layers",
                        "state `backbone " + millimetres(built) + " mm by ...`, or `timber` after it where it is no sheet");
        }));
    }

    private static String layers(Frame frame, Frame.Backbone backbone) {
        return frame.layers(backbone) == 1 ? "a layer" : frame.layers(backbone) + " layers";
    }

    private static String millimetres(double metres) {
        return Display.number(metres * 1000);
    }
}
