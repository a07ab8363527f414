package spoonfall.typed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is asked back of a typed reading. Every limit is common practice, no source. */
final class SenseCheckTest {
    /** At 1,240 m. */
    private static final double WATER_BOIL_C = 95.88;

    private static Known after(double lastC, double sinceS) {
        return new Known(WATER_BOIL_C, OptionalDouble.of(lastC), sinceS);
    }

    private static final Known NOTHING = new Known(WATER_BOIL_C, OptionalDouble.empty(), 0);

    private static List<String> labels(Question question) {
        return question.choices().stream().map(Question.Choice::label).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "99.5,100.4C,60",
        "99.5,99.5C,60",
        "99.5,98C,60",
        "99,101C,60",
        "99,212F,60",
        "20,34C,60",
        "90,97C,60",
        "99,60C,300",
        "94,98.5C,60",
        "100,80C,60"
    })
    void nothingIsAsked_whereAPanCanGetThere(double lastC, String typed, double sinceS) {
        assertThat(SenseCheck.ask(Typed.parse(typed), after(lastC, sinceS))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"18C", "68F", "95C", "100.4C", "0C"})
    void nothingIsAsked_ofAFirstReadingThatAPanCanHave(String typed) {
        assertThat(SenseCheck.ask(Typed.parse(typed), NOTHING)).isEmpty();
    }

    @Test
    void aMissingPoint_isAskedAbout_andNothingElseCanBeMeant() {
        Question question =
                SenseCheck.ask(Typed.parse("1004C"), after(99.5, 60)).orElseThrow();
        assertThat(question.about()).isEqualTo(Question.About.POINT);
        assertThat(question.text()).isEqualTo("Did you mean 100.4 °C?");
        assertThat(labels(question)).containsExactly("Yes, 100.4 °C", "Neither");
        assertThat(question.choices().get(0).reading().orElseThrow().wire()).isEqualTo("100.4C");
        assertThat(question.choices().get(1).reading()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"10.04C,100.4C", "10.4C,104C", "2127F,212.7F", "21.27F,212.7F", "10040C,100.4C"})
    void aPointInTheWrongPlace_isAskedAbout(String typed, String meant) {
        Question question = SenseCheck.ask(Typed.parse(typed), after(101, 60)).orElseThrow();
        assertThat(question.about()).isEqualTo(Question.About.POINT);
        assertThat(question.choices().get(0).reading().orElseThrow().wire()).isEqualTo(meant);
    }

    @ParameterizedTest
    @CsvSource({"212C,212F", "214C,214F", "216C,216F", "100F,100C", "100.4F,100.4C"})
    void theOtherUnit_isAskedAbout(String typed, String meant) {
        Question question = SenseCheck.ask(Typed.parse(typed), after(100, 60)).orElseThrow();
        assertThat(question.about()).isEqualTo(Question.About.UNIT);
        assertThat(question.text()).isEqualTo(meant.endsWith("F") ? "Is that °F?" : "Is that °C?");
        assertThat(question.choices().get(0).reading().orElseThrow().wire()).isEqualTo(meant);
    }

    @ParameterizedTest
    @CsvSource({"212C,UNIT,212F", "219C,UNIT,219F", "1004C,POINT,100.4C", "2127F,POINT,212.7F"})
    void theFirstReadingOfAll_isAskedAboutToo(String typed, Question.About about, String meant) {
        Question question = SenseCheck.ask(Typed.parse(typed), NOTHING).orElseThrow();
        assertThat(question.about()).isEqualTo(about);
        assertThat(question.choices().get(0).reading().orElseThrow().wire()).isEqualTo(meant);
    }

    @Test
    void aJump_isAskedAbout_andMayBeSo() {
        Question question = SenseCheck.ask(Typed.parse("108C"), after(99.5, 60)).orElseThrow();
        assertThat(question.about()).isEqualTo(Question.About.JUMP);
        assertThat(question.text()).isEqualTo("Is that right?");
        assertThat(question.detail()).isEqualTo("You typed 108 °C; it was 99.5 °C the time before.");
        assertThat(labels(question)).containsExactly("Yes, 108 °C", "No, type it again");
        assertThat(SenseCheck.ask(Typed.parse("70C"), after(99.5, 30))).isPresent();
    }

    @Test
    void whatWasTypedLongAgo_saysNothingOfAJump() {
        assertThat(SenseCheck.ask(Typed.parse("20C"), after(104, 60))).isPresent();
        assertThat(SenseCheck.ask(Typed.parse("20C"), after(104, 3600))).isEmpty();
    }

    @Test
    void whatNobodyCanMean_cannotBeTaken() {
        Question question = SenseCheck.ask(Typed.parse("700C"), NOTHING).orElseThrow();
        assertThat(question.choices())
                .noneMatch(
                        choice -> choice.reading().map(Typed::wire).orElse("").equals("700C"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "C", "100.4", "100.4K", "1.0.4C", "NaNC", "1e3C", "99999999C", "hundred F"})
    void whatIsNoTemperature_isRefusedWithAGoodOne(String text) {
        assertThatThrownBy(() -> Typed.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("100.4C or 212.7F");
    }

    @Test
    void aComma_isAPoint() {
        assertThat(Typed.parse("100,4 °c").wire()).isEqualTo("100.4C");
        assertThat(Typed.parse("212.70F").text()).isEqualTo("212.7 °F");
        assertThat(Typed.parse("100C").text()).isEqualTo("100 °C");
    }
}
