package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import mouldwright.plan.Hazard;
import mouldwright.plan.ledger.Node;
import mouldwright.process.Air;
import mouldwright.units.Dimension;

/** Something to be done. Labour is done in working hours; the wait that follows it, such as a cure, runs on the calendar,
 *  through nights and weekends.
 *  <pre>{@code
 *  tasks.add(Task.of("skin.lay.1", "Lay ply 1", labour).persons(2).inOneGo().wait(hard)
 *          .cautions(Hazard.STYRENE, Hazard.PEROXIDE).releases(Air.Application.RESIN_NOT_ATOMISED, resin, styrene));
 *  }</pre>
 *  @param id       one of a kind, beginning with the stage's name: {@code fill.pour.S1-S2.1}
 *  @param name     in words
 *  @param labour   person-time, s
 *  @param pause    on the calendar after the work, s, before what follows may begin; empty for none
 *  @param persons  at most, at least 1
 *  @param after    ids of tasks it waits for; with none it follows every task of the nearest earlier stage that has any
 *  @param atStart  waits for nothing, though it names nothing
 *  @param unbroken is not laid down over a night: where it fits in a day at all, it begins early enough to be ended
 *  @param cautions what can hurt somebody
 *  @param releases styrene-bearing materials put on during the task */
public record Task(String id, String name, Node labour, Optional<Node> pause, int persons, List<String> after,
        boolean atStart, boolean unbroken, List<Hazard> cautions, List<Release> releases) {

    /** A styrene-bearing material put on.
     *  @param how     it is put on
     *  @param mass    kg
     *  @param styrene share by mass */
    public record Release(Air.Application how, Node mass, Node styrene) {
        /** Refuses missing parts. */
        public Release {
            Objects.requireNonNull(how, "how");
            Objects.requireNonNull(mass, "mass");
            Objects.requireNonNull(styrene, "styrene");
        }
    }

    /** Copies its lists. */
    public Task {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        if (!labour.dimension().equals(Dimension.TIME) || pause.filter(w -> !w.dimension().equals(Dimension.TIME)).isPresent())
            throw new IllegalArgumentException(id + ": labour and pause are times");
        if (persons < 1)
            throw new IllegalArgumentException(id + ": nobody to do it");
        after = List.copyOf(after);
        cautions = List.copyOf(cautions);
        releases = List.copyOf(releases);
    }

    /** A task for one person, without a wait.
     *  @param labour person-time, s */
    public static Task of(String id, String name, Node labour) {
        return new Task(id, name, labour, Optional.empty(), 1, List.of(), false, false, List.of(), List.of());
    }

    /** The same, with a wait after it.
     *  @param time on the calendar, s */
    public Task wait(Node time) {
        return new Task(id, name, labour, Optional.of(time), persons, after, atStart, unbroken, cautions, releases);
    }

    /** The same, for several persons at most. */
    public Task persons(int most) {
        return new Task(id, name, labour, pause, most, after, atStart, unbroken, cautions, releases);
    }

    /** The same, after tasks of these ids too. */
    public Task after(String... ids) {
        return after(List.of(ids));
    }

    /** The same, after tasks of these ids too. */
    public Task after(List<String> ids) {
        List<String> all = new ArrayList<>(after);
        all.addAll(ids);
        return new Task(id, name, labour, pause, persons, all, atStart, unbroken, cautions, releases);
    }

    /** The same, waiting for nothing. */
    public Task fromTheStart() {
        return new Task(id, name, labour, pause, persons, after, true, unbroken, cautions, releases);
    }

    /** The same, not to be laid down over a night. */
    public Task unbroken(boolean whole) {
        return new Task(id, name, labour, pause, persons, after, atStart, whole, cautions, releases);
    }

    /** The same, not to be laid down over a night. */
    public Task inOneGo() {
        return unbroken(true);
    }

    /** The same, with its cautions. */
    public Task cautions(Hazard... hazards) {
        return new Task(id, name, labour, pause, persons, after, atStart, unbroken, List.of(hazards), releases);
    }

    /** The same, with one more styrene-bearing material put on.
     *  @param mass    kg
     *  @param styrene share by mass */
    public Task releases(Air.Application how, Node mass, Node styrene) {
        List<Release> all = new ArrayList<>(releases);
        all.add(new Release(how, mass, styrene));
        return new Task(id, name, labour, pause, persons, after, atStart, unbroken, cautions, all);
    }
}
