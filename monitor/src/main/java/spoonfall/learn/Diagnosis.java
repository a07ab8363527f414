package spoonfall.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.book.Firmness;

/**
 * Why a batch set as it did, by its record, and what to do with it. Texts carry marks for what depends on the reader's units.
 *
 * @param headline one sentence
 * @param findings what the record says, causes first
 * @param next what to do, in order
 * @param cautions what to keep in mind; none where nothing is boiled again
 * @param recookToC how far above the water boil to boil it again, in °C; empty where that does not help
 */
public record Diagnosis(
        String headline, List<Finding> findings, List<String> next, List<String> cautions, OptionalDouble recookToC) {
    /** Keeps copies of the lists. */
    public Diagnosis {
        findings = List.copyOf(findings);
        next = List.copyOf(next);
        cautions = List.copyOf(cautions);
    }

    /**
     * Looks for why.
     *
     * @param set how it had set; empty if nobody said
     * @param learnt what the batches teach of this fruit; empty if the fruit is not known
     */
    public static Diagnosis of(CookFacts facts, Optional<Firmness> set, Optional<Proposal> learnt) {
        List<Finding> findings = Findings.of(facts, set, learnt);
        boolean mend = set.filter(it -> it != Firmness.RIGHT).isPresent();
        return new Diagnosis(
                headline(findings, set),
                findings,
                Mending.of(facts, set, learnt),
                mend ? Mending.cautions() : List.of(),
                Mending.recookToC(facts, set, learnt));
    }

    private static String headline(List<Finding> findings, Optional<Firmness> set) {
        if (set.isEmpty()) {
            return "Nobody has said how it set.";
        }
        String became = "It came out " + set.get().wireName() + ".";
        if (set.get() == Firmness.RIGHT) {
            return became;
        }
        List<Finding> causes = new ArrayList<>(findings);
        causes.removeIf(finding -> !finding.cause());
        return switch (causes.size()) {
            case 0 -> became + " The record shows no reason: look to the fruit, its ripeness, pectin and acid.";
            case 1 -> became + " " + causes.get(0).text();
            default -> became + " The record shows " + causes.size() + " possible reasons.";
        };
    }
}
