package mouldwright.plan.programme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Labour stops at night and on days off. All by counting on a calendar sheet. */
class WorkCalendarTest {

    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;

    private static WorkCalendar sevenHours(DayOfWeek first) {
        return new WorkCalendar(7 * HOUR, first, DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
    }

    @Test void eightHoursOfWorkBegunOnFridayMorningEndOnMonday() {
        assertThat(sevenHours(DayOfWeek.FRIDAY).after(0, 8 * HOUR)).isEqualTo(3 * DAY + HOUR);
    }

    @Test void aWorkThatEndsWithTheDayEndsThatEvening() {
        assertThat(sevenHours(DayOfWeek.MONDAY).after(0, 7 * HOUR)).isEqualTo(7 * HOUR);
    }

    @Test void aCureThatEndsOnSaturdayLetsWorkGoOnOnMonday() {
        assertThat(sevenHours(DayOfWeek.FRIDAY).workingFrom(7 * HOUR + DAY)).isEqualTo(3 * DAY);
    }

    @Test void aCureThatEndsAtNoonLetsWorkGoOnAtOnce() {
        assertThat(sevenHours(DayOfWeek.MONDAY).workingFrom(DAY + 3 * HOUR)).isEqualTo(DAY + 3 * HOUR);
    }

    @Test void aPlyOfTwoHoursIsNotBegunAnHourBeforeTheEvening() {
        assertThat(sevenHours(DayOfWeek.MONDAY).unbrokenFrom(6 * HOUR, 2 * HOUR)).isEqualTo(DAY);
        assertThat(sevenHours(DayOfWeek.MONDAY).unbrokenFrom(5 * HOUR, 2 * HOUR)).isEqualTo(5 * HOUR);
    }

    @Test void aWorkLongerThanADayIsLaidDownOverTheNightAnyhow() {
        assertThat(sevenHours(DayOfWeek.MONDAY).unbrokenFrom(6 * HOUR, 9 * HOUR)).isEqualTo(6 * HOUR);
    }

    @Test void aYearOfWorkIsTwoHundredAndSixtyOneDaysInTwelveMonthsFromMonday() { // 52 weeks of 5 days and one day: the 365th calendar day
        assertThat(sevenHours(DayOfWeek.MONDAY).after(0, 261 * 7 * HOUR)).isEqualTo(364 * DAY + 7 * HOUR);
    }

    @Test void aWeekMayRunAcrossSunday() {
        WorkCalendar calendar = new WorkCalendar(8 * HOUR, DayOfWeek.SATURDAY, DayOfWeek.SATURDAY, DayOfWeek.MONDAY);
        assertThat(calendar.after(0, 25 * HOUR)).isEqualTo(7 * DAY + HOUR);
    }

    @Test void aJobThatIsToStartOnSundayStartsOnMonday() { // 2027-03-07 is a Sunday
        assertThat(WorkCalendar.firstWorkingDay(LocalDate.of(2027, 3, 7), DayOfWeek.MONDAY, DayOfWeek.FRIDAY)).isEqualTo(LocalDate.of(2027, 3, 8));
    }

    @Test void theFourthWorkingDayFromThursdayIsTuesday() {
        WorkCalendar calendar = sevenHours(DayOfWeek.THURSDAY);
        assertThat(calendar.dayNumber(5 * DAY + HOUR)).isEqualTo(4);
        assertThat(calendar.date(LocalDate.of(2027, 3, 4), 5 * DAY + HOUR)).isEqualTo(LocalDate.of(2027, 3, 9));
    }

    @Test void noDayHasTwentyFiveHours() {
        assertThatThrownBy(() -> new WorkCalendar(25 * HOUR, DayOfWeek.MONDAY, DayOfWeek.MONDAY, DayOfWeek.FRIDAY)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property(tries = 300) void theTimeWorkedIsTheLengthOfTheWork(@ForAll @DoubleRange(min = 0, max = 3e6) double from, @ForAll @DoubleRange(min = 0, max = 3e6) double length) {
        WorkCalendar calendar = sevenHours(DayOfWeek.WEDNESDAY);
        double begin = calendar.workingFrom(from);
        assertThat(calendar.worked(calendar.after(begin, length)) - calendar.worked(begin)).isCloseTo(length, within(2e-3));
    }

    @Property(tries = 300) void twoWorksInTurnEndWhenTheirSumEnds(@ForAll @DoubleRange(min = 0, max = 1e6) double first, @ForAll @DoubleRange(min = 1, max = 1e6) double second) {
        WorkCalendar calendar = sevenHours(DayOfWeek.MONDAY);
        double between = calendar.workingFrom(calendar.after(0, first));
        assertThat(calendar.after(between, second)).isCloseTo(calendar.after(0, first + second), within(1e-2));
    }
}
