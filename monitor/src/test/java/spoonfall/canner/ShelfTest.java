package spoonfall.canner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.canning.CannerKind;

/** Three jars that came out of the canner: 12 hours of cooling, then lid by lid; 24 hours for what did not seal. */
final class ShelfTest {
    private static final double HOUR_S = 3600;
    private static final String CLOCK = "\\{clock:[0-9.]+\\}";

    private final ToldCanner told = ToldCanner.boilingWater();
    private int taps;

    @BeforeEach
    void process() {
        told.tap(CannerTap.BOILS)
                .passes(600)
                .tap(CannerTap.HEAT_OFF)
                .passes(300)
                .tap(CannerTap.LIFTED);
    }

    private void seal(int jar, Seal seal) {
        taps++;
        told.watch.seal(told.t(), "seal-" + taps, 1, jar, seal);
    }

    private CannerView.OnShelf shelf() {
        return told.view().shelf().get(0);
    }

    @Test
    void jars_coolFor12HoursUntouched() {
        assertThat(told.view().say().state()).isEqualTo("The jars are cooling.");
        assertThatThrownBy(() -> seal(1, Seal.SEALED))
                .isInstanceOf(NotNow.class)
                .hasMessageContaining("12 h 0 min more");
        told.leaps(12 * HOUR_S - 1);
        assertThat(shelf().phase()).isEqualTo(ShelfLoad.Phase.COOLING);
        assertThat(shelf().jars().loadedT()).isLessThanOrEqualTo(shelf().jars().processedT() - 600);
        told.leaps(1);
        assertThat(shelf().phase()).isEqualTo(ShelfLoad.Phase.SEAL_CHECK);
        assertThat(told.view().say().state()).isEqualTo("Check the seals.");
    }

    @Test
    void lidByLid_theSealsAreSaidAndCorrected() {
        told.leaps(13 * HOUR_S);
        seal(1, Seal.SEALED);
        seal(2, Seal.SEALED);
        assertThat(shelf().phase()).isEqualTo(ShelfLoad.Phase.SEAL_CHECK);
        seal(3, Seal.UNSEALED);
        assertThat(shelf().phase()).isEqualTo(ShelfLoad.Phase.DONE);
        assertThat(shelf().text()).startsWith("Jar 3 did not seal.").contains("Refrigerate", "with a new lid");
        seal(3, Seal.SEALED);
        assertThat(shelf().text()).isEqualTo("All 3 jars sealed.");
        told.undo();
        assertThat(shelf().text()).startsWith("Jar 3 did not seal.");
        assertThatThrownBy(() -> seal(4, Seal.SEALED)).hasMessageContaining("jars 1 to 3, and no jar 4");
        assertThatThrownBy(() -> told.watch.seal(told.t(), "x", 7, 1, Seal.SEALED))
                .hasMessageContaining("no load 7");
    }

    /** The page looks for these figures and shows the time of day in their place. */
    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG", "fa-IR", "mr-IN"})
    void untilWhen_isSaidInPlainFigures_whateverTheMachinesLocale(String locale) {
        Locale machines = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag(locale));
        try {
            assertThat(shelf().text()).containsPattern(CLOCK);
            told.leaps(13 * HOUR_S);
            assertThat(shelf().text()).contains("processed again until").containsPattern(CLOCK);
            seal(1, Seal.UNSEALED);
            seal(2, Seal.SEALED);
            seal(3, Seal.SEALED);
            assertThat(shelf().text()).contains("process it again by").containsPattern(CLOCK);
            told.watch.load(told.t(), "second", ToldCanner.load(CannerKind.BOILING_WATER, 4, Optional.empty()));
            told.tap(CannerTap.BOILS);
            assertThat(told.view().say().act()).contains("until").containsPattern(CLOCK);
        } finally {
            Locale.setDefault(machines);
        }
    }

    @Test
    void after24Hours_nothingIsProcessedAgain() {
        told.leaps(24 * HOUR_S);
        assertThat(shelf().text()).contains("must not be processed again", "untasted");
        for (int jar = 1; jar <= 3; jar++) {
            seal(jar, Seal.UNSEALED);
        }
        assertThat(shelf().text()).startsWith("Jars 1, 2, 3 did not seal.").contains("must not be processed again");
    }

    @Test
    void anotherLoad_goesInWhileTheFirstCools() {
        told.watch.load(told.t(), "second", ToldCanner.load(CannerKind.BOILING_WATER, 4, Optional.empty()));
        told.tap(CannerTap.BOILS)
                .passes(600)
                .tap(CannerTap.HEAT_OFF)
                .passes(300)
                .tap(CannerTap.LIFTED);
        assertThat(told.view().shelf()).extracting(one -> one.jars().number()).containsExactly(1, 2);
        told.watch.putAway(told.t(), "away", 1);
        assertThat(told.view().shelf()).extracting(one -> one.jars().number()).containsExactly(2);
        told.undo();
        assertThat(told.view().shelf()).hasSize(2);
    }

    @Test
    void aSecondLoadOnTopOfTheFirst_isRefused() {
        JarLoad load = ToldCanner.load(CannerKind.BOILING_WATER, 4, Optional.empty());
        told.watch.load(told.t(), "second", load);
        assertThatThrownBy(() -> told.watch.load(told.t(), "third", load))
                .isInstanceOf(NotNow.class)
                .hasMessageContaining("there are jars in the canner");
        assertThat(told.watch.load(told.t(), "second", load)).isEmpty();
    }
}
