package mouldwright.exchange.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mouldwright.exchange.Fault;
import mouldwright.exchange.Faults;
import mouldwright.units.Unit;
import mouldwright.units.Units;

/** Reads drawings in the drawing exchange format, written as text: lines, arcs, circles, ellipses, plane polylines and splines, by their layers. x of the
 *  drawing is half-breadth, y is height. Words and dimensions are passed over; whatever else could be part of an outline is a fault of its layer. */
public final class Drawings {

    /** More entities than any drawing of sections has. */
    private static final int MOST = 100_000;

    /** What is beside an outline and no part of it. */
    private static final Set<String> PASSED_OVER = Set.of("TEXT", "MTEXT", "DIMENSION", "LEADER", "MULTILEADER", "POINT", "HATCH", "TOLERANCE",
            "ATTDEF", "VIEWPORT", "XLINE", "RAY", "SEQEND", "VERTEX", "IMAGE");

    private final Faults faults = new Faults();
    private final Groups groups;
    private final Map<String, List<Curve>> curves = new LinkedHashMap<>();
    private final Map<String, Faults> layerFaults = new LinkedHashMap<>();
    private Optional<Unit> unit = Optional.empty();
    private int entities;
    private boolean ended;

    private Drawings(String text) {
        groups = new Groups(text, faults);
    }

    /** Reads a drawing.
     *  @param text of the file
     *  @return the drawing, or what is wrong with it; never an exception, whatever the text */
    public static DrawingResult read(String text) {
        if (text.substring(0, Math.min(40, text.length())).contains("Binary DXF"))
            return new DrawingResult(Optional.empty(), List.of(new Fault(1, "line 1", "this is a binary DXF", "save the drawing as DXF in text (ASCII)")));
        return new Drawings(text).read();
    }

    private DrawingResult read() {
        String section = "";
        boolean more = groups.next();
        while (more && faults.none() && !ended) {
            if (groups.is("EOF")) {
                ended = true;
            } else if (groups.is("SECTION")) {
                more = groups.next();
                section = more && groups.code() == 2 ? groups.value() : "";
            } else if (groups.is("ENDSEC")) {
                section = "";
                more = groups.next();
            } else if (section.equals("HEADER") && groups.code() == 9 && groups.value().equals("$INSUNITS")) {
                more = groups.next();
                unit = more && groups.code() == 70 ? unit(groups.value()) : Optional.empty();
            } else if (section.equals("ENTITIES") && groups.code() == 0) {
                more = entity();
            } else {
                more = groups.next();
            }
        }
        if (faults.none() && !ended)
            faults.add(groups.line(), "line " + groups.line(), "the drawing ends before its EOF", "save the drawing again; it was cut off");
        Map<String, Drawing.Layer> layers = new LinkedHashMap<>();
        curves.forEach((name, own) -> layers.put(name, new Drawing.Layer(own, layerFaults.get(name).all())));
        return new DrawingResult(faults.none() ? Optional.of(new Drawing(unit, Collections.unmodifiableMap(layers))) : Optional.empty(), faults.all());
    }

    /** The units of a drawing by their numbers in its head; 0 is no unit. */
    private static Optional<Unit> unit(String number) {
        return switch (number) {
            case "1" -> Units.find("in");
            case "2" -> Units.find("ft");
            case "4" -> Units.find("mm");
            case "5" -> Units.find("cm");
            case "6" -> Units.find("m");
            default -> Optional.empty();
        };
    }

    /** Reads an entity whose first group is here, and goes to the group after it. */
    private boolean entity() {
        if (++entities > MOST) {
            faults.add(groups.line(), "line " + groups.line(), "more than " + MOST + " entities are no drawing of sections", "save the sections alone");
            return false;
        }
        Entity entity = new Entity(groups.value(), groups.line());
        boolean more = fill(entity);
        String layer = entity.text(8, "0");
        try {
            if (entity.kind().equals("POLYLINE")) {
                List<Entity> vertices = new ArrayList<>();
                while (more && groups.is("VERTEX") && ++entities <= MOST) {
                    vertices.add(new Entity("VERTEX", groups.line()));
                    more = fill(vertices.getLast());
                }
                keep(layer, OldPolyline.curves(entity, vertices));
            } else if (!PASSED_OVER.contains(entity.kind())) {
                keep(layer, Entities.curves(entity));
            }
        } catch (Entity.BadFigure e) {
            keep(layer, List.of());
            layerFaults.get(layer).add(e.line(), "line " + e.line() + ", " + entity.kind(), e.getMessage(), remedy(entity.kind()));
        }
        return more;
    }

    private boolean fill(Entity entity) {
        boolean more = groups.next();
        while (more && groups.code() != 0) {
            entity.add(groups.code(), groups.value(), groups.line());
            more = groups.next();
        }
        return more;
    }

    private void keep(String layer, List<Curve> drawn) {
        curves.computeIfAbsent(layer, name -> new ArrayList<>()).addAll(drawn);
        layerFaults.computeIfAbsent(layer, name -> new Faults());
    }

    private static String remedy(String kind) {
        return switch (kind) {
            case "INSERT" -> "explode the block into its lines";
            default -> "draw the section of lines, arcs, ellipses, plane polylines and splines in the plane of the drawing";
        };
    }
}
