package mouldwright.plan.stage;

import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;

/** Figures as a spec or a library states them, and where. Lengths in metres. */
final class Stated {

    private Stated() { }

    static final Origin.Text LIBRARY = new Origin.Text("stock/polyester.plug", 1, 1, "library stock.polyester");

    static Origin line(int line, String text) {
        return new Origin.Text("test.plug", line, 5, text);
    }

    static Given given(String name, Dimension dimension, double value) {
        return Given.of(name, dimension, value, line(9, name));
    }

    static Given given(String name, Dimension dimension, double low, double likely, double high) {
        return new Given(name, dimension, low, likely, high, line(9, name));
    }

    static Given stock(String material, String name, Dimension dimension, double value) {
        return Given.of(name, dimension, value, new Origin.Library("stock.polyester", material, LIBRARY));
    }
}
