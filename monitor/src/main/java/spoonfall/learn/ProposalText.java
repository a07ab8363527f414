package spoonfall.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says a proposal in sentences, with marks for what depends on the reader's units. */
final class ProposalText {
    /** Less than that is no difference: a thermometer does not tell it. */
    private static final double SAME_C = 0.05;

    private static final int FEW = 5;

    private ProposalText() {}

    /** The proposal as sentences, what to aim at first. */
    static List<String> of(Proposal proposal) {
        List<String> said = new ArrayList<>();
        said.add(String.format(Locale.ROOT, "Next: {diff:%.1f} above boiling water.", proposal.riseC()));
        said.add(beside(proposal)
                + String.format(
                        Locale.ROOT,
                        "%d %% chance of \"right\".",
                        percent(proposal.chances().right())));
        said.add(String.format(
                Locale.ROOT,
                "What is truly best lies between {diff:%.1f} and {diff:%.1f}, nine times in ten.",
                proposal.bestFromC(),
                proposal.bestToC()));
        said.add(restsOn(proposal));
        switch (proposal.edge()) {
            case HIGHEST ->
                said.add(String.format(
                        Locale.ROOT,
                        "Your batches ask for more still, but above {diff:%.1f} a preserve scorches and turns bitter. Look"
                                + " for too little pectin, acid or sugar, or check the thermometer.",
                        SafeBand.MOST_RISE_C));
            case LOWEST ->
                said.add(String.format(
                        Locale.ROOT,
                        "Your batches ask for less still, but below {diff:%.1f} there is too much water for it to keep."
                                + " Check the thermometer and what was said of the kitchen's height.",
                        SafeBand.LEAST_RISE_C));
            case NONE -> {
                // nothing to add
            }
        }
        return List.copyOf(said);
    }

    /** Such as "{diff:0.4} firmer than your last; ". */
    private static String beside(Proposal proposal) {
        return proposal.last()
                .map(last -> {
                    double moreC = proposal.riseC() - last.finalRiseC();
                    if (Math.abs(moreC) < SAME_C) {
                        return "As your last; ";
                    }
                    return String.format(
                            Locale.ROOT,
                            "{diff:%.1f} %s than your last; ",
                            Math.abs(moreC),
                            moreC > 0 ? "firmer" : "softer");
                })
                .orElse("");
    }

    private static String restsOn(Proposal proposal) {
        if (proposal.batches() + proposal.others() == 0) {
            return "No batch has told how it set yet: this is the usual rule. Trust the set test first.";
        }
        String own = proposal.batches() == 1 ? "one batch" : proposal.batches() + " batches";
        String others = switch (proposal.others()) {
            case 0 -> "";
            case 1 -> " and one of another fruit";
            default -> " and " + proposal.others() + " of other fruits";
        };
        String few = proposal.batches() < FEW ? " That is few: trust the set test first." : "";
        return "It rests on " + (proposal.batches() == 0 ? "no batch of it" : own + " of it") + others + "." + few;
    }

    /** In steps of five, for no more is known. */
    static int percent(double chance) {
        return (int) (5 * Math.round(chance * 20));
    }
}
