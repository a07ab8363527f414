package spoonfall.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookMonitor;
import spoonfall.cook.Cooks;
import spoonfall.cook.Stage;
import spoonfall.lab.Scenario;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.TraceReplay;
import spoonfall.log.store.BatchBook;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.StoredCook;
import spoonfall.probe.Quality;
import spoonfall.probe.trace.Trace;
import spoonfall.words.Saying;
import spoonfall.words.Storyteller;
import spoonfall.words.TestSayings;

final class LessonMakerTest {
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
        Storyteller story = new Storyteller(Cooks.settings(trace));
        List<Saying> said = new ArrayList<>();
        CookMonitor monitor = replay.monitor();
        while (replay.hasNext()) { // a reading a second, told as the live pan tells them
            replay.next();
            if (monitor.timeS() >= said.size()) {
                said.add(TestSayings.over(
                                story.tell(monitor.status(), monitor.alarms()),
                                monitor.tests(),
                                monitor.status(),
                                monitor.alarms())
                        .saying());
            }
        }
        assertThat(lesson.frames()).hasSizeBetween(200, LessonMaker.MOST_FRAMES);
        assertThat(lesson.cut()).isFalse();
        long same = lesson.frames().stream()
                .filter(frame -> said.get((int) frame.t()).equals(frame.saying()))
                .count();
        assertThat(same).isEqualTo(lesson.frames().size());
        assertThat(lesson.frames()).anyMatch(frame -> frame.forecast().isPresent());
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
