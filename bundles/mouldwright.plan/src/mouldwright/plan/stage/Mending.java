package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.DENSITY;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;
import static mouldwright.units.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.FairDefaults;
import mouldwright.plan.spec.Filler;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.LaminateDefaults;
import mouldwright.plan.spec.Spec;
import mouldwright.process.Paste;

/** Amounts that mend what surveys found, written in a ledger place by place and summed. */
final class Mending {

    private final FillerFacts filler;
    private final Node lap;
    private final Ledger ledger;
    private final List<Node> filled = new ArrayList<>();
    private final List<Node> foamed = new ArrayList<>();
    private final List<Node> patched = new ArrayList<>();
    private int layers;
    private int most;

    Mending(FillerFacts filler, Given lap, Ledger ledger) {
        this.filler = filler;
        this.lap = ledger.given(lap);
        this.ledger = ledger;
    }

    /** Writes what one place takes. */
    void place(FairMeasures.Place place) {
        switch (place.remedy()) {
            case FairMeasures.Filler(int count) -> {
                volume(place, filled);
                layers += count;
                most = Math.max(most, count);
            }
            case FairMeasures.NewFoam() -> volume(place, foamed);
            case FairMeasures.Plies(int count) -> patch(place, count, false);
            case FairMeasures.LaidAnew() -> patch(place, 1, true);
            case FairMeasures.BoardedDown() -> { }
            case FairMeasures.Done() -> { }
        }
    }

    /** A place whose extent was not measured, by a gauge, has a depth but no volume. */
    private void volume(FairMeasures.Place place, List<Node> sum) {
        if (place.size().along().isEmpty() || place.size().across().isEmpty())
            return;
        sum.add(ledger.quantity(place.id("volume"), "Volume, " + place.words(), VOLUME)
                .from("fullness x depth x pi/4 x length x width", List.of(ledger.given(FairDefaults.fullness()), ledger.given(place.size().depth()),
                        ledger.given(place.size().along().get()), ledger.given(place.size().across().get())),
                        v -> v[0] * v[1] * Math.PI / 4 * v[2] * v[3])
                .source("closed form: half an ellipsoid, half a paraboloid, straight walls"));
    }

    private void patch(FairMeasures.Place place, int plies, boolean lapped) {
        if (place.size().along().isEmpty() || place.size().across().isEmpty())
            return;
        String words = lapped ? "(length + 2 laps) x (width + 2 laps)" : "plies x length x width";
        patched.add(ledger.quantity(place.id("area"), "Mat, " + place.words(), AREA)
                .from(words, List.of(ledger.given(place.size().along().get()), ledger.given(place.size().across().get()), lap),
                        v -> lapped ? (v[0] + 2 * v[2]) * (v[1] + 2 * v[2]) : plies * v[0] * v[1])
                .source(lapped ? "what gives under a thumb is cut out, and laid anew with a lap all round; each ply anew"
                        : "plies fill a low spot by their cured thickness, and are torn to its outline"));
    }

    /** Writes the sums. */
    void totals(Spec spec) {
        Node volume = sum(ledger.quantity("fair.filler.volume", "Filler, " + filler.name(), VOLUME), "filled", filled);
        Node density = density(spec);
        Node mass = ledger.quantity("fair.filler.mass", "Filler, mass", MASS)
                .from("volume x density", List.of(volume, density), v -> v[0] * v[1]).source("closed form");
        if (filler.filler().isEmpty())
            parts(mass);
        ledger.quantity("fair.filler.layers", "Layers of filler, all places", RATIO)
                .measured(Places.exact(layers, "depth over the layer limit, rounded up, place by place"));
        int last = most;
        ledger.quantity("fair.filler.wait", "Filler, until the deepest place may be sanded", TIME)
                .from(last + " layers x time until hard", List.of(ledger.given(filler.hard())), v -> last * v[0])
                .source("each layer hardens before the next; all places go on side by side");
        sum(ledger.quantity("fair.foam.volume", "New foam in deep places", VOLUME), "filled with foam", foamed);
        sum(ledger.quantity("fair.patch.area", "Mat for patches and low spots", AREA), "laid with mat", patched);
    }

    /** A sum of none is a measure too: nothing was found. */
    private static Node sum(Ledger.Entry entry, String places, List<Node> parts) {
        return parts.isEmpty() ? entry.measured(Places.exact(0, "no survey has a place still to be " + places))
                : entry.sum("sum over the places " + places, parts).source("sum");
    }

    private Node density(Spec spec) {
        if (filler.filler().isPresent())
            return ledger.given(filler.filler().flatMap(Filler::density).orElseGet(FairDefaults::fillerDensity));
        Given resin = spec.skin().map(skin -> skin.schedule().resin().cured()).orElseGet(LaminateDefaults::curedResin);
        return ledger.quantity("fair.paste.density", "Paste of resin and glass bubbles, density", DENSITY)
                .from("(1 + bubbles) / (1 / cured resin density + bubbles / particle density)",
                        List.of(ledger.given(resin), ledger.given(FairDefaults.bubbles()), ledger.given(FairDefaults.bubbleDensity())),
                        v -> Paste.density(List.of(new Paste.Part(1, v[0]), new Paste.Part(v[1], v[2]))))
                .source("mixture rule, sum m / sum(m / rho), without air; no filler is stated in the carve block");
    }

    private void parts(Node mass) {
        Node bubbles = ledger.given(FairDefaults.bubbles());
        ledger.quantity("fair.paste.resin", "Paste, resin", MASS).from("mass / (1 + bubbles)", List.of(mass, bubbles), v -> v[0] / (1 + v[1]))
                .source("mass balance");
        ledger.quantity("fair.paste.bubbles", "Paste, glass bubbles", MASS)
                .from("mass x bubbles / (1 + bubbles)", List.of(mass, bubbles), v -> v[0] * v[1] / (1 + v[1])).source("mass balance");
    }
}
