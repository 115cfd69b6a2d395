package mouldwright.plan.read;

import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.model.Amount;
import mouldwright.model.PlugPackage.Literals;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Fittings;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Given;

/** Reads what holds the plates of a frame together and what they are set up on. */
final class FittingReader {

    private final FigureReader figures;
    private final MaterialReader materials;

    FittingReader(FigureReader figures, MaterialReader materials) {
        this.figures = figures;
        this.materials = materials;
    }

    List<Frame.Backbone> backbones(mouldwright.model.Frame m) {
        List<Frame.Backbone> backbones = new ArrayList<>();
        m.getBackbones().forEach(b -> {
            Optional<Given> width = length("backbone width", b.getWidth());
            Optional<Given> depth = length("backbone depth", b.getDepth());
            Optional<Given> above = length("backbone height", b.getAbove());
            if (width.isPresent() && depth.isPresent() && above.isPresent())
                backbones.add(new Frame.Backbone(width.get(), depth.get(), above.get(), b.isTimber(), b.isHalved(), figures.origin(b)));
        });
        return backbones;
    }

    Fittings fittings(mouldwright.model.Frame m) {
        List<Fittings.HolePlace> places = new ArrayList<>();
        m.getPlaces().forEach(place -> {
            Optional<Given> y = length("hole, breadth", place.getY());
            Optional<Given> z = length("hole, height", place.getZ());
            if (y.isPresent() && z.isPresent())
                places.add(new Fittings.HolePlace(y.get(), z.get()));
        });
        return new Fittings(length("holes", m.getHoles()).orElseGet(Defaults::holes), places, join(m.getJoin()), base(m.getBase()), strongback(m.getStrongback()),
                length("gauge depth", m.getGauge()).orElseGet(Defaults::gauge));
    }

    private Fittings.Join join(mouldwright.model.Join m) {
        if (m != null && m.isScarf())
            return new Fittings.Join.Scarf(figures.given("scarf", RATIO, m.getSlope()).orElseGet(Defaults::scarf));
        return new Fittings.Join.Strap(m == null ? Optional.empty() : length("strap", m.getStrap()));
    }

    private Optional<Fittings.Base> base(mouldwright.model.Base m) {
        if (m == null || !figures.resolved(m.getSheet(), m, Literals.BASE__SHEET))
            return Optional.empty();
        return Optional.of(new Fittings.Base(materials.sheet(m.getSheet()), length("base margin", m.getMargin()).orElseGet(Defaults::baseMargin), figures.origin(m)));
    }

    private Optional<Fittings.Strongback> strongback(mouldwright.model.Strongback m) {
        if (m == null)
            return Optional.empty();
        Optional<Given> width = length("strongback width", m.getWidth());
        Optional<Given> depth = length("strongback depth", m.getDepth());
        if (width.isEmpty() || depth.isEmpty())
            return Optional.empty();
        return Optional.of(new Fittings.Strongback(width.get(), depth.get(), length("strongback apart", m.getApart()), figures.origin(m)));
    }

    private Optional<Given> length(String name, Amount amount) {
        return figures.given(name, LENGTH, amount);
    }
}
