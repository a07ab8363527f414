package spoonfall.kitchen.again;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spoonfall.afternoon.Timeline;
import spoonfall.alarm.AlarmState;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Cooks;
import spoonfall.cook.Forecast;
import spoonfall.cook.Stage;
import spoonfall.cook.TestWord;
import spoonfall.cook.Unrecorded;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.KeptJournal;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.afternoon.AfternoonWord;
import spoonfall.kitchen.desk.AfternoonDesk;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.kitchen.typed.HandAnswer;
import spoonfall.lab.Scenario;
import spoonfall.probe.Hearing;
import spoonfall.probe.Probe;
import spoonfall.probe.hand.HandProbe;
import spoonfall.probe.trace.Trace;
import spoonfall.settest.TestAnswer;
import spoonfall.typed.Typed;

/** A kitchen that begins where another was killed. */
@Timeout(60)
final class ResumeTest {
    private final KeptJournal journal = new KeptJournal();

    /** A kitchen with a thermometer that says what it is told. */
    private static final class Run implements AutoCloseable {
        final ToldProbe pan = new ToldProbe("pan", 0);
        final Kitchen kitchen;

        Run(KeptJournal journal, CookSettings settings, String batch, List<ToldProbe> others) {
            KitchenPlan plan = KitchenPlan.live("Hollin Bank", batch, settings, 1);
            List<Probe> probes = new ArrayList<>(List.of(pan));
            probes.addAll(others);
            kitchen = new Kitchen(plan, clock -> probes, System::nanoTime, Thermometry.none(), journal);
            kitchen.start();
            state();
        }

        KitchenState state() {
            return kitchen.state().join();
        }

        void play(Trace trace, int from, int until) {
            for (int i = from; i < until && i < trace.size(); i++) {
                pan.say(trace.temperatureC(i).orElseThrow(), 1);
            }
            state();
        }

        @Override
        public void close() {
            kitchen.close();
        }
    }

    private Run run(Trace trace) {
        return new Run(journal, Cooks.settings(trace), "batch 14", List.of());
    }

    private static List<CookEvent> events(KitchenState state) {
        return state.changes().stream()
                .filter(change -> change instanceof KitchenChange.Cook)
                .map(change -> ((KitchenChange.Cook) change).event())
                .toList();
    }

    private static List<String> reminders(KitchenState state) {
        return state.changes().stream()
                .filter(change -> change instanceof KitchenChange.Reminded)
                .map(change -> (KitchenChange.Reminded) change)
                .map(reminded -> reminded.t() + " " + reminded.name() + " " + reminded.text())
                .toList();
    }

    @ParameterizedTest
    @EnumSource(names = {"CLEAN", "STALL", "SCORCH", "DILUTE"})
    void afterAKill_allStandsAsItStood(Scenario scenario) {
        Trace trace = Cooks.trace(scenario, 3);
        int half = trace.size() * 3 / 5;
        KitchenState before;
        try (Run first = run(trace)) {
            first.play(trace, 0, half);
            first.kitchen.notes().write("n-1", "skimmed twice").join();
            before = first.state();
        }
        int eventsBefore = journal.events.size();
        try (Run second = run(trace)) {
            KitchenState after = second.state();
            assertThat(journal.resumed).isOne();
            assertThat(after.cookNumber()).isEqualTo(before.cookNumber());
            assertThat(after.startedAt()).isEqualTo(before.startedAt());
            assertThat(after.pan().alarms()).isEqualTo(before.pan().alarms());
            assertThat(after.pan().basis()).isEqualTo(before.pan().basis());
            List<CookEvent> told = events(after);
            assertThat(told.subList(0, told.size() - 1)).isEqualTo(events(before));
            assertThat(told.get(told.size() - 1)).isInstanceOf(CookEvent.CameBack.class);
            assertThat(journal.events).hasSize(eventsBefore + 1);
            assertThat(after.climb()).isNotEmpty();
            assertThat(after.notes()).isEqualTo(before.notes()).hasSize(1);
            assertThat(reminders(after)).isEqualTo(reminders(before));

            second.play(trace, half, half + 30);
            CookStatus now = second.state().pan().status().orElseThrow();
            assertThat(now.stage())
                    .isEqualTo(before.pan().status().orElseThrow().stage());
            Optional<Forecast> whole = wholeCook(trace, half + 30).forecast();
            assertThat(now.forecast().isPresent()).isEqualTo(whole.isPresent());
            whole.ifPresent(forecast -> assertThat(now.forecast().orElseThrow().etaS())
                    .isCloseTo(forecast.etaS(), within(0.02 * forecast.etaS())));
        }
    }

    /** The status after so many readings in a kitchen that nobody kills. */
    private static CookStatus wholeCook(Trace trace, int readings) {
        try (Run whole = new Run(new KeptJournal(), Cooks.settings(trace), "batch 14", List.of())) {
            whole.play(trace, 0, readings);
            return whole.state().pan().status().orElseThrow();
        }
    }

    @Test
    void whatSomebodySaid_isNotAskedAgain() {
        Trace trace = Cooks.trace(Scenario.STALL, 3);
        String id;
        try (Run first = run(trace)) {
            int at = 0;
            while (first.state().pan().alarms().isEmpty() && at < trace.size()) {
                first.play(trace, at, at + 20);
                at += 20;
            }
            CookAlarm alarm = first.state().pan().alarms().get(0);
            id = alarm.id();
            first.kitchen.alarms().acknowledge(id).join();
            first.kitchen.checks().declare(WaterBoil.atElevation(1200)).join();
        }
        try (Run second = run(trace)) {
            KitchenState after = second.state();
            assertThat(after.pan().alarms()).anySatisfy(alarm -> {
                assertThat(alarm.id()).isEqualTo(id);
                assertThat(alarm.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
            });
            assertThat(after.pan().basis().settings().waterBoil()).isEqualTo(WaterBoil.atElevation(1200));
        }
        // and a third one, which goes through the second's coming back as well
        try (Run third = run(trace)) {
            assertThat(events(third.state()).stream().filter(event -> event instanceof CookEvent.CameBack))
                    .hasSize(2);
            assertThat(third.state().pan().alarms()).noneMatch(alarm -> alarm.name() == AlarmName.PROBE_SILENT);
        }
    }

    @Test
    void whatASetTestTaught_isKnownAfterAKill() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        KitchenState before;
        try (Run first = run(trace)) {
            first.play(trace, 0, trace.size() * 4 / 5);
            first.kitchen.tests().say(TestWord.begun("t1", 90)).join();
            first.play(trace, trace.size() * 4 / 5, trace.size() * 4 / 5 + 5);
            first.kitchen.tests().say(TestWord.seen("t1", TestAnswer.THICKENS)).join();
            first.kitchen.tests().say(TestWord.begun("t2", 60)).join();
            before = first.state();
            assertThat(before.pan().tests().orElseThrow().tests()).hasSize(2);
        }
        try (Run second = run(trace)) {
            KitchenState after = second.state();
            assertThat(after.pan().tests().orElseThrow().tests())
                    .isEqualTo(before.pan().tests().orElseThrow().tests());
            assertThat(after.pan().tests().orElseThrow().aim())
                    .isEqualTo(before.pan().tests().orElseThrow().aim());
            assertThat(after.pan().alarms()).isEqualTo(before.pan().alarms());
        }
    }

    @Test
    void howFarTheAfternoonIs_isKnownAfterAKill() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        List<String> before;
        try (Run first = run(trace)) {
            first.play(trace, 0, trace.size() / 2);
            AfternoonDesk desk = first.kitchen.afternoon();
            String step =
                    first.state().afternoon().timeline().steps().get(0).step().id();
            desk.addStep(Optional.empty(), "Wipe the rims", 3, step).join();
            desk.skip(Optional.empty(), step).join();
            desk.undo(desk.skip(Optional.empty(), "wipe-the-rims")
                            .join()
                            .timeline()
                            .undo()
                            .orElseThrow()
                            .mark())
                    .join();
            before = steps(first.state());
        }
        try (Run second = run(trace)) {
            assertThat(steps(second.state())).isEqualTo(before).anyMatch(step -> step.contains("Wipe the rims"));
        }
    }

    @Test
    void whatWasSaidBeforeTheFirstReading_isKnownAfterAKill() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        try (Run first = run(trace)) {
            first.kitchen.afternoon().tap(Optional.empty(), "soften").join();
        }
        List<String> before;
        try (Run second = run(trace)) {
            before = steps(second.state());
            assertThat(before).anyMatch(step -> step.contains("soften") && step.endsWith("DONE"));
            second.play(trace, 0, 30);
        }
        try (Run third = run(trace)) {
            assertThat(steps(third.state())).isEqualTo(before);
            assertThat(third.state().afternoon().timeline().undo()).isPresent();
        }
        journal.afternoon.away = KitchenPlan.WITHIN.plusSeconds(1);
        try (Run late = run(trace)) {
            assertThat(steps(late.state())).noneMatch(step -> step.endsWith("DONE"));
        }
    }

    @Test
    void theAfternoonGoesOn_whenItsCookIsOver() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        List<String> before;
        try (Run first = run(trace)) {
            first.play(trace, 0, trace.size());
            first.kitchen.afternoon().tap(Optional.empty(), "test").join();
            first.kitchen.afternoon().tap(Optional.empty(), "fill").join();
            before = steps(first.state());
            assertThat(first.state().pan().status().orElseThrow().stage()).isEqualTo(Stage.OFF_THE_HEAT);
        }
        journal.away = Resumption.WITHIN_OFF_THE_HEAT.plusSeconds(1);
        journal.afternoon.away = journal.away;
        try (Run second = run(trace)) {
            assertThat(second.state().cookNumber()).isEqualTo(2);
            assertThat(steps(second.state())).isEqualTo(before);
        }
        try (Run third = run(trace)) { // and once more, without a cook to go through
            assertThat(steps(third.state()))
                    .filteredOn(step -> step.contains("fill"))
                    .isEqualTo(before.stream()
                            .filter(step -> step.contains("fill"))
                            .toList());
        }
    }

    @Test
    void whatAnUndoneNewCookWouldHaveLost_isKnownAfterAKill() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        List<String> before;
        Instant startedAt;
        try (Run first = run(trace)) {
            AfternoonDesk desk = first.kitchen.afternoon();
            desk.tap(Optional.empty(), "soften").join();
            before = steps(first.state());
            startedAt = first.state().afternoon().startedAt();
            undoTheNewCook(first);
            assertThat(steps(first.state())).isEqualTo(before).anyMatch(step -> step.endsWith("DONE"));
        }
        try (Run second = run(trace)) {
            assertThat(steps(second.state())).isEqualTo(before);
            assertThat(second.state().afternoon().startedAt()).isEqualTo(startedAt);
            undoTheNewCook(second); // of an afternoon that was itself taken up
        }
        try (Run third = run(trace)) {
            assertThat(steps(third.state())).isEqualTo(before);
            assertThat(third.state().afternoon().startedAt()).isEqualTo(startedAt);
        }
    }

    /** Begins a new cook, says something of it and takes all that back. */
    private static void undoTheNewCook(Run run) {
        AfternoonDesk desk = run.kitchen.afternoon();
        run.kitchen.newCook(Optional.empty()).join();
        assertThat(steps(run.state())).noneMatch(step -> step.endsWith("DONE"));
        Timeline said = desk.skip(Optional.empty(), "soften").join().timeline();
        Timeline unsaid = desk.undo(said.undo().orElseThrow().mark()).join().timeline();
        assertThat(unsaid.undo())
                .hasValueSatisfying(undo -> assertThat(undo.words()).isEqualTo("A new cook"));
        desk.undo(unsaid.undo().orElseThrow().mark()).join();
    }

    @Test
    void aWordOnAStepThatTheNotesHaveNoMore_isPassedOver() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        try (Run first = run(trace)) {
            first.play(trace, 0, 30);
            first.kitchen.afternoon().skip(Optional.empty(), "soften").join();
        }
        journal.afternoon.lines.replaceAll(line -> new spoonfall.log.Diary.Line(
                line.atMillis(),
                line.kind(),
                AfternoonWord.on(AfternoonWord.What.SKIP, "gone").detail()));
        try (Run second = run(trace)) {
            assertThat(second.state().cookNumber()).isOne();
            assertThat(journal.resumed).isOne();
        }
    }

    private static List<String> steps(KitchenState state) {
        return state.afternoon().timeline().steps().stream()
                .map(step -> step.step() + " " + step.state())
                .toList();
    }

    @Test
    void aTypedReadingThatWasTakenBack_staysTakenBack() {
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", CookSettings.defaults(), 1);
        AtomicLong nanos = new AtomicLong(System.nanoTime());
        try (Kitchen first = typing(plan, nanos)) {
            for (int i = 0; i < 5; i++) {
                Typed typed = Typed.parse(80 + 3 * i + "C");
                first.hands().type("r" + i, typed, true).join();
                nanos.addAndGet(30_000_000_000L);
            }
            first.hands().takeBack("r4").join();
            assertThat(first.record().join().size()).isEqualTo(4);
        }
        try (Kitchen second = typing(plan, nanos)) {
            assertThat(second.record().join().size()).isEqualTo(4);
            // what a page sends once more, because it never heard the answer, is taken once
            assertThat(second.hands().type("r3", Typed.parse("89C"), true).join())
                    .isInstanceOf(HandAnswer.Taken.class);
            assertThat(second.hands().type("r4", Typed.parse("92C"), true).join())
                    .isInstanceOf(HandAnswer.TakenBack.class);
            assertThat(second.hands().takeBack("r4").join()).isPresent();
            assertThat(second.record().join().size()).isEqualTo(4);
            assertThat(second.state()
                            .join()
                            .pan()
                            .status()
                            .orElseThrow()
                            .seen()
                            .orElseThrow()
                            .temperatureC())
                    .isEqualTo(89);
        }
    }

    private Kitchen typing(KitchenPlan plan, AtomicLong nanos) {
        Kitchen kitchen = new Kitchen(
                plan, clock -> List.of(new HandProbe("pan", clock)), nanos::get, Thermometry.none(), journal);
        kitchen.start();
        Hearing.await(
                "the hand probe to be ready",
                () -> kitchen.state().join().probe().detail().contains("type what the thermometer shows"));
        return kitchen;
    }

    @Test
    void aFewMinutesAway_areSaid_andAreNoSilenceOfTheProbe() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        try (Run first = run(trace)) {
            first.play(trace, 0, 900);
        }
        journal.away = Duration.ofMinutes(4);
        try (Run second = run(trace)) {
            CookEvent last = events(second.state()).get(events(second.state()).size() - 1);
            assertThat(((CookEvent.CameBack) last).forS()).isCloseTo(240, within(3.0));
            second.play(trace, 1140, 1200);
            assertThat(second.state().pan().alarms()).isEmpty();
            assertThat(second.state().pan().status().orElseThrow().t()).isBetween(1190.0, 1210.0);
        }
    }

    @Test
    void howLongItWasAway_staysTheSame_thoughItHadWatchedForLongerThanItRead() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        try (Run first = run(trace)) {
            first.play(trace, 0, 900);
        }
        journal.alive(900_400); // a tick after the last reading
        journal.away = Duration.ofMinutes(4);
        CookEvent told;
        try (Run second = run(trace)) {
            List<CookEvent> events = events(second.state());
            told = events.get(events.size() - 1);
            assertThat(told).isInstanceOf(CookEvent.CameBack.class);
        }
        try (Run third = run(trace)) {
            assertThat(events(third.state())).contains(told);
        }
    }

    @Test
    void whatIsNotTheSameCookAnyMore_isNotGoneOnWith() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        try (Run first = run(trace)) {
            first.play(trace, 0, 600);
        }
        journal.away = KitchenPlan.WITHIN.plusSeconds(1);
        try (Run late = run(trace)) {
            assertThat(late.state().cookNumber()).isEqualTo(2);
            assertThat(late.state().startedAt()).isEmpty();
        }
        journal.away = Duration.ZERO;
        try (Run other = new Run(journal, Cooks.settings(trace), "batch 15", List.of())) {
            assertThat(other.state().cookNumber()).isEqualTo(2);
        }
        try (Run more = new Run(journal, Cooks.settings(trace), "batch 14", List.of(new ToldProbe("clip", 0)))) {
            assertThat(more.state().cookNumber()).isEqualTo(2);
        }
        try (Run asked = new Run(journal, new CookSettings(WaterBoil.atElevation(900), 5), "batch 14", List.of())) {
            assertThat(asked.state().cookNumber()).isEqualTo(1);
            assertThat(asked.state().pan().basis().settings())
                    .isEqualTo(new CookSettings(WaterBoil.atElevation(900), 5));
        }
        try (Run same = run(trace)) {
            same.kitchen.newCook(Optional.empty()).join();
            assertThat(journal.ended).isOne();
            assertThat(same.state().cookNumber()).isEqualTo(2);
        }
        try (Run afresh = run(trace)) {
            assertThat(afresh.state().cookNumber()).isEqualTo(2);
        }
    }

    @Test
    void aCookThatCannotBeReadAgain_isLeftAlone() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        try (Run first = run(trace)) {
            first.play(trace, 0, 60);
            first.kitchen.checks().declare(WaterBoil.atElevation(1200)).join();
            first.play(trace, 60, 600); // events after what is torn: they are never come to
        }
        assertThat(journal.events).isNotEmpty();
        journal.inputs.replaceAll(input -> input instanceof spoonfall.log.CookInput.Word word
                ? new spoonfall.log.CookInput.Word(
                        word.takenMillis(),
                        word.kind(),
                        spoonfall.log.CookJson.object().put("settings", "torn"))
                : input);
        try (Run second = run(trace)) {
            assertThat(second.state().cookNumber()).isEqualTo(2);
            second.play(trace, 0, 600);
            assertThat(second.kitchen.healthy()).isTrue();
            assertThat(journal.ended).isZero();
        }
        KeptJournal alone = new KeptJournal();
        try (Run only = new Run(alone, Cooks.settings(trace), "batch 14", List.of())) {
            only.play(trace, 0, 600);
        }
        assertThat(journal.events)
                .as("the next cook is recorded from its beginning")
                .isEqualTo(alone.events);
    }

    @Test
    void aRecordThatDoesNotAnswerAtFirst_isAskedAgain_andTheCookGoesOn() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        try (Run first = run(trace)) {
            first.play(trace, 0, 900);
        }
        journal.silentFor = Integer.MAX_VALUE;
        try (Run second = run(trace)) {
            assertThat(second.state().startedAt()).isEmpty();
            assertThat(journal.resumed).isZero();
            journal.silentFor = 0;
            Hearing.await(
                    "the cook that was left", () -> second.state().startedAt().isPresent());
            assertThat(journal.resumed).isOne();
            assertThat(second.state().cookNumber()).isOne();
            assertThat(second.kitchen.record().join().size()).isEqualTo(900);
        }
    }

    @Test
    void aCookThatBeginsBeforeTheRecordAnswers_goesOn() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        try (Run first = run(trace)) {
            first.play(trace, 0, 900);
        }
        journal.silentFor = Integer.MAX_VALUE;
        try (Run second = run(trace)) {
            second.play(trace, 0, 60);
            journal.numberTold = false;
            journal.silentFor = 0;
            second.play(trace, 60, 120);
            Hearing.await("the record's answer", () -> journal.numberTold);
            second.kitchen.state().join(); // what it made of the answer is done
            assertThat(journal.resumed).isZero();
            assertThat(second.kitchen.record().join().size()).isEqualTo(120);
        }
    }

    @Test
    void aNewCookThatIsAskedForBeforeTheRecordAnswers_isNotTheOldOne() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        try (Run first = run(trace)) {
            first.play(trace, 0, 900);
        }
        journal.silentFor = Integer.MAX_VALUE;
        try (Run second = run(trace)) {
            second.kitchen.newCook(Optional.empty()).join();
            journal.numberTold = false;
            journal.silentFor = 0;
            Hearing.await("the record's answer", () -> journal.numberTold);
            second.kitchen.state().join(); // what it made of the answer is done
            assertThat(second.state().startedAt()).isEmpty();
            second.play(trace, 0, 60);
            assertThat(journal.resumed).isZero();
            assertThat(second.state().cookNumber()).isEqualTo(2);
        }
    }

    @Test
    void aRecordThatCannotBeWritten_isCalled_andOverWhenItCan() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        try (Run first = run(trace)) {
            first.play(trace, 0, 30);
            journal.trouble = Optional.of(new Unrecorded("the disk is full", "Make room on it."));
            awaitTicks(first);
            first.play(trace, 30, 60);
            List<CookAlarm> alarms = first.state().pan().alarms();
            assertThat(alarms).hasSize(1);
            assertThat(alarms.get(0).name()).isEqualTo(AlarmName.NOT_RECORDING);
            assertThat(alarms.get(0).text())
                    .isEqualTo("This cook is not being recorded: the disk is full. Make room on it.");
            journal.trouble = Optional.empty();
            awaitTicks(first);
            first.play(trace, 60, 90);
            assertThat(first.state().pan().alarms().get(0).state()).isEqualTo(AlarmState.RETURNED);
        }
        try (Run second = run(trace)) {
            assertThat(second.state().pan().alarms()).hasSize(1);
        }
    }

    private void awaitTicks(Run run) {
        int words = journal.inputs.size();
        Hearing.await("the kitchen to hear of it", () -> {
            CompletableFuture<KitchenState> state = run.kitchen.state();
            state.join();
            return journal.inputs.size() > words;
        });
    }

    @Test
    void anotherThermometerInThePan_isHeardAgainToo() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 3);
        ToldProbe clip = new ToldProbe("clip", 0);
        List<CookAlarm> before;
        try (Run first = new Run(journal, Cooks.settings(trace), "", List.of(clip))) {
            for (int i = 0; i < 300; i++) {
                first.play(trace, i, i + 1);
                clip.say(trace.temperatureC(i).orElseThrow() - 5, 1);
            }
            before = first.state().pan().alarms();
            assertThat(before).anyMatch(alarm -> alarm.name() == AlarmName.PROBES_DISAGREE);
        }
        try (Run second = new Run(journal, Cooks.settings(trace), "", List.of(new ToldProbe("clip", 0)))) {
            assertThat(second.state().pan().alarms()).isEqualTo(before);
            assertThat(second.state().pan().status().orElseThrow().stage()).isNotEqualTo(Stage.WAITING);
        }
    }
}
