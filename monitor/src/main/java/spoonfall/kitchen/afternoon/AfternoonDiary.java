package spoonfall.kitchen.afternoon;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.afternoon.BatchNotes;
import spoonfall.kitchen.file.NotesFile;
import spoonfall.kitchen.file.NotesText;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.log.CookJson;
import spoonfall.log.Diary;
import spoonfall.log.Recalled;

/**
 * Writes down what was said of a pan's afternoon, so that a start after a kill goes on with it, whatever became of the cook.
 * What the probe saw is not in it: the cook's readings say that again. Used by the kitchen's thread alone.
 */
public final class AfternoonDiary {
    /** A word of somebody's. */
    static final String SAID = "said";

    /** Another cook began in the same afternoon. */
    static final String PAN_FORGOTTEN = "pan-forgotten";

    private static final Logger LOG = LoggerFactory.getLogger(AfternoonDiary.class);

    private final Diary diary;
    private final KitchenPlan plan;
    private final List<Diary.Line> lines = new ArrayList<>();
    private boolean open;
    private ObjectNode header = CookJson.object();

    /** Writes into a diary. */
    public AfternoonDiary(Diary diary, KitchenPlan plan) {
        this.diary = diary;
        this.plan = plan;
    }

    /**
     * An afternoon that an earlier run left.
     *
     * @param notes how it began
     * @param startedAt the wall clock then
     * @param lines what was said of it, in order
     * @param nowMillis milliseconds of the afternoon by now
     */
    record Left(BatchNotes notes, Instant startedAt, List<Diary.Line> lines, long nowMillis) {}

    /** The afternoon that an earlier run left, if it is still this kitchen's; what follows belongs to it. */
    Recalled<Left> left() {
        return open ? Recalled.nothing() : diary.left().flatMap(this::left);
    }

    private Optional<Left> left(Diary.Left left) {
        ObjectNode then = left.header();
        boolean ours = !left.lines().isEmpty()
                && plan.isStill(
                        left.away(),
                        then.path("batch").asText(),
                        then.path("source").asText(),
                        then.path("speed").asDouble());
        if (!ours) {
            return Optional.empty();
        }
        try {
            boolean sameFile = NotesText.of(plan.notes()).equals(CookJson.text(then, "asked"));
            BatchNotes notes = sameFile ? NotesFile.parse(CookJson.text(then, "notes")) : plan.notes();
            Instant startedAt = Instant.parse(CookJson.text(then, "startedAt"));
            diary.resumed(left);
            header = then;
            lines.addAll(left.lines());
            open = true;
            long awayMillis = Math.round(left.away().toMillis() * plan.speed());
            return Optional.of(new Left(notes, startedAt, left.lines(), left.aliveMillis() + awayMillis));
        } catch (IllegalArgumentException | DateTimeException e) {
            LOG.warn("the afternoon that was left cannot be gone on with: {}", e.getMessage());
            return Optional.empty();
        }
    }

    /** A new afternoon begins; it is written when something is said of it. */
    void begin(BatchNotes notes, Instant startedAt) {
        header = CookJson.object().put("batch", plan.batch());
        header.put("source", plan.source().wireName()).put("speed", plan.speed());
        header.put("asked", NotesText.of(plan.notes())).put("notes", NotesText.of(notes));
        header.put("startedAt", startedAt.toString());
        lines.clear();
        open = false;
    }

    /**
     * A diary as it was when a new afternoon began.
     *
     * @param header what was known at its beginning
     * @param lines what was said of it, in order
     */
    record Kept(ObjectNode header, List<Diary.Line> lines) {
        /** Keeps a copy of the list. */
        Kept {
            lines = List.copyOf(lines);
        }
    }

    /** How it is now, to be kept while a new afternoon begins. */
    Kept kept() {
        return new Kept(header, lines);
    }

    /** An afternoon that was thought to be over goes on at that second of it. */
    void goBackTo(Kept kept, double t) {
        header = kept.header();
        lines.clear();
        lines.addAll(kept.lines());
        open = true;
        diary.began(header);
        lines.forEach(diary::line);
        alive(t);
        diary.settle();
    }

    /** Something is said at that second of the afternoon; it is on the disk when this returns, if the disk is quick. */
    void say(double t, AfternoonWord word) {
        add(new Diary.Line(Math.round(t * 1000), SAID, word.detail()));
    }

    /** Another cook began in the same afternoon. */
    void forgetThePan(double t) {
        if (open) {
            add(new Diary.Line(Math.round(t * 1000), PAN_FORGOTTEN, CookJson.object()));
        }
    }

    private void add(Diary.Line line) {
        if (!open) {
            open = true;
            diary.began(header);
        }
        lines.add(line);
        diary.line(line);
        diary.alive(line.atMillis());
        diary.settle();
    }

    /** The afternoon was followed up to that second. */
    void alive(double t) {
        if (open) {
            diary.alive(Math.round(t * 1000));
        }
    }
}
