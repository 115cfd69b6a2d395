package mouldwright.check;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Mould;
import mouldwright.units.Dimension;

/** MW706 and MW707: a new plug that is waxed too little, or has no film over the wax, keeps its mould. Published guides ask for 3 to 7 coats of wax and
 *  then a film. What spreads by weight is taken for a wax, what spreads by volume for a film. */
final class ReleaseCoats implements Check {

    /** The least any guide asks for. */
    private static final int COATS = 3;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().mould().ifPresent(mould -> {
            int wax = mould.release().stream().filter(coats -> !film(coats)).mapToInt(Finish.Coats::count).sum();
            if (wax < COATS)
                out.warn("MW706", mould.origin(), wax + (wax == 1 ? " coat" : " coats") + " of wax, " + COATS + " at least on a new plug", "state five coats of wax under `release`", waxed(mould));
            film(mould, out);
        });
    }

    private static void film(Mould mould, Findings out) {
        List<Finish.Coats> release = mould.release();
        if (release.stream().noneMatch(ReleaseCoats::film))
            out.warn("MW707", mould.origin(), "no release film: a new plug is never released by wax alone", "add a coat of release film after the wax");
        else if (!film(release.getLast()))
            out.warn("MW707", release.getLast().origin(), release.getLast().coating().name() + " over the release film: wax would lift the film", "put the film on last", filmLast(release));
    }

    /** Five coats where the first wax is stated. */
    private static Fix[] waxed(Mould mould) {
        return mould.release().stream().filter(coats -> !film(coats)).findFirst().map(coats -> new Fix[] {Fix.of("state `5 coats " + coats.coating().name() + "`",
                new Remedy.Replace(coats.origin(), "5 coats " + coats.coating().name()))}).orElse(new Fix[0]);
    }

    private static Fix filmLast(List<Finish.Coats> release) {
        List<Finish.Coats> order = new ArrayList<>(release.stream().filter(coats -> !film(coats)).toList());
        order.addAll(release.stream().filter(ReleaseCoats::film).toList());
        return Fix.of("put the film on last", new Remedy.Reorder(order.stream().map(Finish.Coats::origin).toList()));
    }

    private static boolean film(Finish.Coats coats) {
        return coats.coating().coverage().map(coverage -> coverage.dimension().equals(Dimension.COVERAGE_VOLUME)).orElse(coats.coating().wet().isPresent());
    }
}
