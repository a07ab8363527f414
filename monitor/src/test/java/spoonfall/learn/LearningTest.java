package spoonfall.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoonfall.book.After;
import spoonfall.book.Firmness;
import spoonfall.physics.Air;
import spoonfall.physics.Syrup;

/** What is proposed after some batches. */
final class LearningTest {
    private static List<Batch> batches(Object... riseAndSet) {
        List<Batch> batches = new ArrayList<>();
        for (int i = 0; i < riseAndSet.length; i += 2) {
            batches.add(new Batch(i + 1, "orange", (double) riseAndSet[i], (Firmness) riseAndSet[i + 1]));
        }
        return batches;
    }

    private static Proposal propose(Object... riseAndSet) {
        return Learning.from(batches(riseAndSet)).propose("orange");
    }

    @Test
    void nothing_proposesTheUsualEightDegrees_widely() {
        Proposal proposal = propose();
        assertThat(proposal.riseC()).isCloseTo(4.4, within(0.1001));
        assertThat(proposal.bestToC() - proposal.bestFromC()).isBetween(2.0, 2.7);
        assertThat(proposal.chances().right()).isBetween(0.4, 0.65);
        assertThat(proposal.words())
                .contains("No batch has told how it set yet: this is the usual rule. Trust the set test first.");
    }

    @Test
    void softBatches_askForMore_andFirmOnesForLess() {
        assertThat(propose(4.4, Firmness.SOFT).riseC()).isGreaterThan(4.5);
        assertThat(propose(4.4, Firmness.RUNNY).riseC())
                .isGreaterThan(propose(4.4, Firmness.SOFT).riseC());
        assertThat(propose(4.4, Firmness.FIRM).riseC()).isLessThan(4.4);
        assertThat(propose(4.4, Firmness.STIFF).riseC())
                .isLessThan(propose(4.4, Firmness.FIRM).riseC());
    }

    @Test
    void threeBatches_saySoInWords_besideTheLast() {
        Proposal proposal = propose(4.4, Firmness.SOFT, 4.5, Firmness.SOFT, 4.9, Firmness.RIGHT);
        assertThat(proposal.batches()).isEqualTo(3);
        assertThat(proposal.bestFromC()).isLessThan(proposal.riseC()).isGreaterThan(4.2);
        assertThat(proposal.words().get(0)).matches("Next: \\{diff:\\d\\.\\d} above boiling water\\.");
        assertThat(proposal.words().get(1))
                .matches("(\\{diff:0\\.\\d} (firmer|softer) than|As) your last; \\d\\d % chance of \"right\"\\.");
        assertThat(String.join(" ", proposal.words())).contains("It rests on 3 batches of it. That is few");
    }

    @Test
    void whatAgrees_narrowsTheInterval_withEveryBatch() {
        double widthC = 10;
        for (int batches : new int[] {0, 3, 10, 30}) {
            List<Object> told = new ArrayList<>();
            for (int i = 0; i < batches; i++) {
                double riseC = 4.6 + 0.4 * Math.sin(i);
                told.add(riseC);
                told.add(riseC < 4.4 ? Firmness.SOFT : riseC > 4.8 ? Firmness.FIRM : Firmness.RIGHT);
            }
            Proposal proposal = propose(told.toArray());
            assertThat(proposal.bestToC() - proposal.bestFromC()).isLessThan(widthC);
            widthC = proposal.bestToC() - proposal.bestFromC();
        }
        assertThat(widthC).isLessThan(0.5);
    }

    @Test
    void oneKindOfOutcomeOnly_staysSensible() {
        List<Object> right = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            right.add(4.2 + 0.01 * i);
            right.add(Firmness.RIGHT);
        }
        Proposal proposal = propose(right.toArray());
        assertThat(proposal.riseC()).isBetween(4.0, 4.6);
        assertThat(proposal.chances().right()).isGreaterThan(0.85);

        Proposal runny = propose(Collections.nCopies(20, List.of(4.4, Firmness.RUNNY)).stream()
                .flatMap(List::stream)
                .toArray());
        assertThat(runny.riseC()).isBetween(5.4, SafeBand.MOST_RISE_C);
    }

    @Test
    void contradictoryBatches_areBelievedLess_notMore() {
        Proposal agree = propose(
                4.0,
                Firmness.SOFT,
                4.4,
                Firmness.RIGHT,
                4.4,
                Firmness.RIGHT,
                4.8,
                Firmness.FIRM,
                4.0,
                Firmness.SOFT,
                4.8,
                Firmness.FIRM);
        Proposal contradict = propose(
                4.0,
                Firmness.FIRM,
                4.4,
                Firmness.RUNNY,
                4.4,
                Firmness.STIFF,
                4.8,
                Firmness.SOFT,
                4.0,
                Firmness.STIFF,
                4.8,
                Firmness.RUNNY);
        assertThat(contradict.chances().right()).isLessThan(agree.chances().right() - 0.1);
        assertThat(contradict.bestToC() - contradict.bestFromC()).isGreaterThan(agree.bestToC() - agree.bestFromC());
        assertThat(contradict.riseC()).isBetween(SafeBand.LEAST_RISE_C, SafeBand.MOST_RISE_C);
    }

    @Test
    void aNewFruit_leansOnTheOthers_butIsLessSure() {
        List<Batch> batches = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            batches.add(new Batch(i, i % 2 == 0 ? "orange" : "Damson  plum", 4.4, Firmness.SOFT));
        }
        Learning learning = Learning.from(batches);
        Proposal known = learning.propose("damson plum");
        Proposal unknown = learning.propose("quince");
        assertThat(learning.fruits()).containsExactly("orange", "Damson plum");
        assertThat(unknown.riseC()).isGreaterThan(4.6);
        assertThat(unknown.batches()).isZero();
        assertThat(unknown.others()).isEqualTo(10);
        assertThat(unknown.bestToC() - unknown.bestFromC()).isGreaterThan(known.bestToC() - known.bestFromC());
        assertThat(unknown.words())
                .contains("It rests on no batch of it and 10 of other fruits. That is few: trust the set test first.");
    }

    @Test
    void aProposal_neverLeavesTheSafeBand_andSaysWhy() {
        Proposal high = propose(6.5, Firmness.RUNNY, 7.0, Firmness.SOFT, 7.5, Firmness.RUNNY, 8.0, Firmness.SOFT);
        assertThat(high.riseC()).isEqualTo(SafeBand.MOST_RISE_C);
        assertThat(high.edge()).isEqualTo(Proposal.Edge.HIGHEST);
        assertThat(String.join(" ", high.words())).contains("too little pectin, acid or sugar");
        Proposal low = propose(3.0, Firmness.STIFF, 2.5, Firmness.STIFF, 2.2, Firmness.FIRM, 2.0, Firmness.FIRM);
        assertThat(low.riseC()).isEqualTo(SafeBand.LEAST_RISE_C);
        assertThat(low.edge()).isEqualTo(Proposal.Edge.LOWEST);
    }

    @Test
    void theSafeBand_isWhereSyrupsAreSixtyToSeventyPercent() {
        // "60–70 % solids" (So Easy to Preserve, docs/science.md) by our own curve at the typical inversion, to a point
        // and a half.
        assertThat(Syrup.solids(Air.SEA_LEVEL_PA, SafeBand.LEAST_RISE_C, Syrup.TYPICAL_INVERTED))
                .isCloseTo(0.60, within(0.015));
        assertThat(Syrup.solids(Air.SEA_LEVEL_PA, SafeBand.MOST_RISE_C, Syrup.TYPICAL_INVERTED))
                .isCloseTo(0.70, within(0.015));
    }

    @Test
    void aBatchJudgedTwice_countsOnceByItsLaterWord() {
        Batch day = new Batch(1, "orange", 4.4, Firmness.SOFT, After.DAY);
        Batch month = new Batch(1, "orange", 4.4, Firmness.RIGHT, After.MONTH);
        Learning learning = Learning.from(List.of(month, day));
        assertThat(learning.batches()).containsExactly(month);
    }

    @Test
    void theSameBatches_giveTheSameProposal() {
        assertThat(propose(4.4, Firmness.SOFT, 4.9, Firmness.FIRM))
                .isEqualTo(propose(4.4, Firmness.SOFT, 4.9, Firmness.FIRM));
    }

    @Test
    void chances_addUpToOne_andMoveWithTheRise() {
        Learning learning = Learning.from(batches(4.4, Firmness.SOFT, 4.9, Firmness.FIRM));
        Chances low = learning.chances("orange", 3.5);
        Chances high = learning.chances("orange", 5.5);
        assertThat(low.runny() + low.soft()).isGreaterThan(high.runny() + high.soft() + 0.3);
        double sum = 0;
        for (Firmness set : Firmness.values()) {
            sum += low.of(set);
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
    }

    @Test
    void impossibleBatches_areRefusedInOneLine() {
        assertThatThrownBy(() -> new Batch(3, "orange", Double.NaN, Firmness.RIGHT))
                .hasMessage("a batch is boiled to 0 to 20 °C above boiling water, not NaN °C (batch 3)");
        assertThatThrownBy(() -> new Batch(3, " ", 4.4, Firmness.RIGHT))
                .hasMessageContaining("name the fruit of batch 3");
        assertThatThrownBy(() -> Firmness.named("solid"))
                .hasMessage("a set is runny, soft, right, firm, stiff, not \"solid\"");
    }
}
