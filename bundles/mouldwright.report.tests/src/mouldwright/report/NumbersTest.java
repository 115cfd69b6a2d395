package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Numbers in files: the shortest text that reads back the same, as the Java language specifies it for doubles. */
class NumbersTest {

    @Property void everyNumberReadsBackAsItself(@ForAll double number) {
        if (Double.isFinite(number)) {
            assertThat(Double.parseDouble(Numbers.text(number))).isEqualTo(number == 0 ? 0.0 : number);
        }
    }

    @Example void aWholeNumberHasNoPoint() {
        assertThat(Numbers.text(3)).isEqualTo("3");
        assertThat(Numbers.text(1200)).isEqualTo("1200");
    }

    @Example void asMuchIsWrittenAsIsNeeded() {
        assertThat(Numbers.text(0.1)).isEqualTo("0.1");
        assertThat(Numbers.text(0.1 + 0.2)).isEqualTo("0.30000000000000004");
        assertThat(Numbers.text(9.66e-6)).isEqualTo("0.00000966");
    }

    @Example void nothingHasNoSign() {
        assertThat(Numbers.text(-0.0)).isEqualTo("0");
    }

    @Example void whatIsNoNumberIsNotWritten() {
        assertThatThrownBy(() -> Numbers.text(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
