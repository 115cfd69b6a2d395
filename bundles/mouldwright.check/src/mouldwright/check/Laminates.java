package mouldwright.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;
import mouldwright.process.Laminate;

/** The laminates a spec lays, for the checks that look at each of them. */
final class Laminates {

    private Laminates() { }

    /** The schedules of skin, mould and part, each once. */
    static Set<Schedule> of(Spec spec) {
        Set<Schedule> all = new LinkedHashSet<>();
        spec.skin().ifPresent(skin -> all.add(skin.schedule()));
        spec.mould().ifPresent(mould -> all.add(mould.schedule()));
        spec.part().ifPresent(all::add);
        return all;
    }

    /** The mats of all of them and of the skin's local plies, each once. */
    static Set<Mat> mats(Spec spec) {
        Set<Mat> mats = new LinkedHashSet<>();
        of(spec).forEach(schedule -> schedule.plies().forEach(ply -> mats.add(ply.mat())));
        spec.skin().ifPresent(skin -> skin.rules().forEach(rule -> {
            if (rule instanceof Skin.Rule.AddPlies add)
                mats.add(add.mat());
        }));
        return mats;
    }

    /** The runs of plies that are laid without a wait for cure between them. A coat does not part them. */
    static List<List<Schedule.Layer.Ply>> atOnce(Schedule schedule) {
        List<List<Schedule.Layer.Ply>> runs = new ArrayList<>(List.of(new ArrayList<>()));
        for (Schedule.Layer layer : schedule.layers())
            switch (layer) {
                case Schedule.Layer.Ply ply -> runs.getLast().add(ply);
                case Schedule.Layer.Wait wait -> runs.add(new ArrayList<>());
                case Schedule.Layer.Coat coat -> { }
            }
        return runs.stream().filter(run -> !run.isEmpty()).toList();
    }

    /** Likely cured thickness of a ply, m; 0 where its figures make no sense, which is told elsewhere. */
    static double cured(Mat mat, Resin resin) {
        double glass = mat.glass().likely();
        boolean sane = glass > 0 && glass < 1 && mat.areal().likely() > 0 && mat.fibre().likely() > 0 && resin.cured().likely() > 0;
        return sane ? Laminate.curedThickness(mat.areal().likely(), glass, new Laminate.Densities(mat.fibre().likely(), resin.cured().likely())) : 0;
    }
}
