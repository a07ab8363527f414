package spoonfall.kitchen.cook;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import spoonfall.cook.TestWord;
import spoonfall.kitchen.typed.HandEntry;
import spoonfall.log.CookJson;
import spoonfall.log.memory.BatchMemory;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.probe.line.TemperatureUnit;
import spoonfall.settest.TestAnswer;
import spoonfall.typed.Typed;

/** The kinds of words that a cook's record keeps. */
public final class Words {
    /** Somebody knows of an alarm. */
    public static final String ACKNOWLEDGE = "acknowledge";

    /** Somebody put an alarm aside. */
    public static final String SHELVE = "shelve";

    /** Somebody took it back. */
    public static final String UNSHELVE = "unshelve";

    /** What the cook is measured against has changed. */
    public static final String BASIS = "basis";

    /** What makes a thermometer's readings true has changed. */
    public static final String CORRECTION = "correction";

    /** The watch went on after nobody watched. */
    public static final String CAME_BACK = "came-back";

    /** Whether the cook is written down has changed. */
    public static final String RECORDING = "recording";

    /** Somebody said something about a set test. */
    public static final String SET_TEST = "set-test";

    /** Somebody said how far the afternoon is; found in cooks from before afternoons had a diary of their own. */
    public static final String AFTERNOON = "afternoon";

    /** The page was reminded of something that does not come of the cook alone, and comes at other moments when it is gone through again. */
    public static final String REMINDED = "reminded";

    /** The wall clock was set. */
    public static final String CLOCK_SET = "clock-set";

    /** The latest reading was typed, under an id. */
    public static final String TYPED = "typed";

    /** The latest typed reading was taken back. */
    public static final String TAKEN_BACK = "taken-back";

    /** The cook goes on with an earlier one. */
    public static final String RECOOK = BatchMemory.RECOOK;

    /** Somebody said what batch is in the pan, by its plan, or that none is. */
    public static final String PLAN = PlannedBatch.WORD;

    /** Somebody said how many jars it filled. */
    public static final String FILLED = "filled";

    private Words() {}

    /** All that is needed to say it again. */
    public static ObjectNode detail(TestWord word) {
        ObjectNode detail = CookJson.object().put("says", word.says().name().toLowerCase(Locale.ROOT));
        detail.put("id", word.id()).put("plateS", word.plateS());
        word.answer()
                .ifPresent(
                        answer -> detail.put("kind", answer.kind().wireName()).put("answer", answer.wireName()));
        return detail;
    }

    /** The word on a set test that {@link #detail} kept. */
    public static TestWord testWord(ObjectNode detail) {
        String says = CookJson.text(detail, "says").toUpperCase(Locale.ROOT);
        Optional<TestAnswer> answer = Stream.of(TestAnswer.values())
                .filter(one -> one.wireName().equals(detail.path("answer").asText())
                        && one.kind().wireName().equals(detail.path("kind").asText()))
                .findFirst();
        return new TestWord(
                TestWord.Says.valueOf(says), CookJson.text(detail, "id"), CookJson.number(detail, "plateS"), answer);
    }

    /** What tells a typed reading from others. */
    public static ObjectNode detail(HandEntry entry) {
        return CookJson.object()
                .put("id", entry.id())
                .put("value", entry.typed().value())
                .put("unit", entry.typed().unit().name());
    }

    /** The typed reading that {@link #detail(HandEntry)} kept, at that second of its cook. */
    public static HandEntry entry(ObjectNode detail, double t, long atNanos) {
        TemperatureUnit unit = TemperatureUnit.valueOf(CookJson.text(detail, "unit"));
        return new HandEntry(
                CookJson.text(detail, "id"), new Typed(CookJson.number(detail, "value"), unit), t, atNanos);
    }
}
