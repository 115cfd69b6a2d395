package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.PieceEntry;
import mouldwright.plan.PlateEntry;
import mouldwright.plan.PotEntry;
import mouldwright.plan.PourEntry;

/** The plan's lists while stages add to them. */
public final class Lists {
    private final List<PlateEntry> plates = new ArrayList<>();
    private final List<PourEntry> pours = new ArrayList<>();
    private final List<PotEntry> pots = new ArrayList<>();
    private final List<PieceEntry> pieces = new ArrayList<>();

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

    /** Adds a piece of mat. */
    public void piece(PieceEntry piece) {
        pieces.add(piece);
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

    List<PieceEntry> pieces() {
        return pieces;
    }
}
