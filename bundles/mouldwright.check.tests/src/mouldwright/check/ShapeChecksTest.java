package mouldwright.check;

import static mouldwright.check.Tried.STOCK;
import static mouldwright.check.Tried.cylinder;
import static mouldwright.check.Tried.found;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Sections and stations that make no body, or one with a slip in it. Each is told with figure, limit and place, and not in a spec without it;
 *  limits are common practice unless a test says otherwise. */
class ShapeChecksTest {

    @Test void stationsOutOfOrderAreToldAtTheSecondOfThem() {
        assertThat(found("plug P { half sections station A at 300 superellipse 200 by 400 station B at 0 like A }"))
                .singleElement().asString().startsWith("MW103 B:").contains("sort the stations");
    }

    @Test void oneStationIsNoBody() {
        assertThat(found("plug P { half sections station A at 0 superellipse 200 by 400 }"))
                .singleElement().asString().startsWith("MW103 two stations at least shape a body");
    }

    @Test void anOutlineThatCrossesItselfIsNoSection() {
        assertThat(found("plug P { half sections station A at 0 { 0 0 100 0 knuckle 50 100 knuckle 120 60 knuckle 0 20 } station B at 400 like A }"))
                .singleElement().asString().startsWith("MW101 A:").contains("cross");
    }

    @Test void linesThatDoNotMatchAreToldWithTheStation() {
        assertThat(found("""
                plug P {
                    half sections
                    station A at 0 { 0 0 100 0 knuckle 100 50 knuckle 0 50 }
                    station B at 400 { 0 0 100 0 knuckle 0 50 }
                }
                """)).singleElement().asString().startsWith("MW103");
    }

    @Test void twoStationsAHairApartStandAtOnePlace() {
        for (String x : new String[] {"1e-320", "1e-300", "0.0001"})
            assertThat(found(cylinder("fill Pour36 solid { }").replace("station B at 300", "station B at " + x)))
                    .singleElement().asString().startsWith("MW103 B:");
    }

    @Test void aSlipInAFigureIsToldAloneAndNotWhatFollowsFromIt() {
        String slip = cylinder("frame { sheet Ply12 measured 12 } fill Pour36 solid { } carve { }").replace("station B at 300 like A", "station B at 3000 like A");
        assertThat(found(slip)).allSatisfy(finding -> assertThat(finding).startsWith("MW10"));
    }

    @Test void aPointTypedWrongStandsOffTheCurveOfItsNeighbours() {
        // a half circle of radius 200 mm every 15 degrees; the sixth height is typed 20 mm too high
        String circle = """
                plug P {
                    half sections
                    station A at 0 {
                        0 0
                        51.8 6.8
                        100 26.8
                        141.4 58.6
                        173.2 100
                        193.2 %s
                        200 200
                        193.2 251.8
                        173.2 300
                        141.4 341.4
                        100 373.2
                        51.8 393.2
                        0 400
                    }
                    station B at 300 like A
                }
                """;
        assertThat(found(circle.formatted("148.2"))).isEmpty();
        assertThat(found(circle.formatted("168.2"))).singleElement().asString().startsWith("MW106 this point of A stands").contains("slip of the pen");
    }

    @Test void aSharpCornerUnderMatIsToldOnceWithItsRadius() {
        String box = STOCK + """
                plug P {
                    half sections
                    station A at 0 { 0 0 100 0 knuckle#R 100 50 knuckle#R 0 50 }
                    station B at 400 like A
                    skin OnePly { }
                }
                """;
        assertThat(found(box.replace("#R", ""))).singleElement().asString().startsWith("MW105 outside corner of A near 100 mm out, 0").contains("radius 3 mm at least");
        assertThat(found(box.replace("#R", " radius 6"))).isEmpty();
        assertThat(found(box.replace("#R", " radius 2"))).singleElement().asString().startsWith("MW105 corner of A rounded to 2 mm");
    }
}
