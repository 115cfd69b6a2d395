package mouldwright.plan.stage;

import static mouldwright.plan.stage.Materials.spread;
import static mouldwright.plan.stage.Stated.LIBRARY;
import static mouldwright.plan.stage.Stated.given;
import static mouldwright.plan.stage.Stated.line;
import static mouldwright.plan.stage.Stated.stock;
import static mouldwright.units.Dimension.ANGLE;
import static mouldwright.units.Dimension.DENSITY;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.spec.Band;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.FinishDefaults;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.FrameDefaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.LaminateDefaults;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Material;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.MouldDefaults;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Sheet;
import mouldwright.plan.spec.Skin;
import mouldwright.units.Dimension;

/** Blocks of a spec for tests. Lengths in metres. */
final class Blocks {

    private Blocks() { }

    static Frame frame(double thickness) {
        return frame(thickness, Frame.Edges.SQUARE, FrameDefaults.rim());
    }

    static Frame frame(double thickness, Frame.Edges edges, Given rim) {
        Sheet sheet = new Sheet("BirchPly12", stock("BirchPly12", "sheet width", LENGTH, 1.220),
                stock("BirchPly12", "sheet length", LENGTH, 2.440), stock("BirchPly12", "sheet thickness", LENGTH, 0.012),
                stock("BirchPly12", "sheet density", DENSITY, 695), Optional.empty(), Optional.empty(), Sheet.Grain.ANY, Material.Stock.plain(LIBRARY));
        return new Frame(sheet, given("sheet thickness", LENGTH, thickness), FrameDefaults.clearance(), edges, rim, List.of(),
                FrameDefaults.tolerance(), line(30, "frame"));
    }

    static Fill solid(Foam foam, double overfill) {
        return new Fill(foam, new Fill.Core.Solid(line(34, "solid")), given("overfill", LENGTH, overfill), List.of(), line(34, "fill"));
    }

    static Fill shell(Foam foam, double thickness, double overfill, Fill.BayRule... rules) {
        return new Fill(foam, new Fill.Core.Shell(given("shell", LENGTH, thickness)), given("overfill", LENGTH, overfill),
                List.of(rules), line(34, "fill"));
    }

    static Skin skin(Schedule schedule, Skin.Rule... rules) {
        return new Skin(schedule, given("lap", LENGTH, 0.050), given("gel time wanted", TIME, 25 * 60), LaminateDefaults.onFoam(),
                List.of(rules), line(36, "skin"));
    }

    static Skin.Rule add(String from, String to, Band band, Mat mat, int count) {
        return new Skin.Rule.AddPlies(new BaySpan(from, to, line(37, "bay")), band, mat, count);
    }

    static Skin.Rule require(String from, String to, Band band, int plies) {
        return new Skin.Rule.Require(new BaySpan(from, to, line(38, "bay")), band, plies);
    }

    static Band whole() {
        return Band.whole(line(37, "bay"));
    }

    static Band girth(double from, double to) {
        return new Band(new Place.AtShare(from), new Place.AtShare(to), line(37, "girth"));
    }

    static Finish finish(int coats, double dry) {
        Coating surfacer = new Coating("Surfacer", Optional.of(given("density", DENSITY, 1300)), Optional.of(given("wet", LENGTH, 2e-4)),
                Optional.of(given("dry film", LENGTH, dry)), Optional.of(given("transfer", RATIO, 0.7)), Optional.empty(), Optional.empty(),
                Optional.empty(), Material.Stock.plain(LIBRARY));
        return new Finish(List.of(new Finish.Coats(coats, surfacer, line(39, "coats"))), List.of(80, 120), FinishDefaults.sandedShare(), line(39, "finish"));
    }

    static Finish.Coats coats(int count, Coating coating) {
        return new Finish.Coats(count, coating, line(41, "coats"));
    }

    static Mould mould(Schedule schedule, Mould.Part... parts) {
        return new Mould(schedule, given("draft", ANGLE, Math.toRadians(2)), given("flange", LENGTH, 0.075), List.of(parts),
                List.of(coats(5, spread("Wax", Dimension.COVERAGE_MASS, 80, 3600)), coats(1, spread("Film", Dimension.COVERAGE_VOLUME, 12000, 1800))),
                MouldDefaults.hold(), line(42, "mould"));
    }

    static Mould.Part half(String name, Mould.Pull pull) {
        return new Mould.Part(Optional.of(name), new Mould.Reach.PullSide(), pull, line(43, "half " + name));
    }

    static Mould.Part half(String name, Mould.Reach reach, Mould.Pull pull) {
        return new Mould.Part(Optional.of(name), reach, pull, line(43, "half " + name));
    }
}
