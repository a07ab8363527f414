package spoonfall.kitchen.plan;

import java.time.Duration;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.log.CookJson;
import spoonfall.log.Diary;
import spoonfall.log.Recalled;
import spoonfall.log.planned.PlannedBatch;

/**
 * Writes down what was planned for the next cook of a pan, so that a start after a night or a kill still knows it. Used by the kitchen's
 * thread alone.
 */
public final class PlanDiary {
    /** A plan from before the day before yesterday is rather forgotten than about to be cooked. */
    private static final Duration WITHIN = Duration.ofDays(2);

    private static final Logger LOG = LoggerFactory.getLogger(PlanDiary.class);

    private final Diary diary;
    private boolean open;

    /** Writes into a diary. */
    public PlanDiary(Diary diary) {
        this.diary = diary;
    }

    /** What an earlier run left for the next cook; nothing if it left nothing, or too long ago, or if another plan was made by now. */
    public Recalled<PlannedBatch> left() {
        return open ? Recalled.nothing() : diary.left().flatMap(this::left);
    }

    private Optional<PlannedBatch> left(Diary.Left left) {
        if (left.lines().isEmpty()) {
            return Optional.empty();
        }
        try {
            Diary.Line last = left.lines().get(left.lines().size() - 1);
            Optional<PlannedBatch> batch = PlannedBatch.of(last.detail());
            diary.resumed(left);
            open = true;
            return left.away().compareTo(WITHIN) <= 0 ? batch : Optional.empty();
        } catch (IllegalArgumentException e) {
            LOG.warn("the plan that was left cannot be used: {}", e.getMessage());
            return Optional.empty();
        }
    }

    /** That is planned for the next cook now, or nothing; on the disk when this returns, if the disk is quick. */
    public void next(Optional<PlannedBatch> batch) {
        if (!open && batch.isEmpty()) {
            return;
        }
        if (!open) {
            diary.began(CookJson.object());
            open = true;
        }
        diary.line(new Diary.Line(0, PlannedBatch.WORD, PlannedBatch.detail(batch)));
        diary.alive(0);
        diary.settle();
    }
}
