package mouldwright.plan.stage;

import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;
import static mouldwright.units.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Given;
import mouldwright.process.Cure;

/** Writes what coats take: by the film they make, area x wet film / transfer, or by the coverage they state. */
final class CoatWriting {

    private final Ledger ledger;
    private final String id;
    private final String title;
    private final Node area;
    private final Given shop;

    /** Coats over one area.
     *  @param id    the ids of their figures are this, the coating's name and what is told, dots between
     *  @param title their labels begin with this
     *  @param area  they go on
     *  @param shop  temperature they cure at, degC */
    CoatWriting(Ledger ledger, String id, String title, Node area, Given shop) {
        this.ledger = ledger;
        this.id = id;
        this.title = title;
        this.area = area;
        this.shop = shop;
    }

    /** Writes volume, mass and films of each coating, as far as it states what they take. */
    void write(List<Finish.Coats> coats) {
        Map<String, List<Finish.Coats>> byName = new LinkedHashMap<>();
        coats.forEach(one -> byName.computeIfAbsent(one.coating().name(), name -> new ArrayList<>()).add(one));
        byName.forEach(this::coating);
    }

    private void coating(String name, List<Finish.Coats> coats) {
        String own = id + "." + name;
        List<Optional<Node>> volumes = coats.stream().map(this::volume).toList();
        if (volumes.stream().allMatch(Optional::isPresent))
            ledger.quantity(own + ".volume", title + ", " + name, VOLUME).sum("sum over the coats", present(volumes)).source("sum");
        List<Optional<Node>> masses = new ArrayList<>();
        for (int i = 0; i < coats.size(); i++)
            masses.add(mass(coats.get(i), volumes.get(i)));
        if (masses.stream().allMatch(Optional::isPresent)) {
            Node mass = ledger.quantity(own + ".mass", title + ", " + name + " by weight", MASS).sum("sum over the coats", present(masses)).source("sum");
            coats.getFirst().coating().curing().ifPresent(curing -> catalyst(own, name, curing, mass));
        }
        film(own + ".wet", name + ", wet film of all coats", coats.stream()
                .map(one -> one.coating().coverage().isPresent() ? one.coating().wet() : Optional.of(CoatFacts.wet(one.coating()))).toList(), coats);
        film(own + ".dry", name + ", dry film of all coats", coats.stream().map(one -> one.coating().dry()).toList(), coats);
    }

    /** The general guide of catalyst by temperature, within the limits of the coating: a gel coat has no table of its own. */
    private void catalyst(String own, String name, Coating.Curing curing, Node coating) {
        Node level = ledger.step("catalyst of " + name, RATIO).from("guide at shop temperature, within the limits",
                List.of(ledger.given(shop), ledger.given(curing.least()), ledger.given(curing.most())),
                v -> Math.clamp(Cure.guide(Math.clamp(v[0], ResinCure.GUIDE_FROM, ResinCure.GUIDE_TO)).orElseThrow(), Math.min(v[1], v[2]), v[2]))
                .source("catalyst addition chart by temperature, East Coast Fibreglass");
        Node mass = ledger.quantity(own + ".catalyst.mass", title + ", catalyst for " + name, MASS)
                .from("coating x catalyst", List.of(coating, level), v -> v[0] * v[1]).source("catalyst by weight of the coating");
        ledger.quantity(own + ".catalyst.volume", title + ", that catalyst by the measure", VOLUME)
                .from("mass / catalyst density", List.of(mass, ledger.given(curing.hardener().density())), v -> v[0] / v[1]).source("closed form");
    }

    private static List<Node> present(List<Optional<Node>> nodes) {
        return nodes.stream().flatMap(Optional::stream).toList();
    }

    private Optional<Node> volume(Finish.Coats coats) {
        Coating coating = coats.coating();
        if (coating.coverage().isPresent())
            return CoatFacts.byVolume(coating.coverage().get()) ? Optional.of(spread(coats, coating.coverage().get()))
                    : coating.density().map(density -> ledger.step(words(coats) + ", by volume", VOLUME)
                            .from("mass / density", List.of(spread(coats, coating.coverage().get()), ledger.given(density)), v -> v[0] / v[1])
                            .source("closed form"));
        return Optional.of(ledger.step(words(coats), VOLUME)
                .from(coats.count() + " x area x wet film / transfer", List.of(area, ledger.given(CoatFacts.wet(coating)),
                        ledger.given(CoatFacts.transfer(coating))), v -> coats.count() * v[0] * v[1] / v[2])
                .source("geometry: a litre to the square metre is a film of a millimetre"));
    }

    private Optional<Node> mass(Finish.Coats coats, Optional<Node> volume) {
        Optional<Given> coverage = coats.coating().coverage();
        if (coverage.isPresent() && !CoatFacts.byVolume(coverage.get()))
            return Optional.of(spread(coats, coverage.get()));
        return volume.flatMap(liquid -> coats.coating().density().map(density -> ledger.step(words(coats) + ", by weight", MASS)
                .from("volume x density", List.of(liquid, ledger.given(density)), v -> v[0] * v[1]).source("closed form")));
    }

    private Node spread(Finish.Coats coats, Given coverage) {
        return ledger.step(words(coats), CoatFacts.byVolume(coverage) ? VOLUME : MASS)
                .from(coats.count() + " x area / coverage", List.of(area, ledger.given(coverage)), v -> coats.count() * v[0] / v[1])
                .source("coverage as the supplier states it");
    }

    private void film(String id, String label, List<Optional<Given>> films, List<Finish.Coats> coats) {
        List<Node> parts = new ArrayList<>();
        for (int i = 0; i < coats.size(); i++) {
            int count = coats.get(i).count();
            films.get(i).ifPresent(film -> parts.add(ledger.step(count + " coats", LENGTH)
                    .from("coats x film of one", List.of(ledger.given(film)), v -> count * v[0]).source("closed form")));
        }
        if (parts.size() == coats.size())
            ledger.quantity(id, label, LENGTH).sum("sum over the coats", parts).source("sum");
    }

    /** Writes how long coats keep the work standing: each is left before the next, and the last before what follows.
     *  Writes nothing where no coating states it. */
    static void wait(Ledger ledger, String id, String label, List<Finish.Coats> coats) {
        List<Node> waits = new ArrayList<>();
        for (Finish.Coats one : coats)
            one.coating().recoat().ifPresent(recoat -> waits.add(ledger.step("wait after " + words(one), TIME)
                    .from("coats x time to the next", List.of(ledger.given(recoat)), v -> one.count() * v[0]).source("as the supplier states it")));
        if (!waits.isEmpty())
            ledger.quantity(id, label, TIME).sum("sum over the coats", waits).source("on the calendar, not labour");
    }

    /** A line of coats in words. */
    static String words(Finish.Coats coats) {
        return coats.count() + (coats.count() == 1 ? " coat of " : " coats of ") + coats.coating().name();
    }
}
