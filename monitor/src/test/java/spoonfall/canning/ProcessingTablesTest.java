package spoonfall.canning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The published times, row by row, with the edges of the rows; and everything that is refused. */
final class ProcessingTablesTest {
    /** "key=value" pairs over a batch that the tables cover. */
    private static Typed typed(String... pairs) {
        UnaryOperator<String> usual = key -> switch (key) {
            case "elevation" -> "1240m";
            case "jar" -> "half-pint";
            case "sterilised" -> "no";
            case "canner" -> "boiling-water";
            case "headspace" -> "1/4in";
            default -> "";
        };
        UnaryOperator<String> value = key -> Arrays.stream(pairs)
                .filter(pair -> pair.startsWith(key + "="))
                .map(pair -> pair.substring(key.length() + 1))
                .findFirst()
                .orElse(usual.apply(key));
        List<Optional<String>> all = List.of(
                        "food",
                        "elevation",
                        "jar",
                        "sterilised",
                        "canner",
                        "recipe",
                        "recipe-for",
                        "headspace",
                        "ph",
                        "tested")
                .stream()
                .map(value)
                .map(text -> Optional.of(text).filter(one -> !one.isEmpty()))
                .toList();
        return new Typed(
                all.get(0),
                all.get(1),
                all.get(2),
                all.get(3),
                all.get(4),
                all.get(5),
                all.get(6),
                all.get(7),
                all.get(8),
                all.get(9));
    }

    private static ProcessingAnswer.Time time(String... pairs) {
        ProcessingAnswer answer = ProcessingTables.answer(typed(pairs).batch());
        assertThat(answer).isInstanceOf(ProcessingAnswer.Time.class);
        return (ProcessingAnswer.Time) answer;
    }

    private static String refused(String... pairs) {
        ProcessingAnswer answer = ProcessingTables.answer(typed(pairs).batch());
        assertThat(answer).isInstanceOf(ProcessingAnswer.None.class);
        ProcessingAnswer.None none = (ProcessingAnswer.None) answer;
        assertThat(none.why()).endsWith(".").doesNotContain("\n");
        assertThat(none.ask()).contains("extension service", "food-safety authority");
        return none.text();
    }

    // USDA AIB 539, jams and jellies, hot pack, half-pints or pints: 0-1,000 ft 5 min, 1,001-6,000 ft 10, above 15;
    // the same in Oklahoma State Univ. Extension. 10 min for jars that were not sterilised: NCHFP.
    @ParameterizedTest
    @CsvSource({
        "0ft, yes, 5",
        "0ft, no, 10",
        "-3m, yes, 5",
        "1000ft, yes, 5",
        "1000ft, no, 10",
        "304.8m, yes, 5",
        "1000.5ft, yes, 10",
        "1001ft, yes, 10",
        "1001ft, no, 10",
        "1240m, yes, 10",
        "6000ft, yes, 10",
        "6000ft, no, 10",
        "1828.8m, no, 10",
        "6000.5ft, no, 15",
        "6001ft, yes, 15",
        "6001ft, no, 15",
        "10000ft, no, 15",
        "3048m, no, 15"
    })
    void boilingWater_takesThePublishedTime(String elevation, String sterilised, int minutes) {
        for (String food : List.of("marmalade", "jam", "jelly")) {
            for (String jar : List.of("smaller", "half-pint", "pint")) {
                assertThat(time("elevation=" + elevation, "sterilised=" + sterilised, "food=" + food, "jar=" + jar)
                                .minutes())
                        .isEqualTo(minutes);
            }
        }
    }

    // Michigan State Univ. Extension: 10 min, and 1 min for each 1,000 ft
    @ParameterizedTest
    @CsvSource({"0ft,10", "999ft,10", "1000ft,11", "1001ft,11", "1240m,14", "6000ft,16", "6001ft,16", "10000ft,20"})
    void emptyJars_areSterilisedLongerHigherUp(String elevation, int minutes) {
        assertThat(time("elevation=" + elevation).steriliseMinutes()).isEqualTo(minutes);
    }

    @ParameterizedTest
    @CsvSource({
        "15min, '', 15",
        "15, '', 15",
        "10.2min, '', 11",
        "8min, '', 10",
        "10min, 0ft, 10",
        "5min, 0ft, 10",
        "20min, 4000ft, 20",
        "20min, 7000ft, 20",
        "120min, '', 120"
    })
    void theRecipesOwnTime_countsWhenItIsLonger_andNeverShortens(String recipe, String forElevation, int minutes) {
        assertThat(time("recipe=" + recipe, "recipe-for=" + forElevation).minutes())
                .isEqualTo(minutes);
    }

    @ParameterizedTest
    @CsvSource({"1240m,15min,0ft", "1240m,11min,1000ft", "6001ft,12min,6000ft", "2000m,20min,100m"})
    void aLongerRecipeTimeForALowerPlace_isNotGuessedUpwards(String elevation, String recipe, String forElevation) {
        assertThat(refused("elevation=" + elevation, "recipe=" + recipe, "recipe-for=" + forElevation))
                .contains("is for a lower place, where water boils hotter");
    }

    @Test
    void aLongerRecipeTimeWithoutAnElevation_isTakenWithACaution() {
        assertThat(String.join(" ", time("recipe=15min").reasons()))
                .contains("15 min is longer than the table's 10 min, so it counts", "taken to be for this elevation");
    }

    @Test
    void theReasons_haveNumbersAndTheSources() {
        ProcessingAnswer.Time time = time("elevation=500ft");
        assertThat(String.join(" ", time.reasons()))
                .contains("Marmalade in half-pint jars (237 mL)", "up to 1,000 ft", "152 m (500 ft)", "need 10 min");
        assertThat(String.join(" ", time.sources())).contains("Bulletin 539", "National Center");
        assertThat(String.join(" ", time.cautions())).contains("Never shorten a tested time", "full rolling boil");
    }

    // NCHFP and Univ. of Wisconsin: the times of boiling water, pH 4.6 or below, a tested recipe, at most 45 min in all
    @ParameterizedTest
    @CsvSource({"4.6,1240m,'',10", "3.1,6001ft,'',15", "3.1,1240m,45min,45", "3.1,0ft,'',10"})
    void steam_takesTheTimesOfBoilingWater_upTo45Minutes(String ph, String elevation, String recipe, int minutes) {
        ProcessingAnswer.Time time =
                time("canner=steam", "ph=" + ph, "tested=yes", "elevation=" + elevation, "recipe=" + recipe);
        assertThat(time.minutes()).isEqualTo(minutes);
        assertThat(String.join(" ", time.sources())).contains("University of Wisconsin");
        assertThat(String.join(" ", time.cautions())).contains("steam", "45 min");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "canner=steam,tested=yes|nobody said how acid",
                "canner=steam,tested=yes,ph=4.7|At pH 4.7 it is not acid enough",
                "canner=steam,ph=3.1|tested for a boiling-water canner",
                "canner=steam,ph=3.1,tested=no|tested for a boiling-water canner",
                "canner=steam,ph=3.1,tested=yes,recipe=46min|45 min at most",
                "canner=boiling-water,ph=4.61|not acid enough",
                "food=other|for no other food",
                "jar=quart|larger than a pint",
                "jar=larger|larger than a pint",
                "jar=500mL|larger than a pint",
                "headspace=|how much headspace",
                "headspace=1/2in|not 12.7 mm",
                "headspace=1/8in|not 3.2 mm",
                "headspace=5.9mm|not 5.9 mm",
                "elevation=10001ft|above 10,000 ft",
                "elevation=3048.1m|above 10,000 ft",
                "elevation=5500m|5,500 m (18,045 ft)"
            })
    void whatIsNotPublished_isRefusedWithWhomToAsk(String pairs, String words) {
        assertThat(refused(pairs.split(",", -1))).contains(words);
    }

    @ParameterizedTest
    @CsvSource({"250mL,PINT", "237mL,HALF_PINT", "236ml,HALF_PINT", "125 mL,SMALLER", "473mL,PINT", "474mL,LARGER"})
    void aJarInMillilitres_takesTheNextPublishedSize(String text, JarSize size) {
        assertThat(typed("jar=" + text).batch().jar()).isEqualTo(size);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/4in", "0.25in", ".25 in", "1/4\"", "6mm", "6.35 mm", "0.6cm"})
    void headspace_isUnderstoodInInchesAndMillimetres(String text) {
        assertThat(time("headspace=" + text).minutes()).isEqualTo(10);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "elevation=1240|needs a unit",
                "elevation=9000m|is not where anyone cooks",
                "food=fish|unknown food \"fish\"; it can be marmalade, jam, jelly, other",
                "jar=bucket|unknown jar \"bucket\"; it can be smaller, half-pint, pint, larger",
                "jar=0mL|a jar holds 20 to 5000 mL",
                "sterilised=maybe|sterilised must be yes or no",
                "canner=oven|unknown canner \"oven\"; it can be boiling-water, steam",
                "recipe=0min|1 to 120 minutes",
                "recipe=121min|1 to 120 minutes",
                "recipe=ten|recipe time \"ten\" is not understood; write it like 10min",
                "recipe-for=0m|give the recipe's time too",
                "headspace=1/0in|a headspace must be 0 to 200 mm",
                "headspace=.in|headspace \".in\" is not understood",
                "headspace=6|headspace \"6\" is not understood; write it like 1/4in or 6mm",
                "ph=15|a pH must be 0 to 14",
                "ph=sour|pH \"sour\" is not understood"
            })
    void nonsense_isRefusedInOneLine(String pair, String words) {
        assertThatThrownBy(() -> typed(pair).batch())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(words)
                .hasMessageNotContaining("\n");
    }
}
