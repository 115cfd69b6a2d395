package mouldwright.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.stage.ShapeMeasures;
import org.junit.jupiter.api.Test;

/** The figures other people's scripts ask an estimate for by their ids: the example of a whole job has every one of them. Renaming or removing one breaks
 *  those scripts. */
class PromisedFiguresTest {

    private static final List<String> ONCE = List.of(
            "shape.length", "shape.volume", "shape.area", "shape.area.moulded", "shape.centroid.x", "shape.centroid.z",
            "frame.sheets", "frame.mass",
            "fill.cavity", "fill.trim", "fill.liquid", "fill.mass", "fill.mass.a", "fill.mass.b", "fill.pots",
            "skin.thickness", "skin.area", "skin.uncovered.area", "skin.short.area", "skin.mat.Csm450.mass", "skin.mat.Csm450.length",
            "skin.mat.Csm225.mass", "skin.mat.Csm225.length", "skin.resin.mass", "skin.catalyst.mass", "skin.pots",
            "finish.Surfacer.volume", "finish.hours", "fair.filler.volume",
            "mould.area", "mould.mass", "mould.thickness", "mould.draft.min", "mould.draft.low.area", "mould.draft.touching.area", "mould.undercut.area", "mould.flange.area",
            "air.styrene", "air.flow", "plan.labour", "plan.elapsed", "plan.cost", "mass.plug", "mass.mould");

    private static final List<String> OF_A_STATION = List.of("area", "girth", "bevel.max");

    private static final List<String> OF_A_BAY = List.of("volume", "clear", "crown", "stations", "cavity", "liquid", "lifts");

    private final BuildPlan canopy = SpecSession.start().check(Path.of("../../examples/rain-canopy/canopy.plug").toAbsolutePath().normalize(), () -> false)
            .plans().values().iterator().next();

    private List<String> ids() {
        return canopy.quantities().stream().map(Quantity::id).toList();
    }

    @Test void theCanopyHasEveryFigureOfTheJob() {
        assertThat(ids()).containsAll(ONCE);
    }

    @Test void theCanopyHasEveryFigureOfEachStation() {
        assertThat(ids()).containsAll(shape().stations().stream().flatMap(at -> OF_A_STATION.stream().map(figure -> "station." + at.station().name() + "." + figure)).toList());
        assertThat(shape().stations()).hasSize(12);
    }

    @Test void theCanopyHasEveryFigureOfEachBay() {
        assertThat(ids()).containsAll(shape().bays().stream().flatMap(bay -> OF_A_BAY.stream()
                .map(figure -> "bay." + bay.fore().name() + "-" + bay.aft().name() + "." + figure)).toList());
        assertThat(shape().bays()).hasSize(10);
    }

    @Test void noIdStandsForTwoFigures() {
        assertThat(ids().stream().collect(Collectors.groupingBy(id -> id, Collectors.counting())).values()).allMatch(count -> count == 1);
    }

    private ShapeMeasures shape() {
        return canopy.measurements().find(ShapeMeasures.class).orElseThrow();
    }
}
