package mouldwright.check;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Schedule;

/** MW709: a coat put on too thick sags, traps solvent and cracks. More than 25 mil, 0.635 mm, risks cracking (as quoted on iboats). */
final class FilmTooThick implements Check {

    private static final double MOST = 0.635e-3;

    /** So many thin coats for each thick one as keep within the limit, with as much film between them. */
    private static Fix thinner(Finish.Coats coats, double wet) {
        int parts = (int) Math.ceil(wet / MOST - 1e-9);
        Coating coating = coats.coating();
        List<Remedy> remedies = new ArrayList<>(List.of(new Remedy.State(coating.stock().origin(), "wet", "wet " + microns(wet / parts)),
                new Remedy.Replace(coats.origin(), coats.count() * parts + " coats " + coating.name())));
        coating.dry().ifPresent(dry -> remedies.add(new Remedy.State(coating.stock().origin(), "dry", "dry " + microns(dry.likely() / parts))));
        return new Fix("lay " + coats.count() * parts + " thinner coats", false, remedies);
    }

    private static String microns(double metres) {
        return Math.round(metres * 1e6) + " um";
    }

    @Override public void examine(BuildPlan plan, Findings out) {
        List<Finish.Coats> all = new ArrayList<>();
        plan.spec().finish().ifPresent(finish -> all.addAll(finish.coats()));
        plan.spec().mould().ifPresent(mould -> {
            all.addAll(mould.release());
            for (Schedule.Layer layer : mould.schedule().layers())
                if (layer instanceof Schedule.Layer.Coat coat && all.stream().noneMatch(other -> other.coating().equals(coat.coating())))
                    all.add(new Finish.Coats(1, coat.coating(), mould.origin()));
        });
        for (Finish.Coats coats : all)
            coats.coating().wet().map(Given::likely).filter(wet -> wet > MOST).ifPresent(wet -> out.warn("MW709", coats.origin(),
                    "a coat of " + coats.coating().name() + " is " + Findings.length(wet) + " wet, " + Findings.length(MOST) + " at most: it sags and cracks",
                    "state a thinner film and more coats", thinner(coats, wet)));
    }
}
