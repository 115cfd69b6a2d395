package mouldwright.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the stages measured on the shape, each its own record, and the faults met. A later stage finds what an earlier
 *  one kept by the record's type; a stage whose ground is missing does nothing. */
public final class Measurements {

    private final Map<Class<?>, Object> kept = new LinkedHashMap<>();
    private final List<PlanFault> faults = new ArrayList<>();
    private final Map<Assumption, Boolean> assumptions = new LinkedHashMap<>();

    /** Keeps a stage's measures.
     *  @throws IllegalStateException if measures of that type are kept already */
    public void keep(Object measures) {
        if (kept.putIfAbsent(measures.getClass(), measures) != null)
            throw new IllegalStateException("measured twice: " + measures.getClass().getSimpleName());
    }

    /** @return what a stage kept, if it came so far */
    public <T> Optional<T> find(Class<T> type) {
        return Optional.ofNullable(kept.get(type)).map(type::cast);
    }

    /** Reports a fault. */
    public void report(PlanFault fault) {
        faults.add(fault);
    }

    /** @return faults in the order they were met */
    public List<PlanFault> faults() {
        return List.copyOf(faults);
    }

    /** Notes a default that is used but enters no formula. */
    public void assume(Assumption assumption) {
        assumptions.put(assumption, true);
    }

    /** @return those defaults */
    public List<Assumption> assumptions() {
        return List.copyOf(assumptions.keySet());
    }
}
