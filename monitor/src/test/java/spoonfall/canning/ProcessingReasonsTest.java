package spoonfall.canning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said beside a time, and what lies just within what is taken. */
final class ProcessingReasonsTest {
    private static JarBatch batch(
            double elevationM, boolean sterilised, CannerKind canner, Optional<RecipeTime> recipe) {
        return new JarBatch(
                Food.JAM,
                elevationM,
                JarSize.PINT,
                sterilised,
                canner,
                recipe,
                OptionalDouble.of(6),
                OptionalDouble.of(3.2),
                true);
    }

    private static String reasons(JarBatch batch) {
        ProcessingAnswer answer = ProcessingTables.answer(batch);
        assertThat(answer).isInstanceOf(ProcessingAnswer.Time.class);
        return String.join(" ", ((ProcessingAnswer.Time) answer).reasons());
    }

    private static Optional<RecipeTime> recipe(double minutes, OptionalDouble forM) {
        return Optional.of(new RecipeTime(minutes, forM));
    }

    @Test
    void jarsThatWereNotSterilised_areSaidToBeSterilisedByATimeThatIsLongEnough() {
        CannerKind water = CannerKind.BOILING_WATER;
        assertThat(reasons(batch(1240, false, water, Optional.empty()))).contains("10 min sterilise the jars too");
        assertThat(reasons(batch(1240, true, water, Optional.empty()))).doesNotContain("sterilise");
        assertThat(reasons(batch(0, false, water, Optional.empty())))
                .contains("that were not need 10 min")
                .doesNotContain("sterilise the jars too");
    }

    @Test
    void theMedium_isNamed() {
        assertThat(reasons(batch(0, true, CannerKind.BOILING_WATER, Optional.empty())))
                .contains("5 min in boiling water ");
        assertThat(reasons(batch(0, true, CannerKind.STEAM, Optional.empty()))).contains("5 min in steam ");
    }

    @Test
    void aRecipeTimeForThisElevation_needsNoCaution_andOneThatIsNoLonger_doesNotCount() {
        CannerKind water = CannerKind.BOILING_WATER;
        assertThat(reasons(batch(1240, true, water, recipe(15, OptionalDouble.of(1240)))))
                .contains("so it counts")
                .doesNotContain("taken to be for this elevation");
        assertThat(reasons(batch(1240, true, water, recipe(15, OptionalDouble.empty()))))
                .contains("taken to be for this elevation");
        assertThat(reasons(batch(1240, true, water, recipe(10, OptionalDouble.empty()))))
                .contains("of 10 min is no longer, so the table's 10 min count");
    }

    // Half a US pint is 236.6 mL and a pint 473.2 mL (NIST Handbook 44); jars are sold as 237 and 473 mL.
    @ParameterizedTest
    @CsvSource({
        "20, SMALLER",
        "229.9, SMALLER",
        "230, HALF_PINT",
        "237.6, HALF_PINT",
        "238, PINT",
        "473.2, PINT",
        "474, LARGER",
        "5000, LARGER"
    })
    void aJar_isOfTheNextPublishedSize(double millilitres, JarSize size) {
        assertThat(JarSize.holding(millilitres)).isEqualTo(size);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 14})
    void theEndsOfThePhScale_areTaken(double ph) {
        assertThatCode(() -> new JarBatch(
                        Food.JAM,
                        0,
                        JarSize.PINT,
                        true,
                        CannerKind.STEAM,
                        recipe(RecipeTime.MOST_MINUTES, OptionalDouble.empty()),
                        OptionalDouble.of(200 * ph / 14),
                        OptionalDouble.of(ph),
                        true))
                .doesNotThrowAnyException();
        assertThatCode(() -> new RecipeTime(1, OptionalDouble.empty())).doesNotThrowAnyException();
    }
}
