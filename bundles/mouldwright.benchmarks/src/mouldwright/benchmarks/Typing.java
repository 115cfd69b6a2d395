package mouldwright.benchmarks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.atomic.AtomicLong;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.stage.Planner;
import mouldwright.services.Checked;
import mouldwright.services.LiveSession;

/**
 * From a stroke of the keyboard to the findings of the text and of its plan, as somebody types them in: words that are wrong until they are whole, slips taken back,
 * figures tried. Wanted at the 95th percentile: the canopy under 50 ms, a spec of 5,000 lines under 150 ms. Then how long a plan that is called off goes on: under 20 ms.
 * Run by hand: {@code java -cp bundles/mouldwright.benchmarks/target/benchmarks.jar mouldwright.benchmarks.Typing}
 */
public final class Typing {

    private static final int WARM = 3;
    private static final int ROUNDS = 5;
    private static final int CALLED_OFF = 300;

    /** What is typed at a place: {@code <} takes a character back. */
    private record Stretch(String before, String typed) { }

    /** A new plate between two stations, a figure that is corrected, a ply, a comment. */
    private static final List<Stretch> TRACE = List.of(
            new Stretch("    frame {", "    stetion<<<<<<ation N9 at 901 lofted\n"),
            new Stretch("        rim 60", "        // wide enough for the clmp<<amps\n"),
            new Stretch("        lap 50", "        on foam 40<<300 g/m2\n<<<<<<<<<<<<<<<<<<<<"),
            new Stretch("        board 1200", "    "),
            new Stretch("        sand 80", "        1 coats Surf<<<<<<Surfacer\n"));

    private Typing() { }

    /** Types. */
    public static void main(String[] arguments) throws InterruptedException {
        typed("canopy", Texts.canopy());
        typed("5,000 lines", LargeSpec.text(80, 60));
        calledOff();
    }

    private static void typed(String name, String text) throws InterruptedException {
        Path file = Path.of(System.getProperty("mouldwright.examples", "examples")).toAbsolutePath().resolve("rain-canopy/typed.plug");
        SynchronousQueue<Integer> done = new SynchronousQueue<>();
        AtomicLong first = new AtomicLong();
        LiveSession.Listener listener = new LiveSession.Listener() {
            @Override
            public void found(Checked checked, int version, boolean complete) {
                first.compareAndSet(0, System.nanoTime());
                if (complete) {
                    try {
                        done.put(version);
                    } catch (InterruptedException e) {
                        throw new IllegalStateException(e);
                    }
                }
            }

            @Override
            public void closed(Path gone) {
                // nobody is told
            }
        };
        List<Double> whole = new ArrayList<>();
        List<Double> cheap = new ArrayList<>();
        try (LiveSession session = new LiveSession(listener, Throwable::printStackTrace)) {
            session.open(file, 0, text);
            await(done, 0);
            int version = 0;
            for (int round = 0; round < WARM + ROUNDS; round++) {
                StringBuilder now = new StringBuilder(text);
                for (Stretch stretch : TRACE) {
                    int at = now.indexOf(stretch.before());
                    for (char stroke : stretch.typed().toCharArray()) {
                        if (stroke == '<') {
                            now.deleteCharAt(--at);
                        } else {
                            now.insert(at++, stroke);
                        }
                        String typed = now.toString();
                        first.set(0);
                        long from = System.nanoTime();
                        int next = ++version;
                        session.change(file, next, old -> typed);
                        await(done, next);
                        if (round >= WARM) {
                            whole.add((System.nanoTime() - from) / 1e6);
                            cheap.add((first.get() - from) / 1e6);
                        }
                    }
                }
                session.change(file, ++version, old -> text);
                await(done, version);
            }
        }
        print(name + ", first findings", cheap);
        print(name + ", all findings", whole);
    }

    private static void await(SynchronousQueue<Integer> done, int version) throws InterruptedException {
        while (done.take() < version) {
            // an older version, told late
        }
    }

    private static void calledOff() {
        Spec spec = Texts.estimate(new Texts().plug(Texts.canopy())).spec();
        long from = System.nanoTime();
        for (int i = 0; i < 50; i++) {
            new Planner().plan(spec, () -> false);
        }
        long once = (System.nanoTime() - from) / 50;
        List<Double> late = new ArrayList<>();
        for (int i = 0; i < CALLED_OFF; i++) {
            long off = System.nanoTime() + once * i / CALLED_OFF;
            try {
                new Planner().plan(spec, () -> System.nanoTime() > off);
            } catch (CancellationException e) {
                // as asked
            }
            late.add(Math.max(0, System.nanoTime() - off) / 1e6);
        }
        print("called off", late);
    }

    private static void print(String name, List<Double> times) {
        double[] sorted = times.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        System.out.println(String.format(Locale.ROOT, "%-28s %5d strokes   median %6.1f ms   95 %% %6.1f ms   most %6.1f ms", name, sorted.length,
                sorted[sorted.length / 2], sorted[(int) (0.95 * (sorted.length - 1))], Arrays.stream(sorted).max().orElse(0)));
    }
}
