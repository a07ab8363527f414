package spoonfall.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.book.Firmness;
import spoonfall.physics.GelPoint;
import spoonfall.physics.Syrup;

/** What to do with a batch, and what to keep in mind while doing it. */
final class Mending {
    /** Closer than that in °C to where it is to go, boiling again gives nothing. */
    private static final double NEAR_C = 0.3;

    /** Boiled longer than that with its sugar, in minutes, a batch has lost too much pectin (common practice, no source). */
    private static final double SPENT_MIN = 45;

    private final CookFacts facts;
    private final Optional<Proposal> learnt;

    private Mending(CookFacts facts, Optional<Proposal> learnt) {
        this.facts = facts;
        this.learnt = learnt;
    }

    /** What to do, in order. */
    static List<String> of(CookFacts facts, Optional<Firmness> set, Optional<Proposal> learnt) {
        Mending mending = new Mending(facts, learnt);
        if (set.isEmpty()) {
            return List.of("Look at a jar after a day, and say how it has set: then more can be said of why.");
        }
        return switch (set.get()) {
            case RUNNY, SOFT -> mending.thicken();
            case RIGHT -> List.of("Nothing is to be mended.");
            case FIRM, STIFF -> mending.pastMending();
        };
    }

    /** The rise in °C to boil it to again; empty if that would not help. */
    static OptionalDouble recookToC(CookFacts facts, Optional<Firmness> set, Optional<Proposal> learnt) {
        boolean soft = set.filter(it -> it.compareTo(Firmness.RIGHT) < 0).isPresent();
        Mending mending = new Mending(facts, learnt);
        return soft && mending.boilingHelps() ? OptionalDouble.of(mending.aimC()) : OptionalDouble.empty();
    }

    private double aimC() {
        double wanted = learnt.filter(it -> it.batches() > 0)
                .map(Proposal::riseC)
                .orElse(Math.max(facts.targetRiseC(), GelPoint.DEFAULT_RISE_C));
        return Math.round(SafeBand.within(wanted) * 10) / 10.0;
    }

    private boolean boilingHelps() {
        return facts.trueRiseC().isPresent()
                && facts.allMinutes().orElse(0) <= SPENT_MIN
                && facts.trueRiseC().getAsDouble() < aimC() - NEAR_C;
    }

    private List<String> thicken() {
        List<String> said = new ArrayList<>();
        said.add("Wait first: a set goes on for a day or two (common practice, no source).");
        if (boilingHelps()) {
            double fromC = facts.trueRiseC().orElseThrow();
            said.add(String.format(
                    Locale.ROOT,
                    "Recook it: bring it back to the boil, stirring, and boil it hard to {diff:%.1f} above today's boiling"
                            + " water. It stopped at {diff:%.1f}; about %d g of water has to leave each kilogram. Test the set"
                            + " on the way.",
                    aimC(),
                    fromC,
                    waterG(fromC)));
            said.add(
                    "Recook 4 to 6 cups (1 to 1.4 L) at a time at most, by tested directions for remaking soft jelly (USDA AIB 539;"
                            + " Michigan State University Extension).");
        } else {
            said.add(whyNotBoil()
                    + " Remake it with added pectin and acid by tested directions (USDA AIB 539), a cup first to see whether it"
                    + " sets.");
        }
        said.add("Or keep it as it is, and use it as a syrup: opened, in the fridge.");
        return List.copyOf(said);
    }

    private String whyNotBoil() {
        if (facts.allMinutes().orElse(0) > SPENT_MIN) {
            return String.format(
                    Locale.ROOT,
                    "Boiling it again will not help: after %.0f min much of the pectin is broken down, and more boiling breaks"
                            + " more.",
                    facts.allMinutes().orElse(0));
        }
        return facts.trueRiseC().isEmpty()
                ? "The record does not say how far it was boiled, so it cannot say how far to go on."
                : "Boiling it again will not help much: it was boiled as far as it should be, so pectin or acid is what is missing.";
    }

    /** Grams of water, in tens, that leave a kilogram on the way: with the solids kept, the mass goes as their fractions. */
    private long waterG(double fromC) {
        double pressurePa = facts.base().pressurePa();
        double from = Syrup.solids(pressurePa, fromC, Syrup.TYPICAL_INVERTED);
        double to = Syrup.solids(pressurePa, aimC(), Syrup.TYPICAL_INVERTED);
        return 10 * Math.round(100 * Math.max(0, 1 - from / to));
    }

    private List<String> pastMending() {
        return List.of(
                "Overcooked cannot be mended (Michigan State University Extension): do not boil it again. Warm a little with water"
                        + " when you use it, as a glaze or a filling.",
                String.format(
                        Locale.ROOT,
                        "Next time stop sooner: aim at {diff:%.1f} above boiling water, and take the pan off the heat for every"
                                + " set test.",
                        learnt.filter(it -> it.batches() > 0)
                                .map(Proposal::riseC)
                                .orElse(SafeBand.within(Math.min(facts.targetRiseC(), GelPoint.DEFAULT_RISE_C)))));
    }

    /** What to keep in mind with a batch that is cooked again. */
    static List<String> cautions() {
        return List.of(
                "Recook or keep only what looks and smells sound, from jars that were sealed or stood in the fridge. Throw away what"
                        + " is mouldy, fermenting or leaking, and do not taste it.",
                "Boiling sugar sticks and burns: long sleeves, a deep pan, nobody leaning over it.",
                "What is recooked goes into clean hot jars with new lids, and is processed again for the whole time of a tested"
                        + " recipe. Your local food-safety authority or extension service decides.");
    }
}
