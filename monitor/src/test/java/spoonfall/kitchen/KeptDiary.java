package spoonfall.kitchen;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spoonfall.log.Diary;
import spoonfall.log.Recalled;

/** A diary in memory, which outlives the kitchen that writes it as a file outlives a kill. */
public final class KeptDiary implements Diary {
    public final List<Line> lines = new ArrayList<>();
    public Duration away = Duration.ZERO;

    /** So many times it is asked in vain what was left. */
    public volatile int silentFor;

    private int asked;
    private @Nullable ObjectNode header;
    private long aliveMillis;

    @Override
    public synchronized Recalled<Left> left() {
        if (asked++ < silentFor) {
            return Recalled.notKnown();
        }
        return Recalled.of(Optional.ofNullable(header).map(begun -> new Left(1, begun, lines, aliveMillis, away)));
    }

    @Override
    public synchronized void began(ObjectNode begun) {
        header = begun;
        lines.clear();
        aliveMillis = 0;
    }

    @Override
    public void resumed(Left left) {
        // it is the only one
    }

    @Override
    public synchronized void line(Line line) {
        lines.add(line);
    }

    @Override
    public synchronized void alive(long atMillis) {
        aliveMillis = atMillis;
    }

    @Override
    public boolean settle() {
        return true;
    }
}
