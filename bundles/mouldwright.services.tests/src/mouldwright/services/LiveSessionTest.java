package mouldwright.services;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.Planner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Texts that are being typed: which version is looked at, who waits for whom, and how work is called off. */
class LiveSessionTest {

    private static final String BOX = """
            plug Box {
                units mm
                half sections
                station A at 0 {
                    0 0
                    100 0 knuckle
                    100 50 knuckle
                    0 50
                }
                station B at 400 like A
            }
            """;
    private static final long PATIENCE = 120;

    private record Told(int version, boolean complete, Checked checked) { }

    @TempDir
    private Path folder;
    private final BlockingQueue<Told> told = new LinkedBlockingQueue<>();
    private final LiveSession session = new LiveSession(new LiveSession.Listener() {
        @Override
        public void found(Checked checked, int version, boolean complete) {
            told.add(new Told(version, complete, checked));
        }

        @Override
        public void closed(Path file) {
            told.add(new Told(-1, true, null));
        }
    }, fault -> {
        throw new AssertionError(fault);
    });

    @AfterEach
    void end() {
        session.close();
    }

    private Told next() throws InterruptedException {
        Told one = told.poll(PATIENCE, TimeUnit.SECONDS);
        assertThat(one).isNotNull();
        return one;
    }

    @Test void ofSeveralStrokesOnlyTheLastIsLookedAt() throws Exception {
        Path file = folder.resolve("box.plug");
        CountDownLatch hold = new CountDownLatch(1);
        CompletableFuture<Object> held = session.atDesk(() -> waiting(hold));
        session.open(file, 1, BOX);
        for (int version = 2; version <= 9; version++) {
            int length = 300 + version;
            session.change(file, version, old -> BOX.replace("400", String.valueOf(length)));
        }
        hold.countDown();
        held.get(PATIENCE, TimeUnit.SECONDS);
        assertThat(next().version()).isEqualTo(9);
        Told last = next();
        assertThat(last.version()).isEqualTo(9);
        assertThat(last.complete()).isTrue();
        assertThat(last.checked().plans().get("Box").quantity("shape.length").orElseThrow().value()).isEqualTo(0.309);
    }

    private static Object waiting(CountDownLatch hold) {
        try {
            return hold.await(PATIENCE, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test void aQuestionSeesTheStrokeBeforeIt() throws Exception {
        Path file = folder.resolve("box.plug");
        session.open(file, 1, BOX);
        session.change(file, 2, old -> old.replace("Box", "Crate"));
        Optional<String> seen = session.ask(file, LiveSpec::text).get(PATIENCE, TimeUnit.SECONDS);
        assertThat(seen).hasValueSatisfying(text -> assertThat(text).contains("plug Crate"));
    }

    @Test void aQuestionThatIsCancelledWhileItWaitsIsNeverAsked() throws Exception {
        Path file = folder.resolve("box.plug");
        session.open(file, 1, BOX);
        CountDownLatch hold = new CountDownLatch(1);
        session.atDesk(() -> waiting(hold));
        AtomicInteger asked = new AtomicInteger();
        CompletableFuture<Optional<Integer>> answer = session.ask(file, spec -> asked.incrementAndGet());
        answer.cancel(false);
        hold.countDown();
        session.ask(file, LiveSpec::version).get(PATIENCE, TimeUnit.SECONDS);
        assertThat(asked).hasValue(0);
    }

    @Test void whoWaitsForAPlanIsTurnedAwayWhenTheTextIsClosed() throws Exception {
        Path file = folder.resolve("box.plug");
        CountDownLatch hold = new CountDownLatch(1);
        session.atDesk(() -> waiting(hold));
        CompletableFuture<Checked> answer = session.checked(file);
        hold.countDown();
        assertThatThrownBy(() -> answer.get(PATIENCE, TimeUnit.SECONDS)).isInstanceOf(CancellationException.class);
    }

    private static BuildPlan canopy() {
        Path root = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(root.resolve("examples"))) {
            root = root.getParent();
        }
        Checked checked = SpecSession.start().check(root.resolve("examples/rain-canopy/canopy.plug"), () -> false);
        return checked.plans().get("RainCanopy");
    }

    @Test void planningAsksWhetherItIsWantedAtEveryPlatePlyLiftAndIteration() {
        BuildPlan plan = canopy();
        AtomicInteger polls = new AtomicInteger();
        new Planner().plan(plan.spec(), () -> polls.incrementAndGet() < 0);
        int plies = plan.pieces().size();
        int bays = plan.spec().body().stations().size();
        assertThat(polls.get()).isGreaterThan(plan.plates().size() + plan.pours().size() + plies + bays);
        for (int share : List.of(1, 10, 25, 50, 75, 90, 99)) {
            int last = Math.max(1, polls.get() * share / 100);
            AtomicInteger asked = new AtomicInteger();
            assertThatThrownBy(() -> new Planner().plan(plan.spec(), () -> asked.incrementAndGet() >= last)).isInstanceOf(CancellationException.class);
            assertThat(asked.get()).isGreaterThanOrEqualTo(last).isLessThan(Math.max(polls.get(), last + plan.pours().size() + 1)); // bays are measured side by side
        }
    }
}
