package mouldwright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Palette;
import mouldwright.drawing.SvgWriter;
import mouldwright.drawing.subject.Subjects;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.stage.ShapeMeasures;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/**
 * An estimate as one HTML page with everything in it: style, drawings, and behind each figure how it came about. It needs no script and no
 * network, can be printed, and can be read aloud.
 */
public final class HtmlReport {

    /** What people ask first, in this order. */
    private static final List<String> KEY = List.of("mass.plug", "frame.sheets", "fill.mass.a", "fill.mass.b", "skin.resin.mass", "mould.mass", "plan.labour",
            "plan.elapsed", "plan.cost");

    private final UnitSystem system;
    private final PathNames names;

    /** @param system family of units the figures are shown in
     *  @param names  how files are named in findings */
    public HtmlReport(UnitSystem system, PathNames names) {
        this.system = system;
        this.names = names;
    }

    /** The whole page. */
    public String print(Estimate estimate) {
        EstimatePaper paper = new EstimatePaper(estimate, system, names);
        List<Section> sections = new ArrayList<>(paper.stages());
        sections.add(paper.findings());
        if (!estimate.assumed().isEmpty()) {
            sections.add(paper.assumed());
        }
        HtmlBlocks blocks = new HtmlBlocks(estimate, new Told(Display.of(system)), sections);
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("plug", estimate.plan().plug());
        page.put("title", estimate.plan().spec().title().map(Printable::of).orElse(""));
        page.put("revision", estimate.revision());
        page.put("remark", paper.draws().orElse(""));
        page.put("deference", Caution.DEFERENCE);
        page.put("key", key(estimate).stream().map(quantity -> key(quantity, paper.figure(quantity))).toList());
        page.put("pictures", pictures(estimate));
        page.put("sections", sections.stream().map(blocks::section).toList());
        return Page.ESTIMATE.fill(page);
    }

    /** The plug as a whole, its stoutest section, what its plates are set up by and its programme, as far as the plan comes. */
    private static List<Map<String, Object>> pictures(Estimate estimate) {
        BuildPlan plan = estimate.plan();
        String code = plan.plug() + " " + estimate.revision();
        List<Drawing> drawings = new ArrayList<>();
        Subjects.LINES.draw(plan, code).forEach(one -> drawings.add(one.drawing()));
        stoutest(plan).flatMap(station -> Subjects.section(plan, station, code)).ifPresent(drawings::add);
        estimate.alignment().ifPresent(sheet -> Subjects.ALIGNMENT.draw(plan, code).stream().limit(1).forEach(one -> drawings.add(one.drawing())));
        Subjects.PROGRAMME.draw(plan, code).forEach(one -> drawings.add(one.drawing()));
        List<Map<String, Object>> pictures = new ArrayList<>();
        for (Drawing drawing : drawings) {
            pictures.add(Map.of("svg", SvgWriter.element(drawing, Palette.PAPER, "picture" + pictures.size() + "-"), "caption", drawing.title()));
        }
        return pictures;
    }

    private static Optional<String> stoutest(BuildPlan plan) {
        return plan.measurements().find(ShapeMeasures.class)
                .flatMap(shape -> shape.stations().stream().max(Comparator.comparingDouble(ShapeMeasures.AtStation::area)).map(at -> at.station().name()));
    }

    /** What people ask first. */
    static List<Quantity> key(Estimate estimate) {
        return KEY.stream().map(id -> estimate.quantities().stream().filter(quantity -> quantity.id().equals(id)).findFirst()).flatMap(Optional::stream).toList();
    }

    private static Map<String, Object> key(Quantity quantity, Figure figure) {
        boolean ranged = quantity.low() < quantity.high();
        return Map.of("label", quantity.label(), "likely", figure.of(quantity.value()), "unit", figure.unit(),
                "low", ranged ? figure.of(quantity.low()) : "", "high", ranged ? figure.of(quantity.high()) : "");
    }
}
