package spoonfall.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spoonfall.book.Firmness;
import spoonfall.learn.CookFacts.Base;
import spoonfall.learn.CookFacts.From;
import spoonfall.learn.CookFacts.Tested;

/** Why a batch set as it did, and what to do with it. */
final class DiagnosisTest {
    private static final Base GIVEN = new Base(From.GIVEN, 101325, 0.1, "1,013 hPa on the barometer");
    private static final Tested SET = new Tested(OptionalDouble.of(4.4), Optional.of(true));

    private static CookFacts facts(double finalRiseC, double boilMinutes, Base base, double probeHighC) {
        return facts(finalRiseC, boilMinutes, 0, base, OptionalDouble.of(probeHighC), List.of(SET), Optional.empty());
    }

    private static CookFacts facts(
            double finalRiseC,
            double boilMinutes,
            double earlierMinutes,
            Base base,
            OptionalDouble probeHighC,
            List<Tested> tests,
            Optional<Evidence> plan) {
        return new CookFacts(
                base,
                4.44,
                OptionalDouble.of(finalRiseC),
                OptionalDouble.of(boilMinutes),
                earlierMinutes,
                OptionalDouble.of(0),
                tests,
                false,
                false,
                probeHighC,
                plan);
    }

    private static Diagnosis diagnose(CookFacts facts, Firmness set) {
        return Diagnosis.of(facts, Optional.of(set), Optional.empty());
    }

    private static List<String> causes(Diagnosis diagnosis) {
        return diagnosis.findings().stream()
                .filter(Finding::cause)
                .map(Finding::id)
                .toList();
    }

    @Test
    void aSoftBatch_thatStoppedShort_isToldSo_andHowFarToRecook() {
        Diagnosis diagnosis =
                diagnose(facts(3.24, 20, 0, GIVEN, OptionalDouble.empty(), List.of(), Optional.empty()), Firmness.SOFT);
        assertThat(diagnosis.headline()).isEqualTo("It came out soft. It stopped {diff:1.2} short of its target.");
        Finding finding = diagnosis.findings().get(0);
        assertThat(finding.evidence())
                .isEqualTo("The highest rise that lasted was {diff:3.2} above boiling water; it was to be {diff:4.4}.");
        assertThat(diagnosis.recookToC()).hasValueCloseTo(4.4, within(1e-9));
        // docs/science.md, a fifth inverted: 60 % at 3.52 °C and 65 % at 4.58 °C, so 58.6 % at 3.24 and 64.2 % at 4.4;
        // 1 - 58.6 / 64.2 of each kilogram leaves.
        assertThat(String.join(" ", diagnosis.next()))
                .contains("about 90 g of water has to leave each kilogram")
                .contains("4 to 6 cups")
                .contains("syrup");
        assertThat(String.join(" ", diagnosis.cautions()))
                .contains("sticks and burns")
                .contains("new lids")
                .contains("food-safety authority");
    }

    @Test
    void aLongBoil_spendsThePectin_andIsNotBoiledAgain() {
        Diagnosis diagnosis = diagnose(facts(4.4, 55, GIVEN, 0), Firmness.RUNNY);
        assertThat(causes(diagnosis)).contains("long-boil");
        assertThat(diagnosis.findings().get(0).text()).startsWith("It boiled for 55 min with its sugar: long boiling");
        assertThat(diagnosis.recookToC()).isEmpty();
        assertThat(String.join(" ", diagnosis.next()))
                .contains("Boiling it again will not help")
                .contains("added pectin");
    }

    @Test
    void aRecook_countsTheMinutesOfTheCookBefore() {
        CookFacts facts = facts(3.0, 20, 35, GIVEN, OptionalDouble.empty(), List.of(), Optional.empty());
        Diagnosis diagnosis = diagnose(facts, Firmness.SOFT);
        assertThat(causes(diagnosis)).contains("long-boil", "stopped-short");
        assertThat(diagnosis.findings().toString())
                .contains("It boiled for 55 min")
                .contains("35 min of them were in the cook");
        assertThat(diagnosis.recookToC()).isEmpty();
    }

    @Test
    void aThermometerThatReadHigh_isACause_unlessItMeasuredTheBoilingWaterToo() {
        Diagnosis diagnosis = diagnose(facts(4.4, 20, GIVEN, 0.8), Firmness.SOFT);
        assertThat(causes(diagnosis)).contains("probe-high");
        assertThat(diagnosis.findings().toString())
                .contains("The thermometer read {diff:0.8} high, so it truly stopped at {diff:3.6}.");
        assertThat(diagnosis.recookToC()).isPresent();
        Base measured = new Base(From.MEASURED, 101325, 0.1, "boiling water by this thermometer");
        assertThat(causes(diagnose(facts(4.4, 20, measured, 0.8), Firmness.SOFT)))
                .doesNotContain("probe-high");
        assertThat(causes(diagnose(facts(4.4, 20, GIVEN, -0.8), Firmness.STIFF)))
                .contains("probe-low");
    }

    @Test
    void aKitchenThatNobodyPlaced_explainsAStiffBatch_andNotASoftOne() {
        Base assumed = new Base(From.ASSUMED, 101325, 3, "sea level assumed");
        assertThat(causes(diagnose(facts(4.4, 20, assumed, 0), Firmness.STIFF))).contains("base-assumed");
        assertThat(causes(diagnose(facts(4.4, 20, assumed, 0), Firmness.SOFT))).doesNotContain("base-assumed");
        Base weather = new Base(From.GIVEN, 87000, 0.4, "1,240 m above sea level");
        assertThat(diagnose(facts(4.4, 20, weather, 0), Firmness.SOFT).findings())
                .extracting(Finding::id)
                .contains("base-weather");
    }

    @Test
    void setTests_tellOnThemselves() {
        List<Tested> notYet = List.of(new Tested(OptionalDouble.of(4.0), Optional.of(false)));
        CookFacts stopped = facts(4.4, 20, 0, GIVEN, OptionalDouble.empty(), notYet, Optional.empty());
        assertThat(causes(diagnose(stopped, Firmness.SOFT))).contains("test-not-yet");
        assertThat(causes(diagnose(facts(4.4, 20, GIVEN, 0), Firmness.SOFT))).contains("test-too-kind");
        List<Tested> early = List.of(new Tested(OptionalDouble.of(3.9), Optional.of(true)));
        CookFacts on = facts(5.0, 20, 0, GIVEN, OptionalDouble.empty(), early, Optional.empty());
        assertThat(causes(diagnose(on, Firmness.STIFF))).contains("boiled-past", "boiled-on");
        CookFacts none = facts(4.4, 20, 0, GIVEN, OptionalDouble.empty(), List.of(), Optional.empty());
        assertThat(diagnose(none, Firmness.SOFT).findings())
                .extracting(Finding::id)
                .contains("no-test");
    }

    @Test
    void aStiffBatch_isNotBoiledAgain() {
        Diagnosis diagnosis = diagnose(facts(6.0, 20, GIVEN, 0), Firmness.STIFF);
        assertThat(causes(diagnosis)).contains("boiled-past");
        assertThat(String.join(" ", diagnosis.next()))
                .contains("Overcooked cannot be mended")
                .contains("stop sooner");
        assertThat(diagnosis.recookToC()).isEmpty();
    }

    @Test
    void whatTheFruitNeeds_isMeasuredByTheOtherBatches() {
        List<Batch> batches = List.of(
                new Batch(1, "quince", 4.4, Firmness.SOFT),
                new Batch(2, "quince", 4.5, Firmness.SOFT),
                new Batch(3, "quince", 5.1, Firmness.RIGHT),
                new Batch(4, "quince", 5.2, Firmness.RIGHT));
        Optional<Proposal> learnt = Optional.of(Learning.from(batches).propose("quince"));
        Diagnosis diagnosis = Diagnosis.of(facts(4.4, 20, GIVEN, 0), Optional.of(Firmness.SOFT), learnt);
        assertThat(causes(diagnosis)).contains("below-need");
        assertThat(diagnosis.findings().toString())
                .contains("By your 4 batches of it, \"right\" is likeliest at {diff:");
        assertThat(diagnosis.recookToC()).hasValueCloseTo(learnt.get().riseC(), within(1e-9));
    }

    @Test
    void thePlan_bearsWitness() {
        Evidence plan = new Evidence() {
            @Override
            public OptionalDouble sugarToFruit() {
                return OptionalDouble.of(0.4);
            }

            @Override
            public Optional<Setting> setting() {
                return Optional.of(Setting.NEEDS);
            }

            @Override
            public OptionalDouble ph() {
                return OptionalDouble.of(3.8);
            }
        };
        CookFacts facts = facts(4.4, 20, 0, GIVEN, OptionalDouble.empty(), List.of(SET), Optional.of(plan));
        Diagnosis diagnosis = diagnose(facts, Firmness.SOFT);
        assertThat(causes(diagnosis)).contains("sugar-low", "pectin", "acid");
        assertThat(diagnosis.findings())
                .extracting(Finding::evidence)
                .allSatisfy(evidence -> assertThat(evidence).isNotEmpty());
    }

    @Test
    void whatNobodySaid_isAsked_andARightBatchNeedsNothing() {
        Diagnosis unknown = Diagnosis.of(facts(4.4, 20, GIVEN, 0), Optional.empty(), Optional.empty());
        assertThat(unknown.headline()).isEqualTo("Nobody has said how it set.");
        assertThat(causes(unknown)).isEmpty();
        assertThat(unknown.next())
                .containsExactly("Look at a jar after a day, and say how it has set: then more can be said of why.");
        Diagnosis right = diagnose(facts(4.4, 20, GIVEN, 0), Firmness.RIGHT);
        assertThat(right.next()).containsExactly("Nothing is to be mended.");
        assertThat(right.cautions()).isEmpty();
    }

    @Test
    void aBatchThatDidEverythingRight_pointsToTheFruit() {
        Diagnosis diagnosis =
                diagnose(facts(4.4, 20, 0, GIVEN, OptionalDouble.empty(), List.of(), Optional.empty()), Firmness.SOFT);
        assertThat(causes(diagnosis)).isEmpty();
        assertThat(diagnosis.headline()).contains("look to the fruit, its ripeness, pectin and acid");
    }
}
