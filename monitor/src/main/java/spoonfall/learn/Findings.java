package spoonfall.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spoonfall.book.Firmness;
import spoonfall.learn.CookFacts.From;
import spoonfall.learn.CookFacts.Tested;

/** Goes through the facts of a cook and says what may have made the set what it is. */
final class Findings {
    /** Less than that in °C is no difference: a thermometer and a stir are not better. */
    static final double MATTERS_C = 0.3;

    /** Boiling with sugar for longer than that, in minutes, is long (common practice, no source). */
    static final double LONG_MIN = 30;

    /** An elevation without the weather leaves that much, in °C (docs/science.md: 15 hPa). */
    private static final double WEATHER_C = 0.35;

    /** Usual are 60 g of sugar or more to 100 g of fruit (USDA's 3/4 to 1 cup to a cup of juice; the ratio is from memory). */
    private static final double LITTLE_SUGAR = 0.57;

    private static final double LEAST_PH = 2.8;
    private static final double MOST_PH = 3.4;

    private final CookFacts facts;
    private final boolean soft;
    private final boolean firm;
    private final List<Finding> found = new ArrayList<>();

    private Findings(CookFacts facts, Optional<Firmness> set) {
        this.facts = facts;
        soft = set.filter(it -> it.compareTo(Firmness.RIGHT) < 0).isPresent();
        firm = set.filter(it -> it.compareTo(Firmness.RIGHT) > 0).isPresent();
    }

    /** All that is to be said, causes first. */
    static List<Finding> of(CookFacts facts, Optional<Firmness> set, Optional<Proposal> learnt) {
        Findings findings = new Findings(facts, set);
        findings.stop();
        learnt.filter(it -> it.batches() > 0).ifPresent(findings::besideTheOthers);
        findings.boiling();
        findings.probe();
        findings.base();
        findings.tests();
        findings.pan();
        facts.plan().ifPresent(findings::plan);
        return findings.found.stream()
                .sorted(Comparator.comparing(Finding::cause).reversed())
                .toList();
    }

    private void say(String id, boolean cause, String text, String evidence) {
        found.add(new Finding(id, cause, text, evidence));
    }

    private static String words(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private void stop() {
        if (facts.finalRiseC().isEmpty()) {
            say(
                    "never-boiled",
                    soft,
                    "The record shows no boil, so nothing can be said of where it stopped.",
                    "No rise that lasted is in the record.");
            return;
        }
        double finalC = facts.finalRiseC().getAsDouble();
        double overC = finalC - facts.targetRiseC();
        String evidence = words(
                "The highest rise that lasted was {diff:%.1f} above boiling water; it was to be {diff:%.1f}.",
                finalC, facts.targetRiseC());
        if (overC < -MATTERS_C) {
            say("stopped-short", soft, words("It stopped {diff:%.1f} short of its target.", -overC), evidence);
        } else if (overC > MATTERS_C) {
            String past = facts.pastMinutes().isPresent()
                    ? words(" It boiled on for %.0f min.", facts.pastMinutes().getAsDouble())
                    : "";
            say("boiled-past", firm, words("It went {diff:%.1f} past its target.%s", overC, past), evidence);
        }
    }

    private void besideTheOthers(Proposal learnt) {
        if (facts.trueRiseC().isEmpty()) {
            return;
        }
        double finalC = facts.trueRiseC().getAsDouble();
        String evidence = words(
                "By %s, \"right\" is likeliest at {diff:%.1f}, and lies between {diff:%.1f} and {diff:%.1f} nine times in ten.",
                learnt.batches() == 1 ? "your one batch of it" : "your " + learnt.batches() + " batches of it",
                learnt.riseC(),
                learnt.bestFromC(),
                learnt.bestToC());
        double overC = finalC - learnt.riseC();
        if (overC < -MATTERS_C) {
            say("below-need", soft, words("It stopped {diff:%.1f} short of what this fruit needs.", -overC), evidence);
        } else if (overC > MATTERS_C) {
            say("beyond-need", firm, words("It went {diff:%.1f} past what this fruit needs.", overC), evidence);
        }
    }

    private void boiling() {
        double minutes = facts.allMinutes().orElse(0);
        if (minutes <= LONG_MIN) {
            return;
        }
        String earlier = facts.earlierMinutes() > 0
                ? words(" %.0f min of them were in the cook that it goes on with.", facts.earlierMinutes())
                : "";
        say(
                "long-boil",
                soft,
                words(
                        "It boiled for %.0f min with its sugar: long boiling breaks pectin down, and darkens the taste.",
                        minutes),
                words(
                        "Minutes from the record.%s That pectin breaks down: USDA AIB 539; that %.0f min is long: common"
                                + " practice, no source.",
                        earlier, LONG_MIN));
    }

    private void probe() {
        double highC = facts.probeErrorC();
        if (Math.abs(highC) < MATTERS_C || facts.finalRiseC().isEmpty()) {
            return;
        }
        say(
                highC > 0 ? "probe-high" : "probe-low",
                highC > 0 ? soft : firm,
                words(
                        "The thermometer read {diff:%.1f} %s, so it truly stopped at {diff:%.1f}.",
                        Math.abs(highC),
                        highC > 0 ? "high" : "low",
                        facts.finalRiseC().getAsDouble() - highC),
                "Its next calibration says so.");
    }

    private void base() {
        if (facts.base().from() == From.ASSUMED) {
            say(
                    "base-assumed",
                    firm,
                    "Nobody said how high the kitchen is, so sea level was assumed. In a higher kitchen water boils cooler,"
                            + " and the batch went further than the record shows: {diff:1.0} further for each 300 m (1,000 ft).",
                    "The record says: " + facts.base().detail() + ". By the standard atmosphere, ISO 2533.");
        } else if (facts.base().from() == From.GIVEN && facts.base().doubtC() >= WEATHER_C) {
            say(
                    "base-weather",
                    false,
                    words(
                            "The weather was not known: boiling water that day may have been {diff:%.1f} off, either way."
                                    + " Check it in boiling water before the next batch.",
                            facts.base().doubtC()),
                    "The record says: " + facts.base().detail() + ".");
        }
    }

    private void tests() {
        List<Tested> told =
                facts.tests().stream().filter(test -> test.set().isPresent()).toList();
        if (told.isEmpty()) {
            say(
                    "no-test",
                    false,
                    "No set test was told. A cold plate or a spoon shows what the thermometer cannot.",
                    "The record has none with an answer.");
            return;
        }
        Tested last = told.get(told.size() - 1);
        boolean set = last.set().orElseThrow();
        String where = last.riseC().isPresent()
                ? words(" at {diff:%.1f} above boiling water", last.riseC().getAsDouble())
                : "";
        if (!set) {
            say(
                    "test-not-yet",
                    soft,
                    "The last set test" + where + " said not yet, and the pan came off the heat.",
                    told.size() == 1 ? "One set test in the record." : told.size() + " set tests in the record.");
        } else if (soft) {
            say(
                    "test-too-kind",
                    true,
                    "The set test" + where + " said set, but the batch is soft: leave the plate longer, take a thinner"
                            + " dab, and look for a wrinkle that stays.",
                    "Common practice, no source.");
        }
        told.stream()
                .filter(test -> test.set().orElseThrow() && test.riseC().isPresent())
                .findFirst()
                .ifPresent(this::boiledOn);
    }

    private void boiledOn(Tested first) {
        double onC = facts.finalRiseC().orElse(0) - first.riseC().orElseThrow();
        if (onC > MATTERS_C) {
            say(
                    "boiled-on",
                    firm,
                    words("It had set by the test, and went {diff:%.1f} further.", onC),
                    words(
                            "A set test at {diff:%.1f} above boiling water said set.",
                            first.riseC().getAsDouble()));
        }
    }

    private void pan() {
        if (facts.scorched()) {
            say(
                    "scorched",
                    false,
                    "The base may have caught: taste for caramel. What sticks there also makes the thermometer read high.",
                    "The alarm \"the base may be catching\" is in the record.");
        }
        if (facts.stalled()) {
            say(
                    "stalled",
                    false,
                    "The climb stood still for a while: low heat makes a long boil.",
                    "The alarm \"it stopped climbing\" is in the record.");
        }
    }

    private void plan(Evidence plan) {
        if (plan.sugarToFruit().orElse(1) < LITTLE_SUGAR) {
            say(
                    "sugar-low",
                    soft,
                    words(
                            "There were %.0f g of sugar to 100 g of fruit, and usual are 60 or more: too little sugar sets"
                                    + " badly. Never cut the sugar of a tested recipe.",
                            100 * plan.sugarToFruit().getAsDouble()),
                    "The plan of the batch; USDA AIB 539, the ratio from memory.");
        }
        plan.setting()
                .filter(setting -> setting != Evidence.Setting.ENOUGH)
                .ifPresent(setting -> say(
                        "pectin",
                        soft && setting == Evidence.Setting.NEEDS,
                        setting == Evidence.Setting.NEEDS
                                ? "Most of this fruit does not set by itself: it needs acid, pectin or both, by a tested recipe."
                                : "Most of this fruit may be low in acid or pectin, the more so when it is ripe.",
                        "The plan of the batch; So Easy to Preserve."));
        if (plan.ph().orElse(3) > MOST_PH || plan.ph().orElse(3) < LEAST_PH) {
            double ph = plan.ph().getAsDouble();
            say(
                    "acid",
                    soft,
                    words("At pH %.1f it %s: a set wants 2.8 to 3.4.", ph, ph > MOST_PH ? "sets badly" : "may weep"),
                    "The plan of the batch; So Easy to Preserve.");
        }
    }
}
