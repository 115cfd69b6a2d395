package mouldwright.plan.read;

import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.model.PlugPackage.Literals;
import mouldwright.model.Run;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.MouldDefaults;
import mouldwright.plan.spec.Stiffener;

/** Reads the stiffeners of a mould. */
final class StiffenerReader {

    private final FigureReader figures;
    private final MaterialReader materials;
    private final LaminateReader laminates;

    StiffenerReader(FigureReader figures, MaterialReader materials, LaminateReader laminates) {
        this.figures = figures;
        this.materials = materials;
        this.laminates = laminates;
    }

    List<Stiffener> stiffeners(List<mouldwright.model.Stiffener> stated) {
        List<Stiffener> read = new ArrayList<>();
        stated.forEach(m -> stiffener(m).ifPresent(read::add));
        return read;
    }

    private Optional<Stiffener> stiffener(mouldwright.model.Stiffener m) {
        Optional<Given> width = figures.given("width of a stiffener", LENGTH, m.getWidth());
        Optional<Given> height = figures.given("height of a stiffener", LENGTH, m.getHeight());
        List<Mat> plies = new ArrayList<>();
        m.getPlies().forEach(ply -> laminates.mats(ply, plies));
        if (plies.isEmpty()) {
            figures.report(ReadProblem.Kind.MISSING, m, Literals.STIFFENER__PLIES, "a stiffener with no ply over it stiffens nothing: state `ply`");
            return Optional.empty();
        }
        Optional<Stiffener.Core> core = core(m);
        Optional<Stiffener.Pitch> pitch = pitch(m);
        if (width.isEmpty() || height.isEmpty() || core.isEmpty() || pitch.isEmpty())
            return Optional.empty();
        return Optional.of(new Stiffener(m.getRun() == Run.ALONG ? Stiffener.Run.ALONG : Stiffener.Run.ACROSS, width.get(), height.get(), pitch.get(),
                core.get(), plies, figures.given("lap of a stiffener", LENGTH, m.getLap()).orElseGet(MouldDefaults::stiffenerLap),
                figures.given("cure before stiffeners", TIME, m.getCured()), figures.origin(m)));
    }

    private Optional<Stiffener.Core> core(mouldwright.model.Stiffener m) {
        if (m.getCore() == null) {
            if (!m.isHollow())
                figures.silent(MouldDefaults.hollow());
            return Optional.of(new Stiffener.Core.Hollow());
        }
        return figures.resolved(m.getCore(), m, Literals.STIFFENER__CORE) ? Optional.of(new Stiffener.Core.Cut(materials.sheet(m.getCore()))) : Optional.empty();
    }

    private Optional<Stiffener.Pitch> pitch(mouldwright.model.Stiffener m) {
        if (m.getSpacing() != null && m.getCount() != null) {
            figures.report(ReadProblem.Kind.CONTRADICTION, m, Literals.STIFFENER__COUNT, "a stiffener states `every` and `count`: one of them is enough");
            return Optional.empty();
        }
        if (m.getCount() != null) {
            var count = figures.whole(m.getCount(), m, Literals.STIFFENER__COUNT);
            return count.isEmpty() ? Optional.empty() : Optional.of(new Stiffener.Pitch.Count(
                    Given.of("stiffeners of a part", RATIO, count.getAsInt(), figures.origin(m, Literals.STIFFENER__COUNT))));
        }
        return Optional.of(new Stiffener.Pitch.Every(figures.given("pitch of stiffeners", LENGTH, m.getSpacing()).orElseGet(MouldDefaults::stiffenerPitch)));
    }
}
