package spoonfall.kitchen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spoonfall.cook.Cooks;
import spoonfall.cook.Stage;
import spoonfall.cook.TestWord;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.desk.AfternoonDesk;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.lab.Scenario;
import spoonfall.probe.trace.Trace;
import spoonfall.settest.TestAnswer;
import spoonfall.words.NextStep;
import spoonfall.words.Outlook;

/** What is said of the pan, what comes up beside it and the afternoon tell of one forecast, whatever happens to the cook. */
@Timeout(60)
final class OneForecastTest {
    private static final String TESTS = "Set tests ";
    private static final String NEXT = "Next: test the set, ";
    private static final String SETS = "Take it off the heat";

    /** The fan ends a little past the gel point: after so many times as long as it takes to get there. */
    private static final double FAN_ENDS = 1.3;

    /** The afternoon begins with the kitchen, the cook with its first reading. */
    private static final double LATER_S = 0.63;

    private final KeptJournal journal = new KeptJournal();
    private int windows;
    private int gels;

    /** A kitchen that hears one trace, some readings a second, whose seconds are not those of the afternoon. */
    private final class Run implements AutoCloseable {
        final ToldProbe pan = new ToldProbe("pan", 0);
        final Trace trace;
        final Kitchen kitchen;
        final int from;
        int at;

        Run(Trace trace, int from) {
            this.trace = trace;
            this.from = from;
            at = from;
            KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", Cooks.settings(trace), 1);
            kitchen = new Kitchen(plan, clock -> List.of(pan), System::nanoTime, Thermometry.none(), journal);
            kitchen.start();
            AfternoonDesk afternoon = kitchen.afternoon();
            afternoon.tap(Optional.of("sugar"), "sugar").join(); // from there on the next step is the pan's
            List.of("plates", "jars", "canner") // or they crowd out what is foreseen
                    .forEach(id -> afternoon.prepare(Optional.of(id), id).join());
        }

        KitchenState state() {
            return kitchen.state().join();
        }

        /** Goes on until that reading, looking at the pan after each. */
        void play(int until) {
            for (; at < until; at++) {
                for (double part = 0; part < 1; part += 0.25) {
                    pan.sayAt(trace.temperatureC(at).orElseThrow(), at - from + LATER_S + part);
                    agrees(state());
                }
            }
        }

        @Override
        public void close() {
            kitchen.close();
        }
    }

    private void agrees(KitchenState state) {
        double t = state.pan().status().orElseThrow().t();
        Outlook outlook = state.pan().outlook();
        String act = outlook.saying().act();
        if (act.startsWith(TESTS)) {
            windows++;
            assertThat(state.afternoon().saying().saying().state())
                    .as("at %.1f s", t)
                    .isEqualTo(NEXT + act.substring(TESTS.length()));
        }
        OptionalDouble drawnT = drawnGelT(outlook);
        boolean off = state.pan().status().orElseThrow().stage() == Stage.OFF_THE_HEAT;
        if (drawnT.isPresent() && !off) { // when it goes back is for the cook to say
            gels++;
            assertThat(foretold(outlook, SETS).t()).as("at %.1f s", t).isCloseTo(drawnT.getAsDouble(), within(0.001));
        }
    }

    private static OptionalDouble drawnGelT(Outlook outlook) {
        List<Outlook.FanPoint> fan = outlook.fan();
        return fan.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(fan.get(0).t()
                        + (fan.get(fan.size() - 1).t() - fan.get(0).t()) / FAN_ENDS);
    }

    private static NextStep foretold(Outlook outlook, String text) {
        return outlook.comingUp().stream()
                .filter(step -> step.text().equals(text) && step.howLong().isPresent())
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(names = {"CLEAN", "DILUTE", "STALL", "SCORCH"})
    void theSentenceAndTheList_sayTheSameAtEveryStatus(Scenario scenario) {
        Trace trace = Cooks.trace(scenario, 5);
        try (Run run = new Run(trace, 0)) {
            run.play(trace.size());
        }
        assertThat(windows).isGreaterThan(300);
        assertThat(gels).isGreaterThan(300);
    }

    @Test
    void theySayTheSame_whenTheCookIsAimedOtherwise_andWhenItGoesOnAfterAKill() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        int half = trace.size() / 2;
        List<NextStep> before;
        String saidBefore;
        try (Run first = new Run(trace, 0)) {
            first.play(half - 240);
            first.kitchen.checks().declare(WaterBoil.atElevation(1200)).join();
            agrees(first.state());
            first.play(half - 120);
            first.kitchen.tests().say(TestWord.seen("t1", TestAnswer.THICKENS)).join();
            agrees(first.state());
            first.play(half);
            KitchenState last = first.state();
            assertThat(last.pan().status().orElseThrow().stage()).isEqualTo(Stage.ROLLING_BOIL);
            before = foretold(last);
            saidBefore = last.pan().outlook().saying().act();
        }
        try (Run second = new Run(trace, half)) {
            KitchenState after = second.state();
            assertThat(journal.resumed).isOne();
            assertThat(after.pan().outlook().saying().act()).isEqualTo(saidBefore);
            assertThat(foretold(after)).hasSameSizeAs(before).isNotEmpty();
            for (int i = 0; i < before.size(); i++) {
                assertThat(foretold(after).get(i).t()).isCloseTo(before.get(i).t(), within(0.001));
                assertThat(foretold(after).get(i).howLong())
                        .isEqualTo(before.get(i).howLong());
            }
            agrees(after);
            second.play(trace.size());
        }
        assertThat(windows).isGreaterThan(300);
        assertThat(gels).isGreaterThan(300);
    }

    private static List<NextStep> foretold(KitchenState state) {
        return state.pan().outlook().comingUp().stream()
                .filter(step -> step.howLong().isPresent())
                .toList();
    }
}
