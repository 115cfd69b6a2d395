package mouldwright.plan.sheets;

import java.util.List;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.nest.Nest;
import mouldwright.geometry.nest.Placement;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Sheet;

/** All parts of one material, laid.
 *  @param sheet     they are cut from
 *  @param thickness of it as measured, m
 *  @param kerf      of the cut, m
 *  @param margin    kept from the edges, m
 *  @param parts     each once, however many of it there are
 *  @param nest      where they lie; its lengths run along the sheet's longer side */
public record SheetLayout(Sheet sheet, double thickness, Given kerf, Given margin, List<PlatePart> parts, Nest nest) {
    /** Copies its list. */
    public SheetLayout {
        parts = List.copyOf(parts);
    }

    /** What lies at a place. */
    public PlatePart part(Placement placement) {
        return part(placement.part().key());
    }

    /** A part by its key.
     *  @throws java.util.NoSuchElementException if it is none of these */
    public PlatePart part(String key) {
        return parts.stream().filter(part -> part.key().equals(key)).findFirst().orElseThrow();
    }

    /** What is left whole of the last sheet past its last part and the cut, m. */
    public double lengthLeft() {
        return nest.taken().isEmpty() ? 0 : Math.max(0, nest.taken().getLast().length() - nest.usedLength() - kerf.likely());
    }

    /** Whether sizes were chosen by what they cost; else by their area. */
    public boolean priced() {
        return priced(sheet);
    }

    static boolean priced(Sheet sheet) {
        return sheet.sizes().stream().allMatch(size -> size.price().isPresent());
    }
}
