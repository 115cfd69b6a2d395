package mouldwright.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import mouldwright.exchange.Fault;
import mouldwright.exchange.SectionPoint;
import mouldwright.exchange.StationOffsets;
import mouldwright.units.Unit;
import mouldwright.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of offsets as boatbuilders and spreadsheets write them. */
class TablesTest {

    private static final Unit MM = Units.find("mm").orElseThrow();
    private static final double TINY = 1e-12;

    private static OffsetTable table(String text) {
        TableResult result = Tables.read(text, Optional.of(MM));
        assertThat(result.faults()).isEmpty();
        return result.table().orElseThrow();
    }

    private static List<String> faults(String text) {
        return Tables.read(text, Optional.of(MM)).faults().stream().map(Fault::words).toList();
    }

    private static SectionPoint only(String cell) {
        return table("station;y;z\nA;" + cell + ";10\nA;0;20").stations().getFirst().points().getFirst();
    }

    @Test void aPointIsARowAndAMarkIsAKnuckleOnALine() {
        StationOffsets station = table("station,y,z,mark\nS1,0,60,\nS1,180,60,chine\nS1,190,260,knuckle\nS1,0,340,\n").station("S1").orElseThrow();
        assertThat(station.points()).containsExactly(SectionPoint.smooth(0, 0.060), new SectionPoint(0.180, 0.060, true, Optional.of("chine")),
                SectionPoint.corner(0.190, 0.260), SectionPoint.smooth(0, 0.340));
        assertThat(station.x()).isEmpty();
    }

    @Test void aByteOrderMarkSemicolonsDecimalCommasAndARemarkAreNoObstacle() {
        StationOffsets station = table("\uFEFFstation;x (m);y (mm);z [in]\r\n# lifted off the mould loft floor\r\nS1;1,25;180,5;2\r\nS1;;0;3\r\n").stations().getFirst();
        assertThat(station.x()).hasValue(1.25);
        assertThat(station.points().getFirst().y()).isEqualTo(0.1805, within(TINY));
        assertThat(station.points().getFirst().z()).isEqualTo(0.0508, within(TINY));
    }

    /** 1 ft is 0.3048 m and 1 in 25.4 mm by definition (1959); a plus is a sixteenth more, common practice. */
    @ParameterizedTest
    @CsvSource({"2-5-3, 746.125", "2.5.3, 746.125", "2-5-3+, 747.7125", "2-5-3-, 744.5375", "0-0-1, 3.175", "-0-1-0, -25.4", "10-11-7, 3349.625"})
    void feetInchesAndEighthsAreReadAsBoatbuildersWriteThem(String written, double mm) {
        assertThat(only(written).y()).isEqualTo(mm / 1000, within(TINY));
    }

    @ParameterizedTest
    @CsvSource({"2-12-3, 12 inches", "2-5-8, 8 eighths", "=B2*2, is a formula", "@sum, is a formula", "+a1, is a formula", "approx 20, is no figure", "2003-05-02, is a day",
            "2.5.2003, is a day", "NaN, is no figure", "1e999, is no figure", "5000000, more than 1000 m"})
    void whatIsNoFigureIsToldWithItsCell(String written, String words) {
        assertThat(faults("station;y;z\nA;" + written + ";10\nA;0;20")).singleElement().asString().startsWith("cell B2: ").contains(words);
    }

    @Test void thousandsInACommaTableAreAsked() {
        assertThat(faults("station,y,z\nA,\"1,234\",10\nA,0,20")).singleElement().asString().contains("cell B2").contains("thousands or thousandths");
    }

    @Test void aRowWithACellTooManyIsTold() {
        assertThat(faults("station,y,z\nA,12,5,10\nA,0,20")).containsExactly("row 2: it has 4 cells, the headings are 3; is there a decimal comma in it?");
    }

    @Test void aStationThatComesAgainFurtherDownIsTold() {
        assertThat(faults("station,y,z\nA,0,0\nB,0,0\nB,1,1\nA,1,1")).containsExactly("cell A5: station A comes a second time");
    }

    @Test void aHalfPointIsTold() {
        assertThat(faults("station,y,z\nA,0,\nA,1,1")).containsExactly("cell C2: a point is two figures, and z is missing");
    }

    /** Nothing is nothing in any unit, so the first figure that is more is asked about. */
    @Test void aTableThatDoesNotSayItsUnitsIsAsked() {
        assertThat(Tables.read("station,y,z\nA,0,0\nA,1,1", Optional.empty()).faults()).singleElement().satisfies(fault -> {
            assertThat(fault.words()).isEqualTo("cell B3: the table does not say what its lengths are in");
            assertThat(fault.remedy()).contains("y (mm)");
        });
    }

    @Test void anOpenQuotationMarkIsTold() {
        assertThat(faults("station,y,z\nA,\"0,0\nA,1,1")).singleElement().asString().contains("quotation mark");
    }

    private static final String SKIFF = """
            offsets in mm,A,B
            position,0,600
            Heights above base
            keel,120,20
            buttock 100,130,35
            200,155,60
            chine,210,150
            sheer,420,400
            Half-breadths
            keel,0,0
            WL 200,,310
            300,312,360
            chine,260,280
            deck,330,380
            """;

    @Test void aTableOfOffsetsGoesFromTheKeelByButtocksAndWaterlinesToTheSheer() {
        StationOffsets station = table(SKIFF).station("A").orElseThrow();
        assertThat(station.x()).hasValue(0);
        assertThat(station.points()).extracting(SectionPoint::y).containsExactly(0.0, 0.1, 0.2, 0.26, 0.312, 0.33);
        assertThat(station.points()).extracting(SectionPoint::z).containsExactly(0.12, 0.13, 0.155, 0.21, 0.3, 0.42);
        assertThat(station.points().get(3).line()).hasValue("chine");
    }

    /** The keel of a round bottom lies level: its mirror image goes on without a corner. */
    @Test void theKeelIsACornerOnlyWhereTheBottomRisesFromIt() {
        assertThat(table(SKIFF).station("A").orElseThrow().points().getFirst().knuckle()).isFalse();
        assertThat(table(SKIFF.replace("buttock 100,130", "buttock 100,160").replace("200,155", "200,190")).station("A").orElseThrow().points().getFirst().knuckle()).isTrue();
    }

    /** Tumblehome above and a bottom that droops outboard of the keel: neither height nor half-breadth alone gives the order. */
    @Test void theOrderIsTheShortestWayRound() {
        StationOffsets station = table("""
                mm,M
                height of keel,50
                buttock 100,20
                buttock 200,10
                buttock 300,60
                waterline 100,340
                waterline 200,350
                waterline 300,330
                height of sheer,400
                half-breadth of sheer,300
                """).stations().getFirst();
        assertThat(station.points()).extracting(SectionPoint::y).containsExactly(0.0, 0.1, 0.2, 0.3, 0.34, 0.35, 0.33, 0.3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "mm,A,A#position,0,1#keel,0,0|cell C1: two stations are called A",
        "mm,A#position,0#garboard 5,1|cell A3: `garboard 5` is no line that is known",
        "mm,A#WL 100,20#WL 100,21|cell A3: `WL 100` comes a second time",
        "mm,A#WL 100,-20|cell B2: a half-breadth below nothing: -20",
        "mm,A#height of keel,0#height of deck,100|cell B1: station A has a height of the sheer and no half-breadth",
        "mm,A,B#position,0#WL 100,20,30|cell C2: station B has no position",
        "mm,A#WL 100,20,30|row 2: it has 3 cells, the first row 2; is there a decimal comma in it?",
        "mm,A#Diagonals#diagonal 1,20|cell A2: `Diagonals` is no line that is known"})
    void whatATableOfOffsetsLacksIsTold(String rows, String fault) {
        assertThat(faults(rows.replace('#', '\n'))).contains(fault);
    }

    @Test void noBeginningOfATableMakesItFail() {
        for (String text : List.of(SKIFF, "station;y;z;mark\nA;\"1,5\";2-5-3;chine\nA;=1;2\n"))
            for (int end = 0; end <= text.length(); end++) {
                TableResult result = Tables.read(text.substring(0, end), Optional.of(MM));
                assertThat(result.table().isPresent()).as("the first %d characters", end).isEqualTo(result.faults().isEmpty());
            }
    }

    @Test void faultsWithoutEndAreCounted() {
        StringBuilder rows = new StringBuilder("station,y,z\n");
        for (int i = 0; i < 50; i++)
            rows.append("A,x,1\n");
        assertThat(faults(rows.toString())).hasSize(11).last().asString().isEqualTo("further on: 40 more like these");
    }

    /** A circle of radius 100 about 100 above the base, as a table gives it: heights below and above on a buttock, a half-breadth on each waterline. */
    private static String circle(String more) {
        return "offsets in mm,A\nposition,0\nbuttock 0 lower,0\nbuttock 0 upper,200\nbuttock 60 lower,20\nbuttock 60 upper,180\nwaterline 60,91.652\nwaterline 100,100\n"
                + "waterline 140,91.652\n" + more + "girth,628.3\n";
    }

    private static List<SectionPoint> points(String text) {
        TableResult result = Tables.read(text, Optional.empty());
        assertThat(result.faults()).isEmpty();
        return result.table().orElseThrow().stations().getFirst().points();
    }

    @Test void aSectionThatClosesAboveGoesOutBelowAndComesBackAbove() {
        assertThat(points(circle(""))).extracting(SectionPoint::z).map(z -> Math.rint(z * 1000)).containsExactly(0.0, 20.0, 60.0, 100.0, 140.0, 180.0, 200.0);
        assertThat(points(circle(""))).allSatisfy(p -> assertThat(Math.hypot(p.y(), p.z() - 0.1)).isCloseTo(0.1, within(1e-6)));
    }

    @Test void diagonalsAreMeasuredAlongTheirSlope() { // closed form: on a circle about the point they start from every diagonal is as long as its radius
        List<SectionPoint> points = points(circle("diagonal up from 100,100\ndiagonal down from 100 at 60 deg,100\n"));
        assertThat(points).anySatisfy(p -> {
            assertThat(p.y()).isCloseTo(0.1 * Math.cos(Math.PI / 3), within(1e-9));
            assertThat(p.z()).isCloseTo(0.1 - 0.1 * Math.sin(Math.PI / 3), within(1e-9));
        });
        assertThat(points).allSatisfy(p -> assertThat(Math.hypot(p.y(), p.z() - 0.1)).isCloseTo(0.1, within(1e-6)));
        assertThat(points).extracting(SectionPoint::z).isSorted();
    }

    @Test void ofATableOfTwoSurfacesTheFinishedOneIsRead() {
        String two = "surface,offsets in mm,A\n,position,0\nfinished,buttock 0 lower,0\nfinished,waterline 50,100\nfinished,buttock 0 upper,100\nplate,waterline 50,97\n";
        assertThat(points(two)).extracting(SectionPoint::y).containsExactly(0.0, 0.1, 0.0);
        assertThat(Tables.read(two.replace("50,100", "50,ten"), Optional.empty()).faults().getFirst().words()).as("as the file has it").startsWith("cell C4");
    }

    @Test void sidesThatDifferAskForPoints() {
        assertThat(Tables.read("offsets in mm,A\nposition,0\nwaterline 50 port,100\n", Optional.empty()).faults()).singleElement()
                .satisfies(fault -> assertThat(fault.words() + fault.remedy()).contains("cell A3", "both sides differ", "station,y,z"));
    }

    @Test void aLevelDeckIsTheClosureOfASectionAndNoPartOfIt() { // sheer at 100 out and 80 high; the deck runs from there to the centreline
        List<SectionPoint> points = points("offsets in mm,A\nposition,0\nheight of keel,0\nbuttock 50 lower,10\nbuttock 0 upper,80\nbuttock 50 upper,80\nheight of sheer,80\nhalf-breadth of sheer,100\n");
        assertThat(points.getLast().y()).isEqualTo(0.1, within(1e-12));
        assertThat(points).hasSize(3);
    }
}
