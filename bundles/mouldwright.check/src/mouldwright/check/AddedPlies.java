package mouldwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Station;
import mouldwright.plan.stage.ShapeMeasures;
import mouldwright.plan.stage.SkinMeasures;

/** Lays plies over exactly those stretches of the skin that lack them. */
final class AddedPlies {

    /** Station lines nearer than this are one, m. */
    private static final double SAME = 1e-6;

    private AddedPlies() { }

    /** Stretches with equal bands that follow on each other are one rule. */
    private record Stretch(double fromX, double toX, GirthBand band, int plies) {
        boolean endsAt(Stretch next) {
            return Math.abs(toX - next.fromX) < SAME && band.equals(next.band) && plies == next.plies;
        }
    }

    /** The fix; none where the skin knows no mat, where an end face is bare, or where a stretch does not end at stations. */
    static Fix[] over(BuildPlan plan, Skin skin, SkinMeasures measures, Predicate<SkinMeasures.Gap> lacking) {
        Optional<Mat> mat = Laminates.mats(plan.spec()).stream().findFirst();
        Optional<ShapeMeasures> shape = plan.measurements().find(ShapeMeasures.class);
        if (mat.isEmpty() || shape.isEmpty())
            return new Fix[0];
        List<Remedy> rules = new ArrayList<>();
        for (Stretch stretch : stretches(measures.gaps().stream().filter(lacking).toList())) {
            Optional<String> span = span(plan, stretch, shape.get().scale());
            Optional<String> band = band(stretch.band());
            if (span.isEmpty() || band.isEmpty())
                return new Fix[0];
            String plies = (stretch.plies() == 1 ? "" : stretch.plies() + " of ") + "ply " + mat.get().name();
            rules.add(new Remedy.Insert(skin.origin(), Remedy.Side.INSIDE, "bay " + span.get() + band.get() + " add " + plies));
        }
        if (rules.isEmpty())
            return new Fix[0];
        if (mat.get().stock().origin() instanceof Origin.Library library)
            rules.addFirst(new Remedy.Use(library.library()));
        return new Fix[] {new Fix("add plies of " + mat.get().name() + " over what lacks them", false, rules)};
    }

    private static List<Stretch> stretches(List<SkinMeasures.Gap> gaps) {
        List<Stretch> stretches = new ArrayList<>();
        for (SkinMeasures.Gap gap : gaps) {
            Stretch next = new Stretch(gap.fromX(), gap.toX(), gap.band(), gap.asked() - gap.laid());
            int before = -1;
            for (int i = 0; i < stretches.size(); i++)
                if (stretches.get(i).endsAt(next))
                    before = i;
            if (before < 0)
                stretches.add(next);
            else
                stretches.set(before, new Stretch(stretches.get(before).fromX(), next.toX(), next.band(), next.plies()));
        }
        return stretches;
    }

    private static Optional<String> span(BuildPlan plan, Stretch stretch, double scale) {
        Optional<String> from = at(plan, stretch.fromX(), scale);
        Optional<String> to = at(plan, stretch.toX(), scale);
        return from.isEmpty() || to.isEmpty() || from.equals(to) ? Optional.empty() : Optional.of(from.get() + " to " + to.get());
    }

    private static Optional<String> at(BuildPlan plan, double x, double scale) {
        return plan.spec().body().stations().stream().filter(station -> Math.abs(station.x() * scale - x) < SAME).map(Station::name).findFirst();
    }

    private static Optional<String> band(GirthBand band) {
        if (band.equals(GirthBand.WHOLE))
            return Optional.of("");
        Optional<String> from = place(band.from());
        Optional<String> to = place(band.to());
        return from.isEmpty() || to.isEmpty() ? Optional.empty() : Optional.of(" girth " + from.get() + " to " + to.get());
    }

    private static Optional<String> place(GirthPlace place) {
        return switch (place) {
            case GirthPlace.OnLine(String name) -> Optional.of(name);
            case GirthPlace.AtShare(double share) -> Optional.of(Findings.percent(share));
            case GirthPlace.Broadest broadest -> Optional.empty();
        };
    }
}
