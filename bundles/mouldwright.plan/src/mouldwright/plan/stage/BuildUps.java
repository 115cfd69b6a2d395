package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.offset.BuildUp;
import mouldwright.geometry.offset.Layer;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;
import mouldwright.process.Coating;
import mouldwright.process.Laminate;

/** What skin and surfacer add outside the foam: cured thickness of the plies, local ones too, and the dry film that is left
 *  after sanding. A coating that states no dry film adds nothing. */
final class BuildUps {

    private BuildUps() { }

    /** Likely cured thickness of a ply, m. */
    static double ply(Mat mat, Resin resin) {
        return Laminate.curedThickness(mat.areal().likely(), mat.glass().likely(),
                new Laminate.Densities(mat.fibre().likely(), resin.cured().likely()));
    }

    /** Likely build-up where nothing is added locally, m. */
    static double general(Spec spec) {
        double plies = spec.skin().map(skin -> skin.schedule().plies().stream()
                .mapToDouble(ply -> ply(ply.mat(), skin.schedule().resin())).sum()).orElse(0.0);
        return plies + spec.finish().map(BuildUps::films).orElse(0.0);
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

    private static double films(Finish finish) {
        return finish.coats().stream().mapToDouble(coats -> coats.coating().dry()
                .map(dry -> Coating.buildUp(dry.likely(), coats.count(), finish.sandedShare().likely())).orElse(0.0)).sum();
    }
}
