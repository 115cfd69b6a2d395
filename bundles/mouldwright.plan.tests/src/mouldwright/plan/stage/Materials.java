package mouldwright.plan.stage;

import static mouldwright.plan.stage.Stated.LIBRARY;
import static mouldwright.plan.stage.Stated.given;
import static mouldwright.plan.stage.Stated.stock;
import static mouldwright.units.Dimension.AREAL_MASS;
import static mouldwright.units.Dimension.AREA_RATE;
import static mouldwright.units.Dimension.DENSITY;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Hardener;
import mouldwright.plan.spec.LaminateDefaults;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Material;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.units.Dimension;

/** Materials and schedules for tests, as a library has them. Lengths in metres. */
final class Materials {

    private Materials() { }

    static Foam foam(double expansion, double density) {
        return foam(Optional.of(given("expansion", RATIO, expansion)), density, Optional.empty(), Optional.empty());
    }

    static Foam foam(Optional<Given> expansion, double density, Optional<Given> partA, Optional<Given> partB) {
        return new Foam("Pour36", expansion, given("foam density", DENSITY, density),
                Optional.of(new Foam.Ratio(100, 100, true, LIBRARY)), partA, partB, Optional.of(given("cream time", TIME, 36)),
                Optional.of(given("rise time", TIME, 150)), Optional.of(given("firm time", TIME, 1800)), Optional.empty(),
                Optional.of(given("lift", LENGTH, 0.200)), Optional.of(given("foam pot", MASS, 1)), Optional.empty(),
                Optional.empty(), List.of(new Foam.YieldRow(15, 0.80, LIBRARY), new Foam.YieldRow(20, 0.90, LIBRARY),
                        new Foam.YieldRow(25, 0.95, LIBRARY)), Material.Stock.plain(LIBRARY));
    }

    static Resin resin() {
        return new Resin("Laminating", stock("Laminating", "resin density", DENSITY, 1130), LaminateDefaults.curedResin(), Optional.empty(),
                false, Optional.of(new Hardener("Mekp", stock("Mekp", "catalyst density", DENSITY, 1160), Material.Stock.plain(LIBRARY))),
                Optional.of(stock("Laminating", "least catalyst", RATIO, 0.01)), Optional.of(stock("Laminating", "most catalyst", RATIO, 0.025)),
                List.of(gel(15, 0.01, 55), gel(15, 0.02, 30), gel(20, 0.01, 35), gel(20, 0.02, 18), gel(25, 0.01, 24), gel(25, 0.02, 12)),
                Optional.of(stock("Laminating", "resin pot", MASS, 2)), Optional.empty(), Optional.empty(), Material.Stock.plain(LIBRARY));
    }

    private static Resin.GelRow gel(double temperature, double catalyst, double minutes) {
        return new Resin.GelRow(temperature, catalyst, minutes * 60, LIBRARY);
    }

    static Mat mat(String name, double areal, double glass) {
        return new Mat(name, stock(name, "areal mass of " + name, AREAL_MASS, areal), stock(name, "glass share of " + name, RATIO, glass),
                LaminateDefaults.glassDensity(), Optional.of(stock(name, "roll width of " + name, LENGTH, 1.25)), Optional.empty(),
                Optional.of(stock(name, "lay rate of " + name, AREA_RATE, 4 / 3600.0)), Material.Stock.plain(LIBRARY));
    }

    static Mat csm450() {
        return mat("Csm450", 0.450, 1 / 3.5);
    }

    static Schedule schedule(Mat... mats) {
        List<Schedule.Layer> layers = new ArrayList<>();
        for (Mat mat : mats)
            layers.add(new Schedule.Layer.Ply(mat, LIBRARY));
        return new Schedule("ProtectiveSkin", resin(), layers, LIBRARY);
    }

    /** What spreads by weight, as wax does, or by volume, as film does. */
    static Coating spread(String name, Dimension dimension, double coverage, double recoat) {
        return new Coating(name, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(given("coverage of " + name, dimension, coverage)), Optional.empty(),
                Optional.of(given("recoat of " + name, TIME, recoat)), Material.Stock.plain(LIBRARY));
    }

    static Coating gelCoat(double wet, double transfer) {
        return new Coating("ToolingGel", Optional.of(given("density", DENSITY, 1200)), Optional.of(given("wet film", LENGTH, wet)),
                Optional.empty(), Optional.of(given("transfer", RATIO, transfer)), Optional.empty(), Optional.empty(),
                Optional.empty(), Material.Stock.plain(LIBRARY));
    }
}
