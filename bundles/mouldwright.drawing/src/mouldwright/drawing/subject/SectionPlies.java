package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.plan.spec.Band;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;

/** Which plies lie over a station, mat by mat from the inside out. */
final class SectionPlies {

    /** Plies of a mat over a band of the girth. @param words such as "2 plies Csm450" */
    record Plies(GirthBand band, String words) { }

    private SectionPlies() { }

    /** @param x of the station, on the part, metres */
    static List<Plies> at(Spec spec, double x) {
        List<Plies> found = new ArrayList<>();
        spec.skin().ifPresent(skin -> {
            Map<String, Integer> everywhere = new LinkedHashMap<>();
            for (Schedule.Layer.Ply ply : skin.schedule().plies())
                everywhere.merge(ply.mat().name(), 1, Integer::sum);
            everywhere.forEach((mat, count) -> found.add(new Plies(GirthBand.WHOLE, count(count) + mat)));
            for (Skin.Rule rule : skin.rules())
                if (rule instanceof Skin.Rule.AddPlies add && covers(spec, add, x))
                    found.add(new Plies(band(add.band()), count(add.count()) + add.mat().name() + ", added"));
        });
        return found;
    }

    private static String count(int plies) {
        return plies + (plies == 1 ? " ply " : " plies ");
    }

    private static boolean covers(Spec spec, Skin.Rule.AddPlies rule, double x) {
        double[] ends = spec.body().stations().stream().filter(s -> s.name().equals(rule.span().from()) || s.name().equals(rule.span().to())).mapToDouble(s -> s.x()).sorted().toArray();
        return ends.length == 2 && x >= ends[0] && x <= ends[1];
    }

    static GirthBand band(Band band) {
        return new GirthBand(place(band.from()), place(band.to()));
    }

    private static GirthPlace place(Place place) {
        return switch (place) {
            case Place.OnLine(String line) -> new GirthPlace.OnLine(line);
            case Place.AtShare(double share) -> new GirthPlace.AtShare(share);
        };
    }
}
