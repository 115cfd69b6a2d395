package mouldwright.plan.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import mouldwright.exchange.Fault;
import mouldwright.exchange.NearestName;
import mouldwright.exchange.SectionPoint;
import mouldwright.exchange.StationOffsets;
import mouldwright.exchange.drawing.Drawing;
import mouldwright.exchange.drawing.DrawingResult;
import mouldwright.exchange.drawing.OutlineResult;
import mouldwright.exchange.table.OffsetTable;
import mouldwright.exchange.table.TableResult;
import mouldwright.model.Drawn;
import mouldwright.model.Extent;
import mouldwright.model.Line;
import mouldwright.model.Plug;
import mouldwright.model.PlugPackage.Literals;
import mouldwright.model.Station;
import mouldwright.model.Tabled;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;
import mouldwright.units.Unit;
import mouldwright.units.Units;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Reads sections that stand in a table or a drawing. What is wrong with a file is told once, at the first station that names it. */
final class SectionReader {

    private final FigureReader figures;
    private final SectionFiles files;
    private final SectionMemo memo;
    private final Set<String> told = new HashSet<>();

    SectionReader(FigureReader figures, SectionFiles files, SectionMemo memo) {
        this.figures = figures;
        this.files = files;
        this.memo = memo;
    }

    /** The points of a column; empty, and reported, where there is none. */
    Optional<List<Form.Point>> points(Station station, Tabled m) {
        Optional<Unit> unit = units(m.getUnits(), m, Literals.TABLED__UNITS);
        if (m.getFile() == null || m.getColumn() == null || m.getUnits() != null && unit.isEmpty())
            return Optional.empty();
        Optional<String> text = text(m, m.getFile(), Literals.TABLED__FILE);
        if (text.isEmpty())
            return Optional.empty();
        TableResult result = memo.table(text.get(), unit.orElseGet(() -> figures.lengthUnit(m)));
        if (result.table().isEmpty())
            return faulty(m, m.getFile(), Literals.TABLED__FILE, ReadProblem.Kind.TABLE, result.faults());
        OffsetTable table = result.table().get();
        Optional<StationOffsets> column = table.station(m.getColumn());
        if (column.isEmpty()) {
            figures.report(ReadProblem.Kind.TABLE, m, Literals.TABLED__COLUMN,
                    "no station `" + m.getColumn() + "` in " + m.getFile() + NearestName.offer(m.getColumn(), table.names()));
            return Optional.empty();
        }
        return linesDeclared(station, m, column.get().points()) ? Optional.of(points(column.get().points(), m)) : Optional.empty();
    }

    /** The points of a layer's outline; empty, and reported, where there is none. */
    Optional<List<Form.Point>> points(Station station, Drawn m) {
        Optional<Unit> stated = units(m.getUnits(), m, Literals.DRAWN__UNITS);
        if (m.getFile() == null || m.getLayer() == null || m.getUnits() != null && stated.isEmpty())
            return Optional.empty();
        Optional<String> text = text(m, m.getFile(), Literals.DRAWN__FILE);
        if (text.isEmpty())
            return Optional.empty();
        DrawingResult result = memo.drawing(text.get());
        if (result.drawing().isEmpty())
            return faulty(m, m.getFile(), Literals.DRAWN__FILE, ReadProblem.Kind.DRAWING, result.faults());
        Drawing drawing = result.drawing().get();
        Optional<Unit> unit = stated.or(drawing::unit);
        if (unit.isEmpty())
            return told.add("units " + m.getFile()) ? nothing(m, Literals.DRAWN__FILE, m.getFile() + " does not say what its lengths are in; state it: `drawing \""
                    + m.getFile() + "\" units mm layer \"" + m.getLayer() + "\"`") : Optional.empty();
        if (!drawing.layers().containsKey(m.getLayer()))
            return nothing(m, Literals.DRAWN__LAYER, "nothing lies on a layer `" + m.getLayer() + "` in " + m.getFile() + NearestName.offer(m.getLayer(), drawing.names()));
        OutlineResult outline = memo.outline(text.get(), m.getLayer(), unit.get(), isFull(station));
        return outline.faults().isEmpty() ? Optional.of(points(outline.points(), m))
                : faulty(m, m.getFile() + " " + m.getLayer(), Literals.DRAWN__LAYER, ReadProblem.Kind.DRAWING, outline.faults());
    }

    private Optional<List<Form.Point>> nothing(Drawn m, EStructuralFeature feature, String message) {
        figures.report(ReadProblem.Kind.DRAWING, m, feature, message);
        return Optional.empty();
    }

    private Optional<String> text(EObject m, String name, EStructuralFeature feature) {
        return switch (files.read(m, name)) {
            case SectionFiles.Text(String text) -> Optional.of(text);
            case SectionFiles.Unread(String message) -> {
                figures.report(feature == Literals.TABLED__FILE ? ReadProblem.Kind.TABLE : ReadProblem.Kind.DRAWING, m, feature, message);
                yield Optional.empty();
            }
        };
    }

    private Optional<List<Form.Point>> faulty(EObject m, String what, EStructuralFeature feature, ReadProblem.Kind kind, List<Fault> faults) {
        if (told.add(what.toLowerCase(Locale.ROOT)))
            faults.forEach(fault -> figures.report(kind, m, feature, what + ", " + fault.words(), fault.remedy()));
        return Optional.empty();
    }

    private Optional<Unit> units(String written, EObject m, EStructuralFeature feature) {
        Optional<Unit> unit = Optional.ofNullable(written).flatMap(Units::find).filter(known -> known.dimension().equals(Dimension.LENGTH));
        if (written != null && unit.isEmpty())
            figures.report(ReadProblem.Kind.UNIT_UNKNOWN, m, feature, written + " is no unit of length");
        return unit;
    }

    private boolean linesDeclared(Station station, Tabled m, List<SectionPoint> points) {
        Set<String> declared = new HashSet<>();
        plug(station).ifPresent(plug -> plug.getLines().stream().map(Line::getName).forEach(declared::add));
        List<String> missing = points.stream().flatMap(point -> point.line().stream()).filter(line -> !declared.contains(line)).distinct().toList();
        for (String line : missing)
            if (told.add("line " + line))
                figures.report(ReadProblem.Kind.TABLE, m, Literals.TABLED__COLUMN, m.getFile() + " marks a line `" + line + "`, which this plug does not declare",
                        "declare it: `line " + line + "`");
        return missing.isEmpty();
    }

    private static boolean isFull(Station station) {
        return plug(station).map(plug -> plug.getSections() == Extent.FULL).orElse(false);
    }

    private static Optional<Plug> plug(EObject part) {
        EObject top = part;
        while (top != null && !(top instanceof Plug))
            top = top.eContainer();
        return Optional.ofNullable((Plug) top);
    }

    private List<Form.Point> points(List<SectionPoint> read, EObject m) {
        Origin origin = figures.origin(m);
        List<Form.Point> points = new ArrayList<>();
        for (SectionPoint point : read)
            points.add(new Form.Point(point.y(), point.z(), point.knuckle(), point.line(), OptionalDouble.empty(), false, origin));
        return points;
    }
}
