package spoonfall.kitchen.canner;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.canner.CannerMemory;
import spoonfall.canner.CannerWatch;
import spoonfall.log.CookJson;
import spoonfall.log.Diary;
import spoonfall.log.Recalled;

/**
 * Writes down how the jars stand whenever that changes, so that a start after a kill goes on with them. A diary lasts from the
 * first jars until none are anywhere. Used by the canner's thread alone.
 */
final class JarDiary {
    private static final Logger LOG = LoggerFactory.getLogger(JarDiary.class);

    private final Diary diary;
    private final double speed;
    private boolean open;

    /**
     * Writes into a diary.
     *
     * @param speed how many seconds of the jars' clock pass in one of ours
     */
    JarDiary(Diary diary, double speed) {
        this.diary = diary;
        this.speed = speed;
    }

    /** A watch that goes on with the jars that an earlier run left; nothing if it left none, or if others were told of by now. */
    Recalled<CannerWatch> left() {
        if (open) {
            LOG.warn("jars were told of before the record could say what an earlier run left; these go on");
            return Recalled.nothing();
        }
        return diary.left().flatMap(this::left);
    }

    private Optional<CannerWatch> left(Diary.Left left) {
        List<Diary.Line> lines = left.lines();
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        try {
            CannerMemory memory = JarsJson.memory(lines.get(lines.size() - 1).detail());
            if (memory.nothingThere()) {
                return Optional.empty();
            }
            double aliveS = Math.max(memory.t(), left.aliveMillis() / 1000.0);
            double awayS = left.away().toMillis() / 1000.0 * speed;
            CannerWatch watch = new CannerWatch(memory, awayS);
            watch.advanceTo(aliveS + awayS);
            diary.resumed(left);
            open = true;
            LOG.warn(
                    "{} there are jars from before: {}",
                    String.format(Locale.ROOT, "Spoonfall was away for %.0f s;", awayS),
                    watch.view().phase().wireName());
            return Optional.of(watch);
        } catch (IllegalArgumentException e) {
            LOG.error("the jars that were left cannot be gone on with ({}); say anew what goes in", e.getMessage());
            return Optional.empty();
        }
    }

    /** The jars stand as {@code memory} says now; it is on the disk when this returns, if the disk is quick. */
    void changed(CannerMemory memory) {
        if (!open && memory.nothingThere()) {
            return;
        }
        if (!open) {
            diary.began(CookJson.object());
            open = true;
        }
        diary.line(new Diary.Line(millis(memory.t()), "stands", JarsJson.of(memory)));
        diary.alive(millis(memory.t()));
        diary.settle();
        open = !memory.nothingThere();
    }

    /** The jars were watched up to that second. */
    void alive(double t) {
        if (open) {
            diary.alive(millis(t));
        }
    }

    private static long millis(double t) {
        return Math.round(t * 1000);
    }
}
