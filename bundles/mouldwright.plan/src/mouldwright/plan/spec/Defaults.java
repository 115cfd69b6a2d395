package mouldwright.plan.spec;

import java.util.Optional;
import mouldwright.process.Pour;
import mouldwright.units.Dimension;

/** Every default of the language, in one place, each with the reason for its figure.
 *  A default that is used is listed in the plan as assumed. */
public final class Defaults {

    private Defaults() { }

    /** Shop temperature, degC. */
    public static Given shopTemperature() {
        return assumed("shop temperature", Dimension.TEMPERATURE, 20,
                "gel times and foam yields are commonly stated at 20 degC");
    }

    /** Persons at work. */
    public static Given persons() {
        return assumed("crew", Dimension.RATIO, 1, "the spec states no crew, so one person is reckoned with");
    }

    /** Working day, s. */
    public static Given day() {
        return assumed("working day", Dimension.TIME, 8 * 3600.0, "a common working day of eight hours");
    }

    /** Bare lengths are millimetres. */
    public static Tacit units() {
        return new Tacit.Choice("units", "mm", new Origin.Assumed("drawings are dimensioned in millimetres unless they say otherwise"));
    }

    /** Sections are drawn for one half. */
    public static Tacit sections() {
        return new Tacit.Choice("sections", "half", new Origin.Assumed("most bodies are alike on both sides, and lines are drawn for one"));
    }

    /** A superellipse is an ellipse. */
    public static Given exponent() {
        return assumed("superellipse exponent", Dimension.RATIO, 2, "2 is the ellipse");
    }

    /** A superellipse stands on the base, m. */
    public static Given above() {
        return assumed("superellipse above base", Dimension.LENGTH, 0, "it stands on the base unless raised");
    }

    /** What a scaled section is scaled about. */
    public static Tacit centre() {
        return new Tacit.Choice("scaled about", "0 0", new Origin.Assumed("a section is scaled about the centreline at the base"));
    }

    /** Edges of plates are cut square. */
    public static Tacit edges() {
        return new Tacit.Choice("edges", "square", new Origin.Assumed("a square edge takes no bevel table and never stands proud"));
    }

    /** Why bays are poured solid. */
    public static Origin.Assumed solid() {
        return new Origin.Assumed("the fill states neither solid nor a shell");
    }

    /** Why a bay is poured upright. */
    public static Origin.Assumed upright() {
        return new Origin.Assumed("bays are poured as the plug will stand unless a bay says otherwise");
    }

    /** Total shrink of mould and part, a share. */
    public static Given shrink() {
        return assumed("shrink", Dimension.RATIO, 0,
                "no shrink is allowed for; 0.1 to 0.5 % is common for mat laminates");
    }

    /** End faces are bare. */
    public static Body.End end() {
        return new Body.End(false, new Origin.Assumed("an end face is bare unless the spec says moulded"));
    }

    /** Play of a slot, m. */
    public static Given clearance() {
        return assumed("slot clearance", Dimension.LENGTH, 0.0002, "a slot that is pushed together by hand");
    }

    /** Measured thickness where none was measured.
     *  @param sheet whose nominal thickness is taken */
    public static Given thickness(Sheet sheet) {
        return assumed("sheet thickness", Dimension.LENGTH, sheet.thickness().likely(), "not measured: the nominal thickness of "
                + sheet.name() + "; plywood is often 0.3 mm under it, so measure it");
    }

    /** Wood left round a pocket, m. */
    public static Given rim() {
        return assumed("rim", Dimension.LENGTH, 0.060, "wide enough to keep its shape and to clamp to; common practice");
    }

    /** Diameter of the holes that line up plates, m. */
    public static Given holes() {
        return assumed("holes", Dimension.LENGTH, 0.008, "an 8 mm rod or a wire passes, and a dowel of that size plugs them; common practice");
    }

    /** Length of a scarf in thicknesses. */
    public static Given scarf() {
        return assumed("scarf", Dimension.RATIO, 8, "8 to 1 is the usual slope of a glued plywood scarf; common practice");
    }

    /** Length of a strap across its butt, m.
     *  @param thickness of the sheet */
    public static Given strap(Given thickness) {
        return assumed("strap", Dimension.LENGTH, 16 * thickness.likely(), "8 thicknesses on both sides of the butt, as much glue line as a scarf of 8 to 1 has; common practice");
    }

    /** How far a base reaches past the plates, m. */
    public static Given baseMargin() {
        return assumed("base margin", Dimension.LENGTH, 0.100, "room for cleats, datum points and a clamp; common practice");
    }

    /** Breadth over the rails of a strongback, m.
     *  @param broadest breadth of the plates */
    public static Given railsApart(double broadest) {
        return assumed("strongback apart", Dimension.LENGTH, 2 * broadest / 3, "two thirds of the greatest breadth: stiff against twisting and clear of the edges; common practice");
    }

    /** Depth of a gauge's body, m. */
    public static Given gauge() {
        return assumed("gauge depth", Dimension.LENGTH, 0.100, "stiff enough not to spring when it is pushed on; common practice");
    }

    /** Tolerance of setting up, m. */
    public static Given tolerance() {
        return assumed("tolerance", Dimension.LENGTH, 0.0015, "what a straightedge and a plumb line reach; common practice");
    }

    /** Foam poured past its line, m. */
    public static Given overfill() {
        return assumed("overfill", Dimension.LENGTH, 0.015, "overfill everywhere, since adding later is hard; common practice");
    }

    /** Straight fairing board of 1.2 m and 1.5 mm of crown.
     *  @return the carving rules of a spec that has none */
    public static Carve carve() {
        return new Carve(board(), false, crownLimit(), Optional.empty(), new Origin.Assumed("the spec has no carve block"));
    }

    /** Length of the fairing board, m. */
    public static Given board() {
        return assumed("board", Dimension.LENGTH, 1.200, "a board about 4 ft long spans bulkheads on flat areas; common practice");
    }

    /** Greatest crown between plates, m. */
    public static Given crownLimit() {
        return assumed("crown limit", Dimension.LENGTH, 0.0015, "about what surfacer and filler can still hide; common practice");
    }

    /** Lap of neighbouring pieces, m. */
    public static Given lap() {
        return assumed("lap", Dimension.LENGTH, 0.050, "laps of 50 mm are common on a plug, 75 to 100 mm in a mould");
    }

    /** Mat spoilt in cutting and laying, as a share of the packed length. */
    public static Given spoiltMat() {
        return new Given("spoilt mat", Dimension.RATIO, 0, 0, 0.15,
                new Origin.Assumed("none where pieces come off the roll as the cut list has them; 10 to 15 % of trim is common where they do not"));
    }

    /** Lap of neighbouring pieces in a mould, m. */
    public static Given mouldLap() {
        return assumed("lap in the mould", Dimension.LENGTH, 0.075, "mat overlaps of 75 to 100 mm in a mould: Practical Action, Fibreglass boat building");
    }

    /** Length of a piece of mat in a mould, m. */
    public static Given mouldPiece() {
        return assumed("piece of mat in the mould", Dimension.LENGTH, 1.25, "a piece no longer than a roll is wide can be laid by one person; common practice");
    }

    /** Wet film of a coat, m. */
    public static Given wetFilm() {
        return assumed("wet film", Dimension.LENGTH, 200e-6, "neither a wet film nor a coverage is stated; about what one pass of a gun or brush leaves");
    }

    /** Share of a coating that lands on the work. */
    public static Given transfer() {
        return new Given("transfer", Dimension.RATIO, 0.70, 0.75, 0.95, new Origin.Assumed("20 to 30 % of what is sprayed misses, 5 % of what is brushed; common practice"));
    }

    /** Rate one person sands with one grit, m2/s. */
    public static Given sandRate() {
        return new Given("sanding rate", Dimension.AREA_RATE, 1.0 / 3600, 1.5 / 3600, 2.0 / 3600,
                new Origin.Assumed("no rate is stated for this grit; between 1 and 2 m2 an hour and person; common practice"));
    }

    /** Rate one person puts on a coat, m2/s. */
    public static Given coatRate() {
        return new Given("coating rate", Dimension.AREA_RATE, 6 / 3600.0, 10 / 3600.0, 15 / 3600.0,
                new Origin.Assumed("6 to 15 m2 an hour and person, sprayed, brushed or waxed and buffed; from memory of such jobs, so note your own"));
    }

    /** Labour of taking a mould off its plug and trimming it, s. */
    public static Given unmouldLabour() {
        return new Given("labour of taking the mould off", Dimension.TIME, 2 * 3600.0, 4 * 3600.0, 8 * 3600.0,
                new Origin.Assumed("wedges, air and water, then trimming and drilling flanges; from memory of such jobs, so note your own"));
    }

    /** Gel time wanted, s. */
    public static Given gel() {
        return assumed("gel time", Dimension.TIME, 25 * 60.0, "long enough to lay a pot, short enough not to drain; common practice");
    }

    /** Extra resin of the first ply on cut foam, kg/m2. */
    public static Given onFoam() {
        return new Given("extra resin on foam", Dimension.AREAL_MASS, 0.20, 0.35, 0.50,
                new Origin.Assumed("cut foam drinks resin; common practice, between what cured laminate takes and the 0.5 kg/m2 that primes bare plywood"));
    }

    /** Share of the dry film that is sanded away. */
    public static Given sandedShare() {
        return assumed("sanded share", Dimension.RATIO, 1.0 / 3, "about a third of a surfacer is sanded off again; common practice");
    }

    /** Share of glass in a ply of mat. */
    public static Given glassShare() {
        return assumed("glass share", Dimension.RATIO, 1 / 3.5, "2.5 of resin to 1 of chopped strand mat by mass, as five published guides have it");
    }

    /** Width of a sheet, m. */
    public static Given sheetWidth() {
        return assumed("sheet width", Dimension.LENGTH, 1.220, "plywood is commonly sold 1220 mm by 2440 mm");
    }

    /** Length of a sheet, m. */
    public static Given sheetLength() {
        return assumed("sheet length", Dimension.LENGTH, 2.440, "plywood is commonly sold 1220 mm by 2440 mm");
    }

    /** Width of a cut in sheet material, m. */
    public static Given kerf() {
        return assumed("kerf", Dimension.LENGTH, 0.003, "a jigsaw or circular saw takes 2 to 3 mm away; common practice");
    }

    /** Strip along the edges of a sheet that no part is cut from, m. */
    public static Given margin() {
        return assumed("margin", Dimension.LENGTH, 0.010, "edges of sheets are bruised and not always square; common practice");
    }

    /** Density of plywood, kg/m3. */
    public static Given sheetDensity() {
        return assumed("sheet density", Dimension.DENSITY, 680, "birch plywood data sheet, 660 to 710 kg/m3");
    }

    /** Density of a backbone, kg/m3.
     *  @param sheet what the plates are cut from */
    public static Given backboneDensity(Sheet sheet) {
        Given density = sheet.density();
        return new Given("backbone density", Dimension.DENSITY, density.low(), density.likely(), density.high(),
                new Origin.Assumed("a backbone is taken to be glued up of layers of " + sheet.name()));
    }

    /** Density of the timber of a backbone, kg/m3. */
    public static Given timberDensity() {
        return new Given("timber density", Dimension.DENSITY, 420, 480, 550, new Origin.Assumed("dry softwood of construction grade; from memory, so weigh a piece"));
    }

    /** Share of a sheet that ends up in a board. */
    public static Given boardUse() {
        return new Given("share of a sheet used for the base", Dimension.RATIO, 0.70, 0.85, 1.00,
                new Origin.Assumed("boards with straight sides leave little; the whole sheet is the bound no nesting can pass"));
    }

    /** Density of E-glass, kg/m3. */
    public static Given glassDensity() {
        return assumed("glass density", Dimension.DENSITY, 2560, "E-glass, as ISO 12215-5 takes it");
    }

    /** Density of cured polyester, kg/m3. */
    public static Given curedResin() {
        return assumed("cured resin density", Dimension.DENSITY, 1200, "cured polyester, as ISO 12215-5 takes it");
    }

    /** Density of liquid polyester, kg/m3. */
    public static Given liquidResin() {
        return assumed("resin density", Dimension.DENSITY, 1130, "general-purpose polyester data sheet, 1.13 kg/l");
    }

    /** Density of a ketone peroxide, kg/m3. */
    public static Given hardenerDensity() {
        return assumed("catalyst density", Dimension.DENSITY, 1160, "ketone peroxide in a phlegmatiser, about 1.16 kg/l; a chart that counts 1 g as 1 ml differs");
    }

    /** Share of the stated yield that a pour reaches in practice. */
    public static Given yieldPractice() {
        return new Given("share of the yield reached in practice", Dimension.RATIO, 0.75, 0.90, 1.00,
                new Origin.Assumed("what a pour really fills, as a share of the supplier's table; never above it; common practice"));
    }

    /** Yield of a foam that states no table. */
    public static Given fullYield() {
        return assumed("yield", Dimension.RATIO, 1, "no yield table is stated: the stated expansion at any temperature");
    }

    /** Share of a sheet that ends up in plates. */
    public static Given sheetUse() {
        return new Given("share of a sheet used", Dimension.RATIO, 0.50, 0.65, 1.00,
                new Origin.Assumed("round plates on a sheet use about two thirds of it; the whole sheet is the bound no nesting can pass"));
    }

    /** Expansion of a foam that states none. */
    public static Given expansion() {
        return assumed("expansion", Dimension.RATIO, 30, "urethane pour foam grows to about 30 times its liquid volume; common practice");
    }

    /** Volume of a foam's A part to its B part where no ratio is stated. */
    public static Foam.Ratio ratio() {
        return new Foam.Ratio(1, 1, true, new Origin.Assumed("two-part pour foams are commonly mixed one to one by volume"));
    }

    /** Greatest pot of foam, kg. */
    public static Given foamPot() {
        return assumed("foam pot", Dimension.MASS, 1, "start with small pots until the cure is known; common practice");
    }

    /** Cream time, s. */
    public static Given creamTime() {
        return assumed("cream time", Dimension.TIME, 36, "a pour foam data sheet: 36 s, plus or minus 4");
    }

    /** Time to mix a pot of foam, s. */
    public static Given mixingTime() {
        return assumed("time to mix a pot of foam", Dimension.TIME, Pour.MIXING_TIME, "a boatbuilding pour foam data sheet: mix time 20 s");
    }

    /** Rate a pot of foam is poured at, kg/s. */
    public static Given pouringRate() {
        return assumed("pouring rate", Dimension.MASS_RATE, Pour.POURING_RATE, "0.25 kg/s: a pot of 1 kg is emptied in 4 s; from memory, so time your own");
    }

    /** Greatest risen height of one pour, m. */
    public static Given lift() {
        return assumed("lift", Dimension.LENGTH, 0.200, "no limit is stated; suppliers' words on depth differ widely, so ask yours");
    }

    /** Greatest pot of resin, kg. */
    public static Given resinPot() {
        return assumed("resin pot", Dimension.MASS, 1, "start with small pots until the cure is known; common practice");
    }

    /** Rate one person lays mat, m2/s. */
    public static Given layRate() {
        return assumed("lay rate", Dimension.AREA_RATE, 4 / 3600.0, "about 4 m2 of mat an hour and person; common practice");
    }

    /** Width of a roll, m. */
    public static Given rollWidth() {
        return assumed("roll width", Dimension.LENGTH, 1.25, "mat is commonly sold 1.25 m wide");
    }

    /** Least draft, radians. */
    public static Given draft() {
        return assumed("draft", Dimension.ANGLE, Math.toRadians(2), "1 to 1.5 degrees is desirable, 2 to 5 is asked for by others; common practice");
    }

    /** One piece, pulled up.
     *  @return what a mould that names no parts is made of */
    public static Mould.Part onePiece() {
        return new Mould.Part(Optional.empty(), new Mould.Reach.Everything(), Mould.Pull.UP,
                new Origin.Assumed("the mould names no parts"));
    }

    /** Flange width, m. */
    public static Given flange() {
        return assumed("flange", Dimension.LENGTH, 0.075, "flanges of 50 to 150 mm are common");
    }

    /** Time the mould stays on the plug, s. */
    public static Given hold() {
        return assumed("hold", Dimension.TIME, 14 * 86400.0, "up to three weeks are advised, two are common");
    }

    /** The cup that comes before the first pour, kg. */
    public static Given trialCup() {
        return assumed("trial cup", Dimension.MASS, 0.200, "a data sheet's laboratory mix of 200 g");
    }

    /** Wait until poured foam is firm, s. */
    public static Given firm() {
        return assumed("firm time", Dimension.TIME, 30 * 60.0, "a pour foam guide: cured in about 30 min");
    }

    /** Time until a pour has risen, s. */
    public static Given riseTime() {
        return assumed("rise time", Dimension.TIME, 150, "a supplier of pour foam: full rise in about 150 s");
    }

    /** Wait until foam may be carved, s. */
    public static Given carveAfter() {
        return assumed("carve after", Dimension.TIME, 24 * 3600.0, "foam goes on curing and warming for a day; common practice");
    }

    /** Thermal diffusivity of rigid urethane foam, m2/s. */
    public static Given foamDiffusivity() {
        return assumed("thermal diffusivity of foam", Dimension.AREA_RATE, 5e-7,
                "5e-7 m2/s, what rigid urethane foam is commonly taken to have; the wait between lifts rests on it");
    }

    /** Error of weighing a pour and reading its rise, a share. */
    public static Given pourReading() {
        return new Given("error of reading a pour", Dimension.RATIO, -0.05, 0, 0.05,
                new Origin.Assumed("a pot weighed and a rise read on a rough surface are good to about 5 %"));
    }

    /** Distance of stand-offs along a plate's edge, m. */
    public static Given standoffPitch() {
        return assumed("pitch of stand-offs", Dimension.LENGTH, 0.300, "close enough that thin shuttering does not bulge; common practice");
    }

    /** Extra release film for laps and folds, a share. */
    public static Given filmLap() {
        return new Given("laps and folds of release film", Dimension.RATIO, 0.05, 0.10, 0.20,
                new Origin.Assumed("add 10 % for overlapping sheet work, as a seamanship handbook has it"));
    }

    /** Labour of one pot, s. */
    public static Given potLabour() {
        return new Given("labour of a pot", Dimension.TIME, 3 * 60, 5 * 60, 10 * 60.0,
                new Origin.Assumed("weighing, mixing and cleaning up; from memory of such jobs, so note your own"));
    }

    /** Rate one person carves foam, m2/s. */
    public static Given carveRate() {
        return new Given("carve rate", Dimension.AREA_RATE, 1 / 3600.0, 1.5 / 3600, 2 / 3600.0,
                new Origin.Assumed("1 to 2 m2 an hour and person; from memory of such jobs, so note your own"));
    }

    /** Rate one person fairs, m2/s. */
    public static Given fairRate() {
        return new Given("fair rate", Dimension.AREA_RATE, 0.75 / 3600, 1 / 3600.0, 1.25 / 3600,
                new Origin.Assumed("about 1 m2 an hour and person; from memory of such jobs, so note your own"));
    }

    /** Area of shuttering one person sets and lines, m2/s. */
    public static Given formRate() {
        return new Given("shuttering rate", Dimension.AREA_RATE, 1 / 3600.0, 2 / 3600.0, 3 / 3600.0,
                new Origin.Assumed("1 to 3 m2 an hour and person; from memory of such jobs, so note your own"));
    }

    /** Labour of turning the plug, s of all hands together. */
    public static Given turnLabour() {
        return new Given("labour of turning the plug", Dimension.TIME, 1800, 3600, 7200,
                new Origin.Assumed("several hands or gear, and setting it level again; from memory of such jobs, so note your own"));
    }

    /** Labour of mending one place, s. */
    public static Given mendLabour() {
        return new Given("labour of mending a place", Dimension.TIME, 600, 1200, 2400,
                new Origin.Assumed("cleaning out, filling or laying, boarding; from memory of such jobs, so note your own"));
    }

    /** Labour of measuring one place again, s. */
    public static Given remeasureLabour() {
        return assumed("labour of measuring a place again", Dimension.TIME, 300, "gauge and straightedge; from memory of such jobs, so note your own");
    }

    /** Greatest layer of filler, m. */
    public static Given fillerLayer() {
        return assumed("filler layer", Dimension.LENGTH, 0.006, "data sheets of body filler: 6 mm (1/4 in) a layer at most");
    }

    /** Greatest total of filler, m. */
    public static Given fillerTotal() {
        return assumed("filler total", Dimension.LENGTH, 0.012, "filler over about 12 mm cracks; common practice");
    }

    /** Density of body filler, kg/m3. */
    public static Given fillerDensity() {
        return new Given("filler density", Dimension.DENSITY, 1600, 1750, 1900,
                new Origin.Assumed("data sheets of standard body filler, 1.6 to 1.9 kg/l"));
    }

    /** Time until filler may be sanded, s. */
    public static Given fillerHard() {
        return assumed("filler hard after", Dimension.TIME, 20 * 60.0, "body filler is sandable after about 20 minutes");
    }

    /** Share of the box of depth, length and width that a gouge or void holds. */
    public static Given fullness() {
        return new Given("fullness of a hollow", Dimension.RATIO, 0.5, 2.0 / 3, 1,
                new Origin.Assumed("half an ellipsoid 2/3, half a paraboloid 1/2, straight walls 1"));
    }

    /** Plies that may be laid over a low spot beside the schedule. */
    public static Given extraPlies() {
        return assumed("extra plies over a low spot", Dimension.RATIO, 2, "more plies fill minor low spots; common practice");
    }

    /** Mass of glass bubbles to one of resin in a paste. */
    public static Given bubbles() {
        return assumed("glass bubbles to one of resin", Dimension.RATIO, 0.2, "a paste that does not run: 20 parts of bubbles to 100 of resin");
    }

    /** Density of a glass bubble's particle, kg/m3. */
    public static Given bubbleDensity() {
        return assumed("particle density of glass bubbles", Dimension.DENSITY, 250, "glass bubbles 140 to 480 kg/m3 each, not the heap");
    }

    private static Given assumed(String name, Dimension dimension, double value, String reason) {
        return Given.of(name, dimension, value, new Origin.Assumed(reason));
    }
}
