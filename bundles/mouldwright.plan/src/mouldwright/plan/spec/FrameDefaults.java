package mouldwright.plan.spec;

import mouldwright.units.Dimension;

/** Defaults of the frame and what it is cut from, each with the reason for its figure. A default that is used is listed in the plan as assumed. */
public final class FrameDefaults {

    private FrameDefaults() { }

    /** Edges of plates are cut square. */
    public static Tacit edges() {
        return new Tacit.Choice("edges", "square", new Origin.Assumed("a square edge takes no bevel table and never stands proud"));
    }

    /** Play of a slot, m. */
    public static Given clearance() {
        return Given.byDefault("slot clearance", Dimension.LENGTH, 0.0002, "a slot that is pushed together by hand");
    }

    /** Measured thickness where none was measured.
     *  @param sheet whose nominal thickness is taken */
    public static Given thickness(Sheet sheet) {
        return Given.byDefault("sheet thickness", Dimension.LENGTH, sheet.thickness().likely(), "not measured: the nominal thickness of "
                + sheet.name() + "; plywood is often 0.3 mm under it, so measure it");
    }

    /** Wood left round a pocket, m. */
    public static Given rim() {
        return Given.byDefault("rim", Dimension.LENGTH, 0.060, "wide enough to keep its shape and to clamp to; common practice");
    }

    /** Diameter of the holes that line up plates, m. */
    public static Given holes() {
        return Given.byDefault("holes", Dimension.LENGTH, 0.008, "an 8 mm rod or a wire passes, and a dowel of that size plugs them; common practice");
    }

    /** Length of a scarf in thicknesses. */
    public static Given scarf() {
        return Given.byDefault("scarf", Dimension.RATIO, 8, "8 to 1 is the usual slope of a glued plywood scarf; common practice");
    }

    /** Length of a strap across its butt, m.
     *  @param thickness of the sheet */
    public static Given strap(Given thickness) {
        return Given.byDefault("strap", Dimension.LENGTH, 16 * thickness.likely(), "8 thicknesses on both sides of the butt, as much glue line as a scarf of 8 to 1 has; common practice");
    }

    /** How far a base reaches past the plates, m. */
    public static Given baseMargin() {
        return Given.byDefault("base margin", Dimension.LENGTH, 0.100, "room for cleats, datum points and a clamp; common practice");
    }

    /** Breadth over the rails of a strongback, m.
     *  @param broadest breadth of the plates */
    public static Given railsApart(double broadest) {
        return Given.byDefault("strongback apart", Dimension.LENGTH, 2 * broadest / 3, "two thirds of the greatest breadth: stiff against twisting and clear of the edges; common practice");
    }

    /** Depth of a gauge's body, m. */
    public static Given gauge() {
        return Given.byDefault("gauge depth", Dimension.LENGTH, 0.100, "stiff enough not to spring when it is pushed on; common practice");
    }

    /** Tolerance of setting up, m. */
    public static Given tolerance() {
        return Given.byDefault("tolerance", Dimension.LENGTH, 0.0015, "what a straightedge and a plumb line reach; common practice");
    }

    /** Width of a sheet, m. */
    public static Given sheetWidth() {
        return Given.byDefault("sheet width", Dimension.LENGTH, 1.220, "plywood is commonly sold 1220 mm by 2440 mm");
    }

    /** Length of a sheet, m. */
    public static Given sheetLength() {
        return Given.byDefault("sheet length", Dimension.LENGTH, 2.440, "plywood is commonly sold 1220 mm by 2440 mm");
    }

    /** Width of a cut in sheet material, m. */
    public static Given kerf() {
        return Given.byDefault("kerf", Dimension.LENGTH, 0.003, "a jigsaw or circular saw takes 2 to 3 mm away; common practice");
    }

    /** Strip along the edges of a sheet that no part is cut from, m. */
    public static Given margin() {
        return Given.byDefault("margin", Dimension.LENGTH, 0.010, "edges of sheets are bruised and not always square; common practice");
    }

    /** Density of plywood, kg/m3. */
    public static Given sheetDensity() {
        return Given.byDefault("sheet density", Dimension.DENSITY, 680, "birch plywood data sheet, 660 to 710 kg/m3");
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

    /** Share of a sheet that ends up in plates. */
    public static Given sheetUse() {
        return new Given("share of a sheet used", Dimension.RATIO, 0.50, 0.65, 1.00,
                new Origin.Assumed("round plates on a sheet use about two thirds of it; the whole sheet is the bound no nesting can pass"));
    }
}
