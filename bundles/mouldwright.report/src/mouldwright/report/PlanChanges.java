package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/** What an edit did to the figures people ask about first: {@code +1.2 kg foam, +1 day}. */
public final class PlanChanges {

    private record Key(String id, String word) { }

    private static final List<Key> KEYS = List.of(new Key("shape.area.moulded", "moulded surface"), new Key("frame.mass", "frame"), new Key("fill.mass", "foam"),
            new Key("skin.resin.mass", "resin of the skin"), new Key("mould.mass", "mould"), new Key("mass.plug", "plug"), new Key("plan.labour", "labour"),
            new Key("plan.elapsed", "elapsed"), new Key("plan.cost", "cost"));
    private static final Display WORDS = Display.of(UnitSystem.METRIC);
    private static final double DAY = 86400;
    /** A change that no figure on paper shows. */
    private static final double NOTHING = 1e-4;

    private PlanChanges() { }

    /** What changed, in words; empty where nothing did. */
    public static String words(BuildPlan before, BuildPlan after) {
        List<String> changes = new ArrayList<>();
        for (Key key : KEYS) {
            Optional<Quantity> old = before.quantity(key.id());
            Optional<Quantity> now = after.quantity(key.id());
            if (old.isPresent() && now.isPresent()) {
                difference(old.get(), now.get()).ifPresent(by -> changes.add(by + " " + key.word()));
            } else if (old.isPresent()) {
                changes.add("no " + key.word() + " any more");
            } else if (now.isPresent()) {
                changes.add(figure(now.get(), now.get().value()) + " " + key.word() + ", new");
            }
        }
        return String.join(", ", changes);
    }

    private static Optional<String> difference(Quantity old, Quantity now) {
        double by = now.value() - old.value();
        if (Math.abs(by) <= NOTHING * Math.max(Math.abs(now.value()), Math.abs(old.value()))) {
            return Optional.empty();
        }
        return Optional.of((by > 0 ? "+" : "-") + figure(now, Math.abs(by)));
    }

    private static String figure(Quantity quantity, double si) {
        if (!quantity.currency().isEmpty()) {
            return Display.number(si) + " " + quantity.currency();
        }
        boolean days = quantity.id().equals("plan.elapsed") && si >= DAY;
        return days ? Display.number(si / DAY) + (si == DAY ? " day" : " days") : WORDS.format(si, quantity.dimension());
    }
}
