package mouldwright.plan.stage;

import java.util.function.BooleanSupplier;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Spec;

/** One stage of a build. A stage holds no state: what it measures it keeps in the measurements, what it reckons it
 *  writes in the ledger. A new stage is one class and one line in {@link Stages}. */
public interface Stage {

    /** @return its name, as in the plan's {@code stage} */
    String name();

    /** @return whether the spec has what this stage needs; else it is not in the plan */
    boolean wantedBy(Spec spec);

    /** Measures the geometry, once, and keeps the measures. Faults are reported, never thrown.
     *  @param cancelled asked often; when true the work ends with a CancellationException */
    void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled);

    /** Writes its figures. Does nothing where its measures are missing. */
    void quantify(Spec spec, Measurements measurements, Ledger ledger);

    /** Writes what is to be done in this stage, after the figures of all stages are written. Steps of the ledger may be
     *  written on the way. */
    default void tasks(Spec spec, Measurements measurements, Ledger ledger, TaskBook tasks) { }

    /** Writes what this stage uses up, after the figures of all stages are written. */
    default void orders(Spec spec, Measurements measurements, Ledger ledger, OrderBook orders) { }

    /** Writes figures that rest on the tasks and orders of all stages. */
    default void conclude(Spec spec, Measurements measurements, TaskBook tasks, OrderBook orders, Ledger ledger) { }

    /** Adds to the plan's lists once everything is reckoned. */
    default void list(Spec spec, Measurements measurements, Reckoning reckoning, Lists lists) { }
}
