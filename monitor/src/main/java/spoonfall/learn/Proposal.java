package spoonfall.learn;

import java.util.List;
import java.util.Optional;

/**
 * The rise that is proposed for the next batch of a fruit. Nothing goes by it until the cook takes it.
 *
 * @param fruit of what
 * @param riseC the rise in °C at which "right" is likeliest, within the safe band
 * @param bestFromC early end of the 90 % interval of the rise that is truly best, in °C
 * @param bestToC late end of it
 * @param chances of runny, soft, right, firm and stiff there
 * @param batches how many batches of this fruit it rests on
 * @param others how many batches of other fruits have a say in it
 * @param last the latest batch of this fruit
 * @param edge whether the safe band kept it from going further, and which way
 */
public record Proposal(
        String fruit,
        double riseC,
        double bestFromC,
        double bestToC,
        Chances chances,
        int batches,
        int others,
        Optional<Batch> last,
        Edge edge) {
    /** Whether a proposal lies at an edge of the safe band because it would go beyond. */
    public enum Edge {
        /** It does not. */
        NONE,
        /** It would be lower. */
        LOWEST,
        /** It would be higher. */
        HIGHEST
    }

    /** The proposal in sentences, with marks, what to aim at first. */
    public List<String> words() {
        return ProposalText.of(this);
    }
}
