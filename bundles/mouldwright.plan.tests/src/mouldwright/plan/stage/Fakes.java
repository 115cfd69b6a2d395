package mouldwright.plan.stage;

import static mouldwright.units.Dimension.TIME;

import java.util.function.BooleanSupplier;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Spec;

/** A stage that says what a test wants done and used up. */
final class Fakes implements Stage {

    /** What is written in tasks. */
    interface Doing {
        void write(Ledger ledger, TaskBook tasks);
    }

    /** What is written in orders. */
    interface Using {
        void write(Ledger ledger, OrderBook orders);
    }

    private final String name;
    private final Doing doing;
    private final Using using;

    private Fakes(String name, Doing doing, Using using) {
        this.name = name;
        this.doing = doing;
        this.using = using;
    }

    static Fakes doing(String name, Doing doing) {
        return new Fakes(name, doing, (ledger, orders) -> { });
    }

    static Fakes using(String name, Using using) {
        return new Fakes(name, (ledger, tasks) -> { }, using);
    }

    static Node hours(Ledger ledger, double hours) {
        return ledger.measured("time", TIME, Places.exact(hours * 3600, "given by the test"));
    }

    @Override public String name() {
        return name;
    }

    @Override public boolean wantedBy(Spec spec) {
        return true;
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) { }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) { }

    @Override public void tasks(Spec spec, Measurements measurements, Ledger ledger, TaskBook tasks) {
        doing.write(ledger, tasks);
    }

    @Override public void orders(Spec spec, Measurements measurements, Ledger ledger, OrderBook orders) {
        using.write(ledger, orders);
    }
}
