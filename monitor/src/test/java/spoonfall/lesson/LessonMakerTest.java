package spoonfall.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Cooks;
import spoonfall.cook.Pace;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.Stage;
import spoonfall.cook.calm.CalmTime;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.lab.Scenario;
import spoonfall.log.CookBasis;
import spoonfall.log.CookEventJson;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.TraceReplay;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;
import spoonfall.score.ByHand;
import spoonfall.words.Saying;
import spoonfall.words.Storyteller;

final class LessonMakerTest {
    /** Of the simulated pan of {@link spoonfall.lab.PanSettings#defaults}: 2.1 kg at 40 % on 1.35 kW. */
    private static final String PLAN =
            "{\"ingredients\":[{\"amount\":\"2.1 kg\",\"food\":\"all of it\"}],\"solidsKg\":0.84,"
                    + "\"pan\":{\"totalKg\":2.1,\"solidsKg\":0.84,\"waterKgPerMin\":0.0359,\"relativeDoubt\":0.08},"
                    + "\"finishedKg\":{\"low\":1.2,\"middle\":1.3,\"high\":1.4},"
                    + "\"jars\":{\"low\":3.8,\"middle\":4.1,\"high\":4.4},\"manyJars\":\"half-pint jars\"}";

    @TempDir
    private Path folder;

    private StoredCook stored(Trace trace) {
        Path file = folder.resolve("cooks.db");
        try (CookLog log = CookLog.openOrMake(file)) {
            return new BatchBook(file).cook(log.take(trace, Cooks.settings(trace)));
        }
    }

    private static StoredCook with(
            StoredCook cook, List<CookInput> inputs, List<StoredCook.Event> events, long aliveMillis) {
        return new StoredCook(
                cook.id(),
                cook.header(),
                inputs,
                events,
                List.of(),
                aliveMillis,
                cook.aliveAt(),
                OptionalLong.of(aliveMillis),
                0);
    }

    private static CookInput word(double t, String kind, String json) {
        return new CookInput.Word(Math.round(t * 1000), kind, CookJson.parse(json));
    }

    private static StoredCook.Event event(double t, String kind, String json) {
        return new StoredCook.Event(Math.round(t * 1000), kind, CookJson.parse(json));
    }

    @Test
    void aLesson_saysAtEachMomentWhatThePageSaidThen() {
        Trace trace = Cooks.trace(Scenario.STALL, 4);
        Lesson lesson = LessonMaker.of(stored(trace));
        TraceReplay replay = new TraceReplay(trace, Cooks.settings(trace));
        Storyteller story = new Storyteller(Pace.BY_ITSELF);
        List<Saying> said = new ArrayList<>();
        CookMonitor monitor = replay.monitor();
        monitor.foretell();
        while (replay.hasNext()) { // a reading a second, told as the live pan tells them
            replay.next();
            if (monitor.timeS() >= said.size()) {
                said.add(story.tell(monitor.status(), monitor.foretold(), monitor.alarms(), monitor.tests())
                        .saying());
            }
        }
        assertThat(lesson.frames()).hasSizeBetween(200, LessonMaker.MOST_FRAMES);
        assertThat(lesson.cut()).isFalse();
        long same = lesson.frames().stream()
                .filter(frame -> said.get((int) frame.t()).equals(frame.saying()))
                .count();
        assertThat(same).isEqualTo(lesson.frames().size());
        assertThat(lesson.frames()).anyMatch(frame -> frame.sets().isPresent());
    }

    @Test
    void aMoment_tellsWhatWasSaidAndWhatWasDone() {
        Trace trace = Cooks.trace(Scenario.STALL, 4);
        StoredCook cook = stored(trace);
        double stalledT = Cooks.raisedT(Cooks.events(trace), AlarmName.STALLED).orElseThrow();
        List<StoredCook.Event> events = new ArrayList<>(cook.events());
        String id = "{\"id\":\"stalled-1\",\"alarm\":\"stalled\",\"change\":\"acknowledged\"}";
        events.add(event(stalledT + 20, "alarm", id));
        events.add(event(stalledT + 120, "set-test", "{\"id\":\"a-1\",\"change\":\"begun\"}"));
        events.add(event(stalledT + 215, "set-test", "{\"id\":\"a-1\",\"change\":\"seen\",\"answer\":\"drops-join\"}"));
        events.sort(Comparator.comparingLong(StoredCook.Event::atMillis));
        List<CookInput> inputs = new ArrayList<>(cook.inputs());
        inputs.add(word(stalledT + 20, "acknowledge", "{\"id\":\"stalled-1\"}"));
        inputs.add(word(stalledT + 120, "set-test", "{\"says\":\"begun\",\"id\":\"a-1\",\"plateS\":90}"));
        inputs.add(word(
                stalledT + 215,
                "set-test",
                "{\"says\":\"seen\",\"id\":\"a-1\",\"plateS\":90,\"kind\":\"sheet\",\"answer\":\"drops-join\"}"));
        inputs.sort(Comparator.comparingLong(CookInput::takenMillis));
        Lesson lesson = LessonMaker.of(with(cook, inputs, events, cook.aliveMillis()));

        Moment stalled = lesson.moments().stream()
                .filter(moment -> moment.choices().contains(Choice.HEAT))
                .findFirst()
                .orElseThrow();
        assertThat(stalled.t()).isEqualTo(stalledT);
        assertThat(stalled.title()).isNotEmpty().isNotEqualTo("Spoonfall called.");
        assertThat(stalled.said()).contains("?");
        assertThat(stalled.choices()).containsExactly(Choice.HEAT, Choice.STIR, Choice.TEST, Choice.NOTHING);
        assertThat(stalled.done())
                .startsWith("The call was answered after 20 seconds.")
                .contains("The set was tested after 2 minutes.");
        Moment test = lesson.moments().stream()
                .filter(moment -> moment.kind() == Moment.Kind.TEST)
                .findFirst()
                .orElseThrow();
        assertThat(test.done()).containsExactly("What was seen after 95 seconds: drops join.");
        assertThat(test.said()).contains("Leave the pan off the heat.");
        assertThat(lesson.frames())
                .as("the words on the test were said again")
                .anyMatch(frame -> frame.saying().state().equals("Testing the set."));
        assertThat(lesson.moments()).isSortedAccordingTo(Comparator.comparingDouble(Moment::t));
    }

    @Test
    void aRecordOfWordsThatCannotBe_isGoneThroughAllTheSame() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 4);
        StoredCook cook = stored(trace);
        List<CookInput> inputs = new ArrayList<>(cook.inputs());
        for (String kind :
                List.of("basis", "correction", "set-test", "shelve", "acknowledge", "recook", "of-tomorrow")) {
            inputs.add(word(600, kind, "{\"id\":7}"));
        }
        inputs.add(word(700, "came-back", "{\"leftMillis\":640000}"));
        ObjectNode basis = CookJson.basis(cook.header().basis());
        inputs.add(new CookInput.Word(710_000, "basis", basis));
        inputs.add(word(1000, "taken-back", "{\"id\":\"x\"}"));
        inputs.sort(Comparator.comparingLong(CookInput::takenMillis));
        Lesson lesson = LessonMaker.of(with(cook, inputs, cook.events(), cook.aliveMillis()));
        assertThat(lesson.frames()).isSortedAccordingTo(Comparator.comparingDouble(Frame::t));
        assertThat(lesson.frames()).anyMatch(frame -> frame.stage() == Stage.ROLLING_BOIL);
    }

    @Test
    void aCookThatWasReadByHand_isALessonToo_withItsForecastAndNoSilence() {
        Trace trace = new ByHand(90, 0.5).look("lesson", Cooks.trace(Scenario.CLEAN, 4));
        StoredCook typed = byHand(trace);
        Lesson lesson = LessonMaker.of(typed);
        assertThat(lesson.frames()).isSortedAccordingTo(Comparator.comparingDouble(Frame::t));
        assertThat(lesson.frames()).anyMatch(frame -> frame.sets().isPresent());
        assertThat(lesson.frames()).anyMatch(frame -> frame.stage() == Stage.ROLLING_BOIL);
        assertThat(lesson.frames())
                .as("a minute and a half between two readings is no silence")
                .noneMatch(frame -> frame.saying().state().startsWith("No word"));
        assertThat(lesson.moments()).extracting(Moment::kind).contains(Moment.Kind.ALARM, Moment.Kind.STAGE);
    }

    private StoredCook byHand(Trace trace) {
        CookSettings settings = Cooks.settings(trace);
        List<ProbeTrust> trusts = List.of(ProbeTrust.byHand("pan"));
        CookMonitor monitor = new CookMonitor(settings, 0, trusts);
        List<CookInput> inputs = new ArrayList<>();
        List<StoredCook.Event> events = new ArrayList<>();
        for (int i = 0; i < trace.size(); i++) {
            if (trace.temperatureC(i).isPresent()) {
                long millis = Math.round(trace.elapsedS(i) * 1000);
                double temperatureC = trace.temperatureC(i).getAsDouble();
                inputs.add(new CookInput.Heard("pan", millis, millis, OptionalDouble.of(temperatureC), Quality.GOOD));
                inputs.add(new CookInput.Word(
                        millis,
                        "typed",
                        CookJson.object()
                                .put("id", "reading-" + i)
                                .put("value", temperatureC)
                                .put("unit", "CELSIUS")));
                monitor.accept(Reading.good("pan", millis * 1_000_000, temperatureC, "")).stream()
                        .filter(event -> !CookEventJson.kind(event).isEmpty())
                        .forEach(event -> events.add(new StoredCook.Event(
                                Math.round(event.t() * 1000), CookEventJson.kind(event), CookEventJson.detail(event))));
            }
        }
        CookBasis basis = new CookBasis(settings, trusts, settings.waterBoil(), Optional.empty());
        CookHeader header = new CookHeader(1, "", "", "", "live", 1, Instant.EPOCH, settings, basis, Map.of());
        long lastMillis = Math.round(trace.lastS() * 1000);
        StoredCook any = stored(Cooks.trace(Scenario.CLEAN, 4));
        return new StoredCook(
                1, header, inputs, events, List.of(), lastMillis, any.aliveAt(), OptionalLong.of(lastMillis), 0);
    }

    @Test
    void aCookThatWasPlanned_isForecastByItsPlanAgain() {
        StoredCook cook = stored(Cooks.trace(Scenario.CLEAN, 4));
        List<CookInput> inputs = new ArrayList<>(cook.inputs());
        inputs.add(0, word(0, PlannedBatch.WORD, PLAN));
        Lesson without = LessonMaker.of(cook);
        Lesson planned = LessonMaker.of(with(cook, inputs, cook.events(), cook.aliveMillis()));
        assertThat(planned.frames()).hasSameSizeAs(without.frames());
        assertThat(firstWidthS(planned)).isLessThan(firstWidthS(without));
        assertThat(planned.moments()).hasSameSizeAs(without.moments());
    }

    private static double firstWidthS(Lesson lesson) {
        CalmTime.Shown first = lesson.frames().stream()
                .flatMap(frame -> frame.sets().stream())
                .findFirst()
                .orElseThrow();
        return first.untilT() - first.fromT();
    }

    @Test
    void aHugeCook_makesABoundedLesson() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 4);
        StoredCook cook = stored(trace);
        List<CookInput> inputs = new ArrayList<>();
        List<StoredCook.Event> events = new ArrayList<>();
        for (long minute = 0; minute < 40L * 24 * 60; minute++) {
            inputs.add(
                    new CookInput.Heard("pan", minute * 60_000, minute * 60_000, OptionalDouble.of(90), Quality.GOOD));
            events.add(event(minute * 60.0, "stage", "{\"stage\":\"warming\"}"));
        }
        Lesson lesson = LessonMaker.of(with(cook, inputs, events, Long.MAX_VALUE));
        assertThat(lesson.frames()).hasSizeLessThanOrEqualTo(LessonMaker.MOST_FRAMES);
        assertThat(lesson.moments()).hasSize(LessonMaker.MOST_MOMENTS);
        assertThat(lesson.lastT()).isEqualTo(LessonMaker.LONGEST_S);
        assertThat(lesson.cut()).isTrue();
        Lesson none = LessonMaker.of(with(cook, List.of(), List.of(), 0));
        assertThat(none.moments()).isEmpty();
        assertThat(none.frames()).hasSize(1);
    }
}
