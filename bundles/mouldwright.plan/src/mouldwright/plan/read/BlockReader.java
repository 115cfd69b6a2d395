package mouldwright.plan.read;

import static mouldwright.units.Dimension.ANGLE;
import static mouldwright.units.Dimension.AREAL_MASS;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.model.Amount;
import mouldwright.model.Edges;
import mouldwright.model.FillBay;
import mouldwright.model.LineSide;
import mouldwright.model.Piece;
import mouldwright.model.PlugPackage.Literals;
import mouldwright.model.SkinBay;
import mouldwright.plan.spec.Band;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Carve;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Filler;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Sheet;
import mouldwright.plan.spec.Skin;

/** Reads the blocks that say how a plug is built. An absent block stays absent; one that cannot be understood is
 *  reported. */
final class BlockReader {

    private final FigureReader figures;
    private final MaterialReader materials;
    private final LaminateReader laminates;
    private final BodyReader bodies;

    BlockReader(FigureReader figures, MaterialReader materials, LaminateReader laminates, BodyReader bodies) {
        this.figures = figures;
        this.materials = materials;
        this.laminates = laminates;
        this.bodies = bodies;
    }

    Optional<Frame> frame(mouldwright.model.Frame m) {
        if (m == null)
            return Optional.empty();
        if (m.getSheet() == null) {
            figures.missing(m, Literals.FRAME__SHEET);
            return Optional.empty();
        }
        if (!figures.resolved(m.getSheet(), m, Literals.FRAME__SHEET))
            return Optional.empty();
        Sheet sheet = materials.sheet(m.getSheet());
        if (!m.isSetEdges())
            figures.silent(Defaults.edges());
        return Optional.of(new Frame(sheet,
                figures.given("sheet thickness", LENGTH, m.getMeasured()).orElseGet(() -> Defaults.thickness(sheet)),
                length("slot clearance", m.getClearance()).orElseGet(Defaults::clearance),
                m.getEdges() == Edges.BEVELLED ? Frame.Edges.BEVELLED : Frame.Edges.SQUARE,
                length("rim", m.getRim()).orElseGet(Defaults::rim), new FittingReader(figures, materials).backbones(m),
                length("tolerance", m.getTolerance()).orElseGet(Defaults::tolerance), new FittingReader(figures, materials).fittings(m), figures.origin(m)));
    }

    Optional<Fill> fill(mouldwright.model.Fill m) {
        if (m == null || !figures.resolved(m.getFoam(), m, Literals.FILL__FOAM))
            return Optional.empty();
        List<Fill.BayRule> rules = new ArrayList<>();
        m.getBays().forEach(bay -> rule(bay).ifPresent(rules::add));
        Fill.Core core = core(m.isSolid(), m.getShell(), figures.origin(m)).orElseGet(
                () -> new Fill.Core.Solid(Defaults.solid()));
        return Optional.of(new Fill(materials.foam(m.getFoam()), core,
                length("overfill", m.getOverfill()).orElseGet(Defaults::overfill), rules, figures.origin(m)));
    }

    private Optional<Fill.Core> core(boolean solid, Amount shell, Origin origin) {
        if (solid)
            return Optional.of(new Fill.Core.Solid(origin));
        return length("shell", shell).map(Fill.Core.Shell::new);
    }

    private Optional<Fill.BayRule> rule(FillBay m) {
        return bodies.span(m.getFrom(), m.getTo(), m, Literals.FILL_BAY__FROM, Literals.FILL_BAY__TO).map(span ->
                new Fill.BayRule(span, core(m.isSolid(), m.getShell(), figures.origin(m)),
                        m.isSetAttitude() ? Optional.of(attitude(m)) : Optional.empty()));
    }

    private static Fill.Attitude attitude(FillBay m) {
        return switch (m.getAttitude()) {
            case UPRIGHT -> Fill.Attitude.UPRIGHT;
            case UPSIDE_DOWN -> Fill.Attitude.UPSIDE_DOWN;
            case ON_SIDE -> Fill.Attitude.ON_SIDE;
        };
    }

    Optional<Carve> carve(mouldwright.model.Carve m) {
        if (m == null)
            return Optional.empty();
        return Optional.of(new Carve(length("board", m.getBoard()).orElseGet(Defaults::board), m.isFlexible(),
                length("crown limit", m.getCrown()).orElseGet(Defaults::crownLimit), filler(m), figures.origin(m)));
    }

    private Optional<Filler> filler(mouldwright.model.Carve m) {
        if (m.getFiller() == null || !figures.resolved(m.getFiller(), m, Literals.CARVE__FILLER))
            return Optional.empty();
        return Optional.of(materials.filler(m.getFiller()));
    }

    Optional<Skin> skin(mouldwright.model.Skin m) {
        if (m == null)
            return Optional.empty();
        List<Skin.Rule> rules = new ArrayList<>();
        m.getBays().forEach(bay -> rule(bay).ifPresent(rules::add));
        return laminates.schedule(m.getSchedule(), m, Literals.SKIN__SCHEDULE).map(schedule -> new Skin(schedule,
                length("lap", m.getLap()).orElseGet(Defaults::lap),
                figures.given("gel time wanted", TIME, m.getGel()).orElseGet(Defaults::gel),
                figures.given("extra resin on foam", AREAL_MASS, m.getOnFoam()).orElseGet(Defaults::onFoam), rules,
                figures.origin(m)));
    }

    private Optional<Skin.Rule> rule(SkinBay m) {
        Optional<BaySpan> span = bodies.span(m.getFrom(), m.getTo(), m, Literals.SKIN_BAY__FROM, Literals.SKIN_BAY__TO);
        Optional<Band> band = m.getLow() == null && m.getHigh() == null ? Optional.of(Band.whole(figures.origin(m)))
                : bodies.band(m.getLow(), m.getHigh(), m);
        if (span.isEmpty() || band.isEmpty())
            return Optional.empty();
        if (m.getAdd() != null)
            return figures.resolved(m.getAdd().getMat(), m.getAdd(), Literals.PLY__MAT)
                    ? Optional.of(new Skin.Rule.AddPlies(span.get(), band.get(), materials.mat(m.getAdd().getMat()),
                            laminates.count(m.getAdd())))
                    : Optional.empty();
        var plies = figures.whole(m.getRequire(), m, Literals.SKIN_BAY__REQUIRE);
        return plies.isEmpty() ? Optional.empty() : Optional.of(new Skin.Rule.Require(span.get(), band.get(), plies.getAsInt()));
    }

    Optional<Finish> finish(mouldwright.model.Finish m) {
        if (m == null)
            return Optional.empty();
        List<Integer> grits = new ArrayList<>();
        m.getGrits().forEach(grit -> figures.whole(grit.getNumber(), grit, Literals.GRIT__NUMBER).ifPresent(grits::add));
        return Optional.of(new Finish(coats(m.getCoats()), grits,
                figures.given("sanded share", RATIO, m.getSanded()).orElseGet(Defaults::sandedShare), figures.origin(m)));
    }

    private List<Finish.Coats> coats(List<mouldwright.model.Coats> coats) {
        List<Finish.Coats> read = new ArrayList<>();
        coats.forEach(one -> laminates.coats(one).ifPresent(read::add));
        return read;
    }

    Optional<Mould> mould(mouldwright.model.Mould m) {
        if (m == null)
            return Optional.empty();
        List<Mould.Part> parts = new ArrayList<>();
        m.getPieces().forEach(piece -> part(piece).ifPresent(parts::add));
        return laminates.schedule(m.getSchedule(), m, Literals.MOULD__SCHEDULE).map(schedule -> new Mould(schedule,
                figures.given("draft", ANGLE, m.getDraft()).orElseGet(Defaults::draft),
                length("flange", m.getFlange()).orElseGet(Defaults::flange), parts,
                m.getRelease() == null ? List.of() : coats(m.getRelease().getCoats()),
                figures.given("hold", TIME, m.getHold()).orElseGet(Defaults::hold),
                new StiffenerReader(figures, materials, laminates).stiffeners(m.getStiffeners()), figures.origin(m)));
    }

    private Optional<Mould.Part> part(Piece m) {
        Mould.Reach reach = new Mould.Reach.PullSide();
        if (m.isWhole())
            reach = new Mould.Reach.Everything();
        else if (m.getLine() != null) {
            if (!figures.resolved(m.getLine(), m, Literals.PIECE__LINE))
                return Optional.empty();
            Place place = new Place.OnLine(m.getLine().getName());
            reach = m.getSide() == LineSide.BELOW ? new Mould.Reach.Below(place) : new Mould.Reach.Above(place);
        }
        return Optional.of(new Mould.Part(Optional.ofNullable(m.getName()), reach, Mould.Pull.valueOf(m.getPull().name()),
                figures.origin(m)));
    }

    private Optional<Given> length(String name, Amount amount) {
        return figures.given(name, LENGTH, amount);
    }
}
