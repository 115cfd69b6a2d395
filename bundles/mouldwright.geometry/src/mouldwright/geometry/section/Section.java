package mouldwright.geometry.section;

import java.util.List;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;

/** The outline of a body at a station: stretches of smooth curve between marks, and the straight closures to the centreline
 *  of a half section that does not reach it. */
public final class Section {
    /** Builds a section.
     *  @param form  how its outline is given, metres
     *  @param kind  half or full
     *  @param rules what is checked beyond what must hold
     *  @return the section with what was found; never an exception, whatever the figures */
    public static SectionResult of(SectionForm form, SectionKind kind, SectionRules rules) { throw new UnsupportedOperationException("being written"); }
    /** Half or full. */
    public SectionKind kind() { throw new UnsupportedOperationException("being written"); }
    /** Body, knife edge or point. */
    public SectionShape shape() { throw new UnsupportedOperationException("being written"); }
    /** The stretches in order, cut at every knuckle and every named line. */
    public List<Stretch> stretches() { throw new UnsupportedOperationException("being written"); }
    /** Length of the straight closure at bottom centre, one side, metres; 0 for a full section. */
    public double bottomClosure() { throw new UnsupportedOperationException("being written"); }
    /** Length of the straight closure at top centre, one side, metres; 0 for a full section. */
    public double topClosure() { throw new UnsupportedOperationException("being written"); }
    /** Length of the whole outline, both sides, closures counted, metres. */
    public double girth() { throw new UnsupportedOperationException("being written"); }
    /** Area inside the whole outline, both sides, square metres. */
    public double area() { throw new UnsupportedOperationException("being written"); }
    /** Centroid of that area; of a point or knife edge the middle of its extent. */
    public PlanePoint centroid() { throw new UnsupportedOperationException("being written"); }
    /** The whole outline as straight pieces, counter-clockwise seen from aft.
     *  @param tolerance how far the curve may leave its chords, metres, positive */
    public Outline outline(double tolerance) { throw new UnsupportedOperationException("being written"); }
}
