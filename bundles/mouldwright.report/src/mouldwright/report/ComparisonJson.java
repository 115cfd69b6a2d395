package mouldwright.report;

import java.io.IOException;
import java.util.Optional;
import mouldwright.plan.Quantity;

/** What changed as one JSON object: figures in the units of {@link JsonReport}, whatever their size. */
public final class ComparisonJson {

    private final FindingsJson findings;

    /** @param names how files are named in findings */
    public ComparisonJson(PathNames names) {
        this.findings = new FindingsJson(names);
    }

    /** The whole file. */
    public String print(Comparison comparison) {
        return JsonFile.print(json -> json.object(o -> o.member("plug", comparison.after().plan().plug())
                .member("before", before -> before.object(b -> b.member("revision", comparison.before().revision())))
                .member("after", after -> after.object(a -> a.member("revision", comparison.after().revision())))
                .array("stations", comparison.stations(), ComparisonJson::station)
                .array("figures", comparison.figures(), ComparisonJson::figure)
                .array("findingsAdded", comparison.added(), findings::write)
                .array("findingsGone", comparison.gone(), findings::write)));
    }

    private static void station(JsonFile json, Comparison.Moved moved) throws IOException {
        json.object(o -> {
            o.member("name", moved.name());
            if (moved.before().isPresent())
                o.member("before", moved.before().get());
            if (moved.after().isPresent())
                o.member("after", moved.after().get());
        });
    }

    private static void figure(JsonFile json, Comparison.Change change) throws IOException {
        Quantity any = change.any();
        json.object(o -> {
            o.member("id", change.id()).member("stage", any.stage()).member("label", any.label()).member("unit", any.ucum());
            member(o, "before", change.before());
            member(o, "after", change.after());
            if (change.difference().isPresent())
                o.member("change", any.published(change.difference().get()));
        });
    }

    private static void member(JsonFile json, String name, Optional<Quantity> quantity) throws IOException {
        if (quantity.isPresent())
            json.member(name, quantity.get().published(quantity.get().value()));
    }
}
