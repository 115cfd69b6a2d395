package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.PlateEntry;
import mouldwright.plan.PotEntry;
import mouldwright.plan.PourEntry;

/** The plan's lists while stages add to them. */
public final class Lists {
    private final List<PlateEntry> plates = new ArrayList<>();
    private final List<PourEntry> pours = new ArrayList<>();
    private final List<PotEntry> pots = new ArrayList<>();

    /** Adds a plate. */
    public void plate(PlateEntry plate) {
        plates.add(plate);
    }

    /** Adds a pour. */
    public void pour(PourEntry pour) {
        pours.add(pour);
    }

    /** Adds a ply's pots. */
    public void pots(PotEntry entry) {
        pots.add(entry);
    }

    List<PlateEntry> plates() {
        return plates;
    }

    List<PourEntry> pours() {
        return pours;
    }

    List<PotEntry> pots() {
        return pots;
    }
}
