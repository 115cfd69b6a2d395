package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mouldwright.plan.spec.Fill;

/** In which order the bays are poured.
 *
 *  <p>A trial cup comes first. Bays of one attitude are poured together, so that the plug is turned as seldom as may be; it
 *  begins upright and ends upright. Within an attitude every second bay is poured first and those between them when they are firm: of two neighbouring
 *  cavities one is always shut, and a plate is never pushed from one side by foam on both. Bays that are open at the same time take their lifts in turn.
 *  @param steps in order */
public record PourOrder(List<Step> steps) {

    /** One thing to do. */
    public sealed interface Step { }

    /** The trial cup: cream and rise of today's foam in today's shop. */
    public record Trial() implements Step { }

    /** The plug is turned. With the caution for lifting.
     *  @param to how it lies then */
    public record Turn(Fill.Attitude to) implements Step { }

    /** A pour.
     *  @param bay      its place among the filled bays
     *  @param name     of the bay
     *  @param lift     counted from 1
     *  @param lifts    how many the bay takes
     *  @param attitude how the plug lies */
    public record Pour(int bay, String name, int lift, int lifts, Fill.Attitude attitude) implements Step { }

    /** A wait until foam has cooled for the next lift, or until it is firm before a neighbour is opened or the plug is turned.
     *  @param bays names of the bays waited for
     *  @param firm until they are firm only */
    public record Wait(List<String> bays, boolean firm) implements Step {
        /** Copies its list. */
        public Wait {
            bays = List.copyOf(bays);
        }
    }

    /** Copies its list. */
    public PourOrder {
        steps = List.copyOf(steps);
    }

    /** The order for some bays.
     *  @param bays in order along the body */
    static PourOrder of(List<FillMeasures.BayFill> bays) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Trial());
        Map<Fill.Attitude, List<List<Integer>>> groups = rounds(bays);
        Fill.Attitude lies = Fill.Attitude.UPRIGHT;
        for (Fill.Attitude attitude : Fill.Attitude.values())
            for (List<Integer> round : groups.getOrDefault(attitude, List.of())) {
                if (attitude != lies)
                    steps.add(new Turn(attitude));
                lies = attitude;
                pour(round, bays, steps);
            }
        if (lies != Fill.Attitude.UPRIGHT)
            steps.add(new Turn(Fill.Attitude.UPRIGHT));
        return new PourOrder(steps);
    }

    /** Bays that may be open together: of one attitude, and no two of them neighbours. */
    private static Map<Fill.Attitude, List<List<Integer>>> rounds(List<FillMeasures.BayFill> bays) {
        Map<Fill.Attitude, List<List<Integer>>> groups = new LinkedHashMap<>();
        for (int i = 0; i < bays.size(); i++) {
            List<List<Integer>> rounds = groups.computeIfAbsent(bays.get(i).attitude(), a -> new ArrayList<>());
            int bay = i;
            List<Integer> round = rounds.stream().filter(r -> !neighbours(bays.get(r.getLast()), bays.get(bay))).findFirst()
                    .orElseGet(() -> {
                        rounds.add(new ArrayList<>());
                        return rounds.getLast();
                    });
            round.add(i);
        }
        return groups;
    }

    private static boolean neighbours(FillMeasures.BayFill fore, FillMeasures.BayFill aft) {
        return fore.bay().aft().name().equals(aft.bay().fore().name());
    }

    private static void pour(List<Integer> round, List<FillMeasures.BayFill> bays, List<Step> steps) {
        int most = round.stream().mapToInt(i -> bays.get(i).lifts().size()).max().orElse(0);
        for (int lift = 1; lift <= most; lift++) {
            int now = lift;
            for (int i : round)
                if (bays.get(i).lifts().size() >= now)
                    steps.add(new Pour(i, bays.get(i).bay().name(), now, bays.get(i).lifts().size(), bays.get(i).attitude()));
            List<Integer> toCome = round.stream().filter(i -> bays.get(i).lifts().size() > now).toList();
            steps.add(new Wait(names(toCome.isEmpty() ? round : toCome, bays), toCome.isEmpty()));
        }
    }

    private static List<String> names(List<Integer> places, List<FillMeasures.BayFill> bays) {
        return places.stream().map(i -> bays.get(i).bay().name()).toList();
    }

    /** How often the plug is turned. */
    public int turns() {
        return (int) steps.stream().filter(Turn.class::isInstance).count();
    }
}
