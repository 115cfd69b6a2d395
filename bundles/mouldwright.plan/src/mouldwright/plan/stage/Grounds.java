package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import mouldwright.plan.ledger.Ground;
import mouldwright.plan.spec.Band;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Station;
import mouldwright.units.Dimension;

/** What measures of a spec's shape rest on: the blocks that draw it, and the figures it was measured with. */
final class Grounds {

    private final Spec spec;
    private final List<Ground> part;
    private final List<Ground> plug;

    Grounds(Spec spec) {
        this.spec = spec;
        this.part = part(spec.body());
        this.plug = with(part, List.of(new Ground.Figure(spec.body().shrink())));
    }

    private static List<Ground> part(Body body) {
        List<Ground> grounds = new ArrayList<>();
        body.stations().stream().filter(Station::shapes).forEach(station -> grounds.add(block(station)));
        for (Band band : body.bare())
            grounds.add(new Ground.Part("bare", band.origin()));
        return grounds;
    }

    private static Ground block(Station station) {
        return new Ground.Part("station " + station.name(), station.origin());
    }

    /** The part as stated. */
    List<Ground> part() {
        return part;
    }

    /** The plug, which is the part grown by the shrink. */
    List<Ground> plug() {
        return plug;
    }

    /** A station's own section: its block, and that of each station it is like; all blocks where it is taken from the loft. */
    List<Ground> section(Station station) {
        Set<Ground> grounds = new LinkedHashSet<>();
        Station at = station;
        while (at != null && grounds.add(block(at)))
            at = at.form() instanceof Form.Like like ? named(like.station()) : null;
        if (!station.shapes())
            grounds.addAll(part);
        return List.copyOf(grounds);
    }

    /** What is seen of the loft at a station. */
    List<Ground> loft(Station station) {
        return with(List.of(block(station)), part);
    }

    private Station named(String name) {
        return spec.body().stations().stream().filter(station -> station.name().equals(name)).findFirst().orElse(null);
    }

    /** The surface between plates, under the board. */
    List<Ground> crown() {
        return with(plug, List.of(new Ground.Figure(ShapeStage.carve(spec).board())));
    }

    /** A plate, with what is cut out of it.
     *  @param pocketed whether a pocket is cut */
    List<Ground> plate(boolean pocketed) {
        List<Ground> grounds = new ArrayList<>(foamLine());
        spec.frame().ifPresent(frame -> {
            if (pocketed)
                grounds.add(new Ground.Figure(frame.rim()));
            if (!frame.backbones().isEmpty())
                grounds.add(new Ground.Figure(frame.clearance()));
            grounds.add(new Ground.Figure(frame.fittings().holes()));
        });
        grounds.addAll(backbones());
        return grounds;
    }

    /** The foam of a bay. */
    List<Ground> cavity(Fill.Core core) {
        List<Ground> grounds = new ArrayList<>(foamLine());
        spec.fill().ifPresent(fill -> grounds.add(new Ground.Figure(fill.overfill())));
        if (core instanceof Fill.Core.Shell(Given thickness))
            grounds.add(new Ground.Figure(thickness));
        grounds.addAll(backbones());
        return grounds;
    }

    /** The line the foam is carved to, at the faces of plates. */
    private List<Ground> foamLine() {
        List<Ground> grounds = new ArrayList<>(plug);
        if (spec.skin().isPresent() || spec.finish().isPresent())
            grounds.add(new Ground.Listed("shape.buildup", "build-up", Dimension.LENGTH, BuildUps.general(spec)));
        spec.frame().ifPresent(frame -> grounds.add(new Ground.Figure(frame.thickness())));
        return grounds;
    }

    private List<Ground> backbones() {
        List<Ground> grounds = new ArrayList<>();
        spec.frame().map(Frame::backbones).orElse(List.of()).forEach(backbone -> List.of(backbone.width(), backbone.depth(), backbone.above())
                .forEach(given -> grounds.add(new Ground.Figure(given))));
        return grounds;
    }

    /** What plies cover, and where more of them are asked for. */
    List<Ground> plies() {
        List<Ground> grounds = new ArrayList<>(plug);
        spec.skin().ifPresent(skin -> {
            grounds.add(new Ground.Part("skin", skin.origin()));
            for (Skin.Rule rule : skin.rules())
                grounds.add(new Ground.Part("bay", rule.span().origin()));
        });
        return grounds;
    }

    private static List<Ground> with(List<Ground> first, List<Ground> more) {
        Set<Ground> all = new LinkedHashSet<>(first);
        all.addAll(more);
        return List.copyOf(all);
    }
}
