package mouldwright.plan.read;

import static mouldwright.plan.read.Models.F;
import static mouldwright.plan.read.Models.binary;
import static mouldwright.plan.read.Models.bracket;
import static mouldwright.plan.read.Models.measure;
import static mouldwright.plan.read.Models.range;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.model.Document;
import mouldwright.model.Operator;
import mouldwright.model.Plug;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.stage.Planner;
import org.junit.jupiter.api.Test;

class SpecReaderTest {

    @Test void theSmallestSpecIsReadAndPlanned() { // closed form: 400 x 200 x 50 mm
        var plan = new Planner().plan(spec(Models.box()), () -> false);
        assertThat(plan.quantity("shape.volume").orElseThrow().value()).isCloseTo(0.004, within(1e-9));
    }

    @Test void bareLengthsAreMillimetresUnlessThePlugSaysOtherwise() {
        Plug inches = Models.box();
        inches.setUnits("in");
        assertThat(spec(Models.box()).body().stations().get(1).x()).isEqualTo(0.4);
        assertThat(spec(inches).body().stations().get(1).x()).isCloseTo(400 * 0.0254, within(1e-12)); // 1 in = 25.4 mm
    }

    @Test void aFormulaMayMixBareLengthsWithNamedOnes() { // (60 + 2 * wall) with wall = 3 mm
        Plug plug = Models.box();
        plug.setUnits("cm");
        var wall = Models.let(plug, "wall", measure("3", "mm"));
        Models.station(plug, "C", bracket(binary(measure("60", null), Operator.PLUS,
                binary(measure("2", null), Operator.TIMES, Models.reference(wall))))).setForm(F.createLofted());
        assertThat(spec(plug).body().stations().getLast().x()).isCloseTo(0.606, within(1e-12));
    }

    @Test void aWeekRunsFromItsFirstToItsLastWorkingDay() {
        Plug plug = Models.box();
        plug.setWork(F.createWeek());
        plug.getWork().setFrom(mouldwright.model.Weekday.TUESDAY);
        plug.getWork().setTo(mouldwright.model.Weekday.SATURDAY);
        assertThat(spec(plug).shop().week().from()).isEqualTo(java.time.DayOfWeek.TUESDAY);
        assertThat(spec(plug).shop().week().to()).isEqualTo(java.time.DayOfWeek.SATURDAY);
    }

    @Test void theAirIsThinnedOutToTwentyPartsInAMillionUnlessTheSpecSaysOtherwise() { // ACGIH, 1996
        assertThat(spec(Models.box()).shop().air().limit().likely()).isEqualTo(20e-6);
        Plug plug = Models.box();
        plug.setAir(F.createAir());
        plug.getAir().setLimit(measure("50", "ppm"));
        plug.getAir().setTemperature(measure("70", "degF"));
        assertThat(spec(plug).shop().air().limit().likely()).isCloseTo(50e-6, within(1e-15));
        assertThat(spec(plug).shop().air().temperature().likely()).isCloseTo(21.1, within(0.02));
        assertThat(spec(plug).shop().air().mixing().assumed()).isTrue();
    }

    @Test void consumablesComeInPacksOfPieces() {
        Document library = Models.library("stock.consumables");
        var rollers = F.createConsumable();
        rollers.setName("Rollers");
        rollers.setArea(measure("5", "m2"));
        rollers.setPieces("10");
        rollers.setPrice("12.00");
        library.getDeclarations().add(rollers);
        Plug plug = Models.box();
        plug.getConsumables().add(rollers);
        assertThat(spec(plug).shop().consumables()).singleElement().satisfies(read -> {
            assertThat(read.area()).hasValueSatisfying(area -> assertThat(area.likely()).isEqualTo(5));
            assertThat(read.stock().pack()).hasValueSatisfying(pack -> {
                assertThat(pack.size().likely()).isEqualTo(10);
                assertThat(pack.price()).isEqualTo(12);
                assertThat(pack.currency()).isEqualTo("EUR");
            });
        });
    }

    @Test void aShopMayStateTheLabourOfABulkheadAndOfAPot() {
        Plug plug = Models.box();
        var rates = F.createRates();
        rates.setName("Shop");
        rates.setPlate(range(measure("90", "min")));
        rates.setPot(range(measure("5", "min")));
        Models.library("stock.rates").getDeclarations().add(rates);
        plug.setRates(rates);
        assertThat(spec(plug).shop().rates().orElseThrow().plate()).hasValueSatisfying(plate -> assertThat(plate.likely()).isEqualTo(5400));
        assertThat(spec(plug).shop().rates().orElseThrow().pot()).hasValueSatisfying(pot -> assertThat(pot.likely()).isEqualTo(300));
    }

    @Test void feetAndInchesAreASum() { // (3 ft + 4 in) = 1016 mm
        Plug plug = Models.box();
        Models.station(plug, "C", bracket(binary(measure("3", "ft"), Operator.PLUS, measure("4", "in")))).setForm(F.createLofted());
        assertThat(spec(plug).body().stations().getLast().x()).isCloseTo(1.016, within(1e-12));
    }

    @Test void theWrongDimensionIsSaidInTheWordsOfTheTrade() {
        Plug plug = Models.box();
        Models.station(plug, "C", measure("450", "g/m2")).setForm(F.createLofted());
        assertThat(read(plug).problems()).singleElement().satisfies(problem -> {
            assertThat(problem.kind()).isEqualTo(ReadProblem.Kind.DIMENSION);
            assertThat(problem.message()).isEqualTo("length expected, 450 g/m2 is a mass per area");
        });
    }

    @Test void lengthAndMassCannotBeAdded() {
        Plug plug = Models.box();
        Models.station(plug, "C", bracket(binary(measure("3", "ft"), Operator.PLUS, measure("4", "kg")))).setForm(F.createLofted());
        assertThat(read(plug).problems()).extracting(ReadProblem::kind).containsExactly(ReadProblem.Kind.FORMULA);
    }

    @Test void aLetThatRestsOnItselfIsNoEndlessLoop() {
        Plug plug = Models.box();
        var wall = Models.let(plug, "wall", null);
        wall.setValue(bracket(Models.reference(wall)));
        Models.station(plug, "C", bracket(Models.reference(wall))).setForm(F.createLofted());
        assertThat(read(plug).problems()).extracting(ReadProblem::kind).containsExactly(ReadProblem.Kind.FORMULA);
    }

    @Test void divisionByNothingIsAProblem() {
        Plug plug = Models.box();
        Models.station(plug, "C", bracket(binary(measure("3", "ft"), Operator.OVER, measure("0", null)))).setForm(F.createLofted());
        assertThat(read(plug).problems()).extracting(ReadProblem::kind).containsExactly(ReadProblem.Kind.FORMULA);
    }

    @Test void aTimeMustSayItsUnit() {
        Plug plug = Models.box();
        plug.setDay(measure("7", null));
        assertThat(read(plug).problems()).singleElement().satisfies(problem -> {
            assertThat(problem.kind()).isEqualTo(ReadProblem.Kind.UNIT_MISSING);
            assertThat(problem.message()).startsWith("time expected, 7 has no unit");
        });
    }

    @Test void aDecimalCommaIsReadAndReported() {
        Plug plug = Models.box();
        Models.station(plug, "C", measure("200,5", null)).setForm(F.createLofted());
        Reading reading = read(plug);
        assertThat(reading.problems()).extracting(ReadProblem::kind).containsExactly(ReadProblem.Kind.DECIMAL_COMMA);
        assertThat(reading.spec().orElseThrow().body().stations().getLast().x()).isEqualTo(0.2005);
    }

    @Test void anUnknownUnitNamesTheNearest() {
        Plug plug = Models.box();
        Models.station(plug, "C", measure("200", "mmm")).setForm(F.createLofted());
        assertThat(read(plug).problems()).singleElement().satisfies(problem -> {
            assertThat(problem.kind()).isEqualTo(ReadProblem.Kind.UNIT_UNKNOWN);
            assertThat(problem.message()).contains("`mm`?");
        });
    }

    @Test void fahrenheitIsReadAsAThermometerShowsIt() { // 68 degF = 20 degC
        Plug plug = Models.box();
        plug.setShop(range(measure("68", "degF")));
        assertThat(spec(plug).shop().temperature().likely()).isCloseTo(20, within(1e-12));
    }

    @Test void whatIsNotStatedIsAssumedAndSaysSo() {
        Spec spec = spec(Models.box());
        assertThat(spec.shop().temperature().assumed()).isTrue();
        assertThat(spec.body().shrink().origin().words()).startsWith("assumed:");
        assertThat(spec.frame()).isEmpty();
    }

    @Test void rangesKeepLowLikelyAndHigh() { // expansion 32 from 28 to 33
        Spec spec = spec(filled());
        var expansion = spec.fill().orElseThrow().foam().expansion().orElseThrow();
        assertThat(List.of(expansion.low(), expansion.likely(), expansion.high())).containsExactly(28.0, 32.0, 33.0);
        assertThat(expansion.ranged()).isTrue();
    }

    @Test void aRangeOutOfOrderIsAProblem() {
        Plug plug = Models.box();
        plug.setShop(range(measure("20", "degC"), measure("25", "degC"), measure("30", "degC")));
        assertThat(read(plug).problems()).extracting(ReadProblem::kind).containsExactly(ReadProblem.Kind.RANGE);
    }

    @Test void figuresOfALibraryNameTheirEntry() {
        var density = spec(filled()).fill().orElseThrow().foam().density();
        assertThat(density.origin()).isInstanceOfSatisfying(Origin.Library.class, origin -> {
            assertThat(origin.library()).isEqualTo("stock.polyester");
            assertThat(origin.material()).isEqualTo("Pour36");
        });
    }

    @Test void aFoamWithoutDensityIsAProblem() {
        Plug plug = filled();
        plug.getFill().getFoam().setDensity(null);
        assertThat(read(plug).problems()).singleElement().satisfies(problem -> {
            assertThat(problem.kind()).isEqualTo(ReadProblem.Kind.MISSING);
            assertThat(problem.message()).isEqualTo("density is missing");
        });
        assertThat(read(plug).spec()).isEmpty();
    }

    @Test void aFillSaysItsShellInMetres() {
        Plug plug = filled();
        plug.getFill().setSolid(false);
        plug.getFill().setShell(measure("110", null));
        assertThat(spec(plug).fill().orElseThrow().core()).isInstanceOfSatisfying(Fill.Core.Shell.class,
                shell -> assertThat(shell.thickness().likely()).isEqualTo(0.110));
    }

    @Test void schedulesAreWrittenOut() { // include, 2 of ply, wait
        Document library = Models.library("stock.polyester");
        var inner = schedule(library, "Inner", 1);
        var outer = schedule(library, "Outer", 2);
        var include = F.createInclude();
        include.setSchedule(inner);
        outer.getSteps().addFirst(include);
        Plug plug = Models.box();
        plug.setPart(outer);
        assertThat(spec(plug).part().orElseThrow().plies()).hasSize(3);
    }

    @Test void aScheduleThatIncludesItselfIsAProblem() {
        Document library = Models.library("stock.polyester");
        var one = schedule(library, "One", 1);
        var include = F.createInclude();
        include.setSchedule(one);
        one.getSteps().add(include);
        Plug plug = Models.box();
        plug.setPart(one);
        assertThat(read(plug).problems()).extracting(ReadProblem::kind).containsExactly(ReadProblem.Kind.CIRCLE);
    }

    @Test void aScheduleOfAMillionPliesIsAProblemAndNoEndOfMemory() {
        Document library = Models.library("stock.polyester");
        var one = schedule(library, "One", 1);
        ((mouldwright.model.Ply) one.getSteps().getFirst()).setCount("99999");
        Plug plug = Models.box();
        plug.setPart(one);
        assertThat(read(plug).problems()).extracting(ReadProblem::kind).containsExactly(ReadProblem.Kind.NUMBER);
    }

    @Test void aRowOfStationsStandsAtEvenDistances() { // stations R1 to R3 from 100 every 50
        Plug plug = Models.box();
        var row = F.createStationRow();
        row.setFirst("R1");
        row.setLast("R3");
        row.setFrom(measure("100", null));
        row.setEvery(measure("50", null));
        for (String name : List.of("R1", "R2", "R3")) {
            var station = F.createStation();
            station.setName(name);
            row.getStations().add(station);
        }
        plug.getStations().add(1, row);
        Spec spec = spec(plug);
        assertThat(spec.body().stations()).extracting(s -> s.name()).containsExactly("A", "R1", "R2", "R3", "B");
        assertThat(spec.body().stations().get(3).x()).isCloseTo(0.2, within(1e-12));
        assertThat(spec.body().stations().get(3).form()).isInstanceOf(Form.Lofted.class);
    }

    @Test void aStationWithoutASectionIsAProblem() {
        Plug plug = Models.box();
        Models.station(plug, "C", measure("800", null));
        assertThat(read(plug).problems()).extracting(ReadProblem::message).containsExactly("C states no section");
    }

    @Test void aTableNamedInATextThatIsInNoFileIsToldToBeUnread() {
        Plug plug = Models.box();
        var table = F.createTabled();
        table.setFile("canopy.csv");
        table.setColumn("S3");
        Models.station(plug, "C", measure("800", null)).setForm(table);
        assertThat(read(plug).problems()).extracting(ReadProblem::kind).containsExactly(ReadProblem.Kind.TABLE);
    }

    @Test void aModelFullOfHolesIsReadWithoutAnException() { // what a half-typed spec looks like
        Plug plug = F.createPlug();
        plug.getStations().add(F.createStation());
        plug.getLets().add(F.createLet());
        plug.getBares().add(F.createBare());
        plug.getEnds().add(F.createEnd());
        plug.setFrame(F.createFrame());
        plug.setFill(F.createFill());
        plug.setSkin(F.createSkin());
        plug.setMould(F.createMould());
        plug.setFinish(F.createFinish());
        plug.getFinish().getCoats().add(F.createCoats());
        plug.getFill().getBays().add(F.createFillBay());
        plug.getSkin().getBays().add(F.createSkinBay());
        plug.getAccepts().add(F.createAccept());
        plug.setShop(F.createRange());
        var survey = F.createSurvey();
        survey.setDate("2027-02-30");
        survey.getEntries().add(F.createGouge());
        survey.getEntries().add(F.createStationReading());
        Reading reading = new SpecReader(TextPlaces.NOWHERE).read(plug, List.of(survey));
        assertThat(reading.spec()).isEmpty();
        assertThat(reading.problems()).isNotEmpty();
    }

    @Test void aWageIsPerHourWhateverTimeItNames() { // 224 a day of 24 h would be 9.33 an hour; 28 an hour stays 28
        Plug plug = Models.box();
        plug.setCrew("2");
        plug.setWage(measure("28.00", null));
        plug.setWagePer("h");
        assertThat(spec(plug).shop().hourlyRate().orElseThrow().likely()).isEqualTo(28);
        assertThat(spec(plug).shop().persons().likely()).isEqualTo(2);
    }

    private static Plug filled() {
        Plug plug = Models.box();
        var fill = F.createFill();
        fill.setFoam(Models.foam(Models.library("stock.polyester")));
        fill.setSolid(true);
        plug.setFill(fill);
        return plug;
    }

    private static mouldwright.model.Schedule schedule(Document library, String name, int plies) {
        var schedule = F.createSchedule();
        schedule.setName(name);
        schedule.setResin(Models.resin(library));
        var ply = F.createPly();
        ply.setMat(Models.mat(library));
        ply.setCount(plies == 1 ? null : Integer.toString(plies));
        schedule.getSteps().add(ply);
        library.getDeclarations().add(schedule);
        return schedule;
    }

    private static Reading read(Plug plug) {
        return new SpecReader(TextPlaces.NOWHERE).read(plug, List.of());
    }

    private static Spec spec(Plug plug) {
        Reading reading = read(plug);
        assertThat(reading.problems()).filteredOn(ReadProblem::blocking).isEmpty();
        return reading.spec().orElseThrow();
    }
}
