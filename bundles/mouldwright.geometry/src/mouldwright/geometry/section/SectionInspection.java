package mouldwright.geometry.section;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.valid.IsSimpleOp;

/** Looks at a whole outline: whether it runs the right way round and crosses nothing. */
final class SectionInspection {
    /** Chords per cell of a stretch's arc-length table; a cell spans no more than two given points. */
    private static final int CHORDS = 4;

    private final Section section;

    SectionInspection(Section section) {
        this.section = section;
    }

    void examine(List<SectionFault> faults) {
        List<Coordinate> chords = chords();
        double size = chords.stream().mapToDouble(c -> Math.max(Math.abs(c.x), Math.abs(c.y))).max().orElse(0);
        if (section.kind() == SectionKind.HALF) {
            Coordinate portmost = chords.getFirst();
            for (Coordinate c : chords)
                if (c.x < portmost.x)
                    portmost = c;
            if (portmost.x < -Section.ROUNDING * size) {
                faults.add(new SectionFault.CrossesItself(0, portmost.y));
                return;
            }
            closeToCentreline(chords);
        } else {
            chords.set(chords.size() - 1, chords.getFirst());
        }
        LineString line = new GeometryFactory().createLineString(chords.toArray(Coordinate[]::new));
        IsSimpleOp simple = new IsSimpleOp(line);
        if (!simple.isSimple()) {
            Coordinate where = simple.getNonSimpleLocation();
            faults.add(new SectionFault.CrossesItself(where.x, where.y));
        } else if (section.area() < 0) {
            faults.add(new SectionFault.WrongWayRound());
        }
    }

    private void closeToCentreline(List<Coordinate> chords) {
        if (section.bottomClosure() > 0)
            chords.addFirst(new Coordinate(0, chords.getFirst().y));
        if (section.topClosure() > 0)
            chords.add(new Coordinate(0, chords.getLast().y));
    }

    private List<Coordinate> chords() {
        List<Coordinate> chords = new ArrayList<>();
        double[] out = new double[6];
        for (Stretch stretch : section.stretches()) {
            double[] starts = stretch.path().cellStarts();
            for (int i = 0; i + 1 < starts.length; i++)
                for (int k = 0; k < CHORDS; k++) {
                    stretch.path().at(starts[i] + (starts[i + 1] - starts[i]) * k / CHORDS, out);
                    add(chords, out[0], out[1]);
                }
            stretch.path().at(stretch.length(), out);
            add(chords, out[0], out[1]);
        }
        return chords;
    }

    private static void add(List<Coordinate> chords, double y, double z) {
        Coordinate c = new Coordinate(y, z);
        if (chords.isEmpty() || !chords.getLast().equals2D(c))
            chords.add(c);
    }
}
