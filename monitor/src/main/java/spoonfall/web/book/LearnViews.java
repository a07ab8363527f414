package spoonfall.web.book;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import spoonfall.book.Firmness;
import spoonfall.learn.Batch;
import spoonfall.learn.Chances;
import spoonfall.learn.Diagnosis;
import spoonfall.learn.Finding;
import spoonfall.learn.Learning;
import spoonfall.learn.Proposal;
import spoonfall.learn.SafeBand;
import spoonfall.web.wire.WireJson;

/** What is learnt, as JSON. */
public final class LearnViews {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** As many batches are told, the latest first. */
    private static final int MOST_TOLD = 20;

    /** Between the rises at which the chance of "right" is told, in °C. */
    private static final double STEP_C = 0.1;

    /** A fruit that no batch is of. */
    private static final String ANOTHER = "another fruit";

    private LearnViews() {}

    /** What all batches teach: a proposal for each fruit and for one that is new, and the latest batches. */
    public static ObjectNode of(Learning learning) {
        ObjectNode node = NODES.objectNode();
        ArrayNode fruits = node.putArray("fruits");
        for (String fruit : learning.fruits()) {
            fruits.add(withSets(learning, fruit));
        }
        node.set("another", of(learning.propose(ANOTHER)));
        node.set("batches", latest(learning.batches()));
        return node;
    }

    /** What the batches teach of one fruit, known or not: with the chance of "right" at each rise, and its batches. */
    public static ObjectNode of(Learning learning, String fruit) {
        ObjectNode node = withSets(learning, fruit);
        ArrayNode curve = node.putArray("curve");
        int steps = (int) Math.round((SafeBand.MOST_RISE_C - SafeBand.LEAST_RISE_C) / STEP_C);
        for (int i = 0; i <= steps; i++) {
            double riseC = WireJson.hundredths(SafeBand.LEAST_RISE_C + i * STEP_C);
            curve.addObject()
                    .put("riseC", riseC)
                    .put(
                            "right",
                            WireJson.rounded(learning.chances(fruit, riseC).right()));
        }
        node.set("told", latest(of(learning.batches(), fruit)));
        return node;
    }

    private static ObjectNode withSets(Learning learning, String fruit) {
        ObjectNode node = of(learning.propose(fruit));
        ObjectNode sets = node.putObject("sets");
        for (Firmness set : Firmness.values()) {
            long count = of(learning.batches(), fruit).stream()
                    .filter(batch -> batch.set() == set)
                    .count();
            sets.put(set.wireName(), count);
        }
        return node;
    }

    private static List<Batch> of(List<Batch> batches, String fruit) {
        return batches.stream().filter(batch -> batch.isOf(fruit)).toList();
    }

    private static ArrayNode latest(List<Batch> batches) {
        ArrayNode told = NODES.arrayNode();
        for (int i = batches.size() - 1; i >= Math.max(0, batches.size() - MOST_TOLD); i--) {
            told.add(of(batches.get(i)));
        }
        return told;
    }

    private static ObjectNode of(Batch batch) {
        ObjectNode node = NODES.objectNode();
        node.put("id", batch.id())
                .put("fruit", batch.fruit())
                .put("finalRiseC", WireJson.hundredths(batch.finalRiseC()));
        return node.put("set", batch.set().wireName())
                .put("after", batch.after().wireName());
    }

    private static ObjectNode of(Proposal proposal) {
        ObjectNode node = NODES.objectNode();
        node.put("fruit", proposal.fruit()).put("riseC", WireJson.hundredths(proposal.riseC()));
        node.put("bestFromC", WireJson.hundredths(proposal.bestFromC()))
                .put("bestToC", WireJson.hundredths(proposal.bestToC()));
        node.set("chances", of(proposal.chances()));
        node.put("batches", proposal.batches()).put("others", proposal.others());
        proposal.last().ifPresentOrElse(last -> node.set("last", of(last)), () -> node.putNull("last"));
        node.put("edge", proposal.edge().name().toLowerCase(Locale.ROOT));
        ArrayNode words = node.putArray("words");
        proposal.words().forEach(words::add);
        return node;
    }

    private static ObjectNode of(Chances chances) {
        ObjectNode node = NODES.objectNode();
        for (Firmness set : Firmness.values()) {
            node.put(set.wireName(), WireJson.rounded(chances.of(set)));
        }
        return node;
    }

    /** Why a batch set as it did. */
    public static ObjectNode of(Diagnosis diagnosis) {
        ObjectNode node = NODES.objectNode().put("headline", diagnosis.headline());
        ArrayNode findings = node.putArray("findings");
        for (Finding finding : diagnosis.findings()) {
            findings.addObject()
                    .put("id", finding.id())
                    .put("cause", finding.cause())
                    .put("text", finding.text())
                    .put("evidence", finding.evidence());
        }
        ArrayNode next = node.putArray("next");
        diagnosis.next().forEach(next::add);
        ArrayNode cautions = node.putArray("cautions");
        diagnosis.cautions().forEach(cautions::add);
        diagnosis.recookToC().ifPresentOrElse(riseC -> node.put("recookToC", riseC), () -> node.putNull("recookToC"));
        return node;
    }
}
