package mouldwright.plan.stage;

import static mouldwright.units.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.offset.BuildUp;
import mouldwright.geometry.offset.Layer;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;
import mouldwright.process.Coating;
import mouldwright.process.Laminate;

/** What skin and surfacer add outside the foam: cured thickness of the plies, local ones too, the dry film of coats
 *  between them, and that of the finish that is left after sanding. A coating that states no dry film adds nothing. */
final class BuildUps {

    private BuildUps() { }

    /** Likely cured thickness of a ply, m. */
    static double ply(Mat mat, Resin resin) {
        return Laminate.curedThickness(mat.areal().likely(), mat.glass().likely(),
                new Laminate.Densities(mat.fibre().likely(), resin.cured().likely()));
    }

    /** Likely build-up where nothing is added locally, m. */
    static double general(Spec spec) {
        double laminate = spec.skin().map(skin -> skin.schedule().layers().stream().mapToDouble(layer -> switch (layer) {
            case Schedule.Layer.Ply ply -> ply(ply.mat(), skin.schedule().resin());
            case Schedule.Layer.Coat coat -> coat.coating().dry().map(Given::likely).orElse(0.0);
            case Schedule.Layer.Wait wait -> 0;
        }).sum()).orElse(0.0);
        return laminate + spec.finish().map(BuildUps::films).orElse(0.0);
    }

    /** The build-up over the plug.
     *  @param scale of the plug
     *  @param lines station lines of the part by name, m */
    static BuildUp of(Spec spec, double scale, Map<String, Double> lines, Bare bare) {
        List<Layer> layers = new ArrayList<>();
        layers.add(new Layer(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, GirthBand.WHOLE, general(spec)));
        spec.skin().ifPresent(skin -> {
            for (Skin.Rule rule : skin.rules())
                if (rule instanceof Skin.Rule.AddPlies add && lines.containsKey(add.span().from())
                        && lines.containsKey(add.span().to()))
                    layers.add(new Layer(scale * lines.get(add.span().from()), scale * lines.get(add.span().to()),
                            Places.of(add.band()), add.count() * ply(add.mat(), skin.schedule().resin())));
        });
        return new BuildUp(layers, bare);
    }

    /** Writes the cured thickness of each ply laid everywhere. */
    static List<Node> plies(Schedule schedule, Ledger ledger) {
        return schedule.plies().stream().map(ply -> ledger.step("ply of " + ply.mat().name() + ", cured", LENGTH)
                .from("w / glass density + w (1 - glass share) / (cured resin density x glass share)",
                        List.of(ledger.given(ply.mat().areal()), ledger.given(ply.mat().glass()),
                                ledger.given(ply.mat().fibre()), ledger.given(schedule.resin().cured())),
                        v -> Laminate.curedThickness(v[0], v[1], new Laminate.Densities(v[2], v[3])))
                .source("rule of mixtures; ISO 12215-5 gives the same with 2.56 and 1.20 g/cm3")).toList();
    }

    /** Writes the dry film of each coat in the skin's schedule, which nobody sands. */
    private static List<Node> coats(Schedule schedule, Ledger ledger) {
        List<Node> films = new ArrayList<>();
        for (Schedule.Layer layer : schedule.layers())
            if (layer instanceof Schedule.Layer.Coat(var coating, var origin) && coating.dry().isPresent())
                films.add(ledger.step("coat of " + coating.name(), LENGTH).same(ledger.given(coating.dry().get())).source("dry film, not sanded"));
        return films;
    }

    /** Writes the build-up where nothing is added locally; empty where a spec has neither skin nor finish. */
    static Optional<Node> write(Spec spec, Ledger ledger) {
        if (spec.skin().isEmpty() && spec.finish().isEmpty())
            return Optional.empty();
        List<Node> parts = new ArrayList<>();
        spec.skin().ifPresent(skin -> {
            parts.addAll(plies(skin.schedule(), ledger));
            parts.addAll(coats(skin.schedule(), ledger));
        });
        spec.finish().ifPresent(finish -> finish.coats().forEach(coats -> coats.coating().dry().ifPresent(dry ->
                parts.add(ledger.step(coats.count() + " coats of " + coats.coating().name() + ", sanded", LENGTH)
                        .from("coats x dry film x (1 - sanded share)", List.of(ledger.given(dry), ledger.given(finish.sandedShare())),
                                v -> Coating.buildUp(v[0], coats.count(), v[1])).source("common practice")))));
        return Optional.of(ledger.quantity("shape.buildup", "Build-up of skin and surfacer", LENGTH)
                .sum("sum over plies and coats laid everywhere", parts).source("laps are torn and sanded flush, so not counted"));
    }

    /** Low, likely and high of the general build-up, m. */
    static double[] range(Spec spec) {
        Ledger ledger = new Ledger();
        Optional<Node> written = write(spec, ledger);
        if (written.isEmpty())
            return new double[3];
        Reckoning reckoning = ledger.close();
        Node node = written.get();
        return new double[] {reckoning.low(node), reckoning.likely(node), reckoning.high(node)};
    }

    private static double films(Finish finish) {
        return finish.coats().stream().mapToDouble(coats -> coats.coating().dry()
                .map(dry -> Coating.buildUp(dry.likely(), coats.count(), finish.sandedShare().likely())).orElse(0.0)).sum();
    }
}
