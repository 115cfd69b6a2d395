package mouldwright.plan.programme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SchedulerTest {

    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;
    private static final WorkCalendar ROUND_THE_CLOCK = new WorkCalendar(DAY, DayOfWeek.MONDAY, DayOfWeek.MONDAY, DayOfWeek.SUNDAY);
    private static final WorkCalendar OFFICE = new WorkCalendar(7 * HOUR, DayOfWeek.MONDAY, DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    private static Timetable schedule(WorkCalendar calendar, int crew, int[][] before, double[] hours, double[] waits, int persons, boolean unbroken) {
        int n = before.length;
        int[] most = new int[n];
        boolean[] whole = new boolean[n];
        double[] labour = new double[n];
        double[] pause = new double[n];
        for (int i = 0; i < n; i++) {
            most[i] = persons;
            whole[i] = unbroken;
            labour[i] = hours[i] * HOUR;
            pause[i] = waits.length == 0 ? 0 : waits[i] * HOUR;
        }
        return new Scheduler(new Precedence(before), most, whole).schedule(calendar, crew, labour, pause);
    }

    /** Activities A to N of the Reliable Construction Co., Hillier and Lieberman, Introduction to Operations Research (from memory): 44 weeks by
     *  A-B-C-E-F-J-L-N. */
    private static final double[] WEEKS = {2, 4, 10, 6, 4, 5, 7, 9, 7, 8, 4, 5, 2, 6};
    private static final int[][] RELIABLE = {{}, {0}, {1}, {2}, {2}, {4}, {3}, {4, 6}, {2}, {5, 8}, {9}, {9}, {7}, {10, 11}};

    @Test void theTextbookNetworkTakesFortyFourWeeksWithAsManyPeopleAsItWants() {
        assertThat(schedule(ROUND_THE_CLOCK, 14, RELIABLE, WEEKS, new double[0], 1, false).elapsed()).isEqualTo(44 * HOUR);
    }

    @Test void theTextbookNetworkHasItsTextbookCriticalPath() {
        boolean[] critical = schedule(ROUND_THE_CLOCK, 14, RELIABLE, WEEKS, new double[0], 1, false).critical();
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < critical.length; i++)
            path.append(critical[i] ? (char) ('A' + i) : "");
        assertThat(path.toString()).isEqualTo("ABCEFJLN");
    }

    @Test void onePersonDoesTheSumOfAllWork() { // closed form: 79 weeks of labour
        assertThat(schedule(ROUND_THE_CLOCK, 1, RELIABLE, WEEKS, new double[0], 1, false).elapsed()).isEqualTo(79 * HOUR);
    }

    @Test void whileOneThingCuresTheCrewDoesAnother() { // 1 h, cure 5 h, 1 h; meanwhile 3 h of something else
        Timetable table = schedule(ROUND_THE_CLOCK, 1, new int[][] {{}, {0}, {}}, new double[] {1, 1, 3}, new double[] {5, 0, 0}, 1, false);
        assertThat(table.elapsed()).isEqualTo(7 * HOUR);
        assertThat(table.begin()[2]).isEqualTo(HOUR);
    }

    @Test void aCureOnTheCriticalPathIsWaitedFor() {
        Timetable table = schedule(ROUND_THE_CLOCK, 1, new int[][] {{}, {0}, {}}, new double[] {1, 1, 3}, new double[] {5, 0, 0}, 1, false);
        assertThat(table.waiting()).isEqualTo(5 * HOUR);
    }

    @Test void aCureHiddenBehindOtherWorkIsNotWaitedFor() { // 3 h of something else outlasts the cure of 1 h
        Timetable table = schedule(ROUND_THE_CLOCK, 1, new int[][] {{}, {0}, {}}, new double[] {1, 1, 3}, new double[] {1, 0, 0}, 1, false);
        assertThat(table.elapsed()).isEqualTo(5 * HOUR);
        assertThat(table.waiting()).isZero();
    }

    @Test void cureGoesOnOverTheWeekend() { // 35 h of work end on Friday evening; a cure of 24 h is over before Monday
        Timetable table = schedule(OFFICE, 1, new int[][] {{}, {0}}, new double[] {35, 1}, new double[] {24, 0}, 1, false);
        assertThat(table.begin()[1]).isEqualTo(7 * DAY);
    }

    @Test void twoPeopleHalveATaskThatTakesTwo() {
        assertThat(schedule(OFFICE, 2, new int[][] {{}}, new double[] {6}, new double[0], 2, false).elapsed()).isEqualTo(3 * HOUR);
    }

    @Test void aThirdPersonIsNoHelpAtATaskForTwo() {
        assertThat(schedule(OFFICE, 3, new int[][] {{}}, new double[] {6}, new double[0], 2, false).elapsed()).isEqualTo(3 * HOUR);
    }

    @Test void aPlyIsPutOffToTheMorningRatherThanLaidDown() { // 6 h of other work first, then 2 h in one go
        Timetable table = schedule(OFFICE, 1, new int[][] {{}, {0}}, new double[] {6, 2}, new double[0], 1, true);
        assertThat(table.begin()[1]).isEqualTo(DAY);
    }

    @Test void tasksInACircleAreNamedInTurn() {
        Precedence precedence = new Precedence(new int[][] {{}, {0, 3}, {1}, {2}});
        assertThat(precedence.order()).isEmpty();
        assertThat(precedence.circle()).containsExactlyInAnyOrder(1, 2, 3);
    }

    @Test void aTaskWaitingForItselfIsACircle() {
        assertThat(new Precedence(new int[][] {{0}}).circle()).containsExactly(0);
    }

    @Test void aLongChainHasNoCircle() { // deeper than a stack of calls would go
        int[][] chain = new int[100_000][];
        for (int i = 0; i < chain.length; i++)
            chain[i] = i == 0 ? new int[0] : new int[] {i - 1};
        Precedence precedence = new Precedence(chain);
        assertThat(precedence.circle()).isEmpty();
        assertThat(precedence.order()).isPresent();
    }

    /** A network of some tasks that wait for earlier ones only. */
    private record Network(int[][] before, double[] hours, double[] waits, int crew) {
        static Network of(long seed) {
            Random random = new Random(seed);
            int n = 1 + random.nextInt(25);
            int[][] before = new int[n][];
            double[] hours = new double[n];
            double[] waits = new double[n];
            for (int i = 0; i < n; i++) {
                List<Integer> some = new ArrayList<>();
                for (int b = 0; b < i; b++)
                    if (random.nextInt(4) == 0)
                        some.add(b);
                before[i] = some.stream().mapToInt(Integer::intValue).toArray();
                hours[i] = random.nextInt(4) == 0 ? 0 : 12 * random.nextDouble();
                waits[i] = random.nextInt(3) == 0 ? 60 * random.nextDouble() : 0;
            }
            return new Network(before, hours, waits, 1 + random.nextInt(4));
        }
    }

    @Property(tries = 300) void nothingBeginsBeforeWhatItWaitsForIsDoneAndCured(@ForAll long seed) {
        Network some = Network.of(seed);
        Timetable table = schedule(OFFICE, some.crew, some.before, some.hours, some.waits, 2, seed % 2 == 0);
        for (int i = 0; i < some.before.length; i++)
            for (int b : some.before[i])
                assertThat(table.begin()[i]).isGreaterThanOrEqualTo(table.ready()[b]);
    }

    @Property(tries = 300) void nobodyIsInTwoPlaces(@ForAll long seed) {
        Network some = Network.of(seed);
        Timetable table = schedule(OFFICE, some.crew, some.before, some.hours, some.waits, 2, seed % 2 == 0);
        for (int i = 0; i < some.before.length; i++) {
            int atWork = 0;
            for (int k = 0; k < some.before.length; k++)
                if (table.begin()[k] <= table.begin()[i] && table.end()[k] > table.begin()[i])
                    atWork += Math.min(2, some.crew);
            assertThat(atWork).isLessThanOrEqualTo(some.crew);
        }
    }

    @Property(tries = 300) void theCriticalPathExplainsTheWholeTime(@ForAll long seed) { // round the clock, work and waits on it add up
        Network some = Network.of(seed);
        Timetable table = schedule(ROUND_THE_CLOCK, some.crew, some.before, some.hours, some.waits, 1, false);
        double work = 0;
        for (int i = 0; i < some.before.length; i++)
            work += table.critical()[i] ? table.end()[i] - table.begin()[i] : 0;
        assertThat(work + table.waiting()).isCloseTo(table.elapsed(), within(1e-2));
    }
}
