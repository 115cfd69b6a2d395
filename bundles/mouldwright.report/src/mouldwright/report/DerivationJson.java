package mouldwright.report;

import java.io.IOException;
import mouldwright.plan.ledger.Derivation;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;

/** Derivations as JSON. A figure that is listed by itself is written out there; elsewhere it stands as a reference by its id. */
final class DerivationJson {

    private DerivationJson() { }

    /** Writes how a listed figure came about. */
    static void write(JsonFile json, Derivation derivation) throws IOException {
        switch (derivation) {
            case Derivation.Reckoned reckoned -> reckoned(json, reckoned);
            case Derivation.Measured measured -> measured(json, measured);
            case Derivation.Stated(Given given) -> stated(json, given);
        }
    }

    private static void input(JsonFile json, Derivation input) throws IOException {
        String id = switch (input) {
            case Derivation.Reckoned reckoned -> reckoned.id();
            case Derivation.Measured measured -> measured.id();
            case Derivation.Stated stated -> "";
        };
        if (id.isEmpty()) {
            write(json, input);
        } else {
            json.object(o -> figure(o.member("kind", "quantity").member("id", id), input.label(), input.value(), input.dimension()));
        }
    }

    private static void reckoned(JsonFile json, Derivation.Reckoned reckoned) throws IOException {
        json.object(o -> {
            figure(o.member("kind", "reckoned"), reckoned.label(), reckoned.value(), reckoned.dimension());
            range(o, reckoned.low(), reckoned.high(), reckoned.dimension());
            o.member("formula", reckoned.formula()).member("bounds", reckoned.bounds()).member("source", reckoned.source());
            o.array("inputs", reckoned.inputs(), DerivationJson::input);
        });
    }

    private static void measured(JsonFile json, Derivation.Measured measured) throws IOException {
        json.object(o -> figure(o.member("kind", "measured"), measured.label(), measured.value(), measured.dimension())
                .member("error", Published.value(measured.measurement().error(), measured.dimension()))
                .member("method", measured.measurement().how())
                .array("grounds", measured.measurement().grounds(), (words, ground) -> words.text(Printable.of(ground.words()))));
    }

    private static void stated(JsonFile json, Given given) throws IOException {
        json.object(o -> {
            figure(o.member("kind", "stated"), given.name(), given.likely(), given.dimension());
            range(o, given.low(), given.high(), given.dimension());
            o.member("origin", origin -> origin(origin, given.origin()));
        });
    }

    private static JsonFile figure(JsonFile json, String label, double si, Dimension dimension) throws IOException {
        return json.member("label", label).member("value", Published.value(si, dimension)).member("unit", Published.unit(dimension));
    }

    private static void range(JsonFile json, double low, double high, Dimension dimension) throws IOException {
        json.member("low", Published.value(low, dimension)).member("high", Published.value(high, dimension));
    }

    private static void origin(JsonFile json, Origin origin) throws IOException {
        json.object(o -> {
            switch (origin) {
                case Origin.Text text -> place(o.member("kind", "spec"), text);
                case Origin.Library(String library, String material, Origin.Text text) ->
                        place(o.member("kind", "library").member("library", library).member("material", material), text);
                case Origin.Assumed(String reason) -> o.member("kind", "assumed").member("reason", reason);
            }
        });
    }

    private static void place(JsonFile json, Origin.Text text) throws IOException {
        json.member("file", text.file()).member("line", text.line()).member("column", text.column()).member("text", text.source().strip());
    }
}
