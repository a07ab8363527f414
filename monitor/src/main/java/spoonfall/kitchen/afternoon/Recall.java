package spoonfall.kitchen.afternoon;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.afternoon.Afternoon;
import spoonfall.log.Diary;

/** What was said of an afternoon that an earlier run left, and is said again when the afternoon comes to it. */
final class Recall {
    private static final Logger LOG = LoggerFactory.getLogger(Recall.class);

    private final Deque<Diary.Line> unsaid;

    Recall(List<Diary.Line> lines) {
        unsaid = new ArrayDeque<>(lines);
    }

    /** Whether all of it was said again. */
    boolean isOver() {
        return unsaid.isEmpty();
    }

    /** Says again what was said until that second. */
    void sayUntil(double untilT, Afternoon afternoon, AfternoonClock clock) {
        while (!unsaid.isEmpty() && unsaid.getFirst().atMillis() <= untilT * 1000) {
            Diary.Line line = unsaid.removeFirst();
            double lineT = line.atMillis() / 1000.0;
            clock.reached(lineT);
            try {
                say(line, afternoon, lineT);
            } catch (IllegalArgumentException e) {
                LOG.warn("a word on the afternoon is passed over: {}", e.getMessage());
            }
        }
    }

    private static void say(Diary.Line line, Afternoon afternoon, double lineT) {
        if (line.kind().equals(AfternoonDiary.SAID)) {
            AfternoonWord.of(line.detail()).say(afternoon, lineT);
        } else if (line.kind().equals(AfternoonDiary.PAN_FORGOTTEN)) {
            afternoon.forgetThePan();
        }
    }
}
