package spoonfall.kitchen;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spoonfall.cook.Unrecorded;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJournal;
import spoonfall.log.CookNote;
import spoonfall.log.Diary;
import spoonfall.log.Recalled;
import spoonfall.log.UnfinishedCook;

/** A journal in memory, which outlives the kitchen that writes it as a file outlives a kill. */
public final class KeptJournal implements CookJournal {
    public final List<CookInput> inputs = new ArrayList<>();
    public final List<String> events = new ArrayList<>();
    final List<CookNote> notes = new ArrayList<>();
    public final KeptDiary afternoon = new KeptDiary();
    final KeptDiary plan = new KeptDiary();
    public Duration away = Duration.ZERO;

    /** So many times it is asked in vain what was left. */
    public volatile int silentFor;

    public volatile Optional<Unrecorded> trouble = Optional.empty();

    public @Nullable CookHeader header;

    public int resumed;
    public volatile boolean healthy = true;
    public volatile boolean numberTold;
    public int ended;
    private int asked;
    private int last;
    private long aliveMillis;

    @Override
    public String pan() {
        return "";
    }

    @Override
    public Recalled<UnfinishedCook> unfinished() {
        if (asked++ < silentFor) {
            return Recalled.notKnown();
        }
        return Recalled.of(Optional.ofNullable(header)
                .map(begun -> new UnfinishedCook(1, begun, inputs, notes, events.size(), latestMillis(), away)));
    }

    private long latestMillis() {
        long input = inputs.isEmpty() ? 0 : inputs.get(inputs.size() - 1).takenMillis();
        return Math.max(aliveMillis, input);
    }

    @Override
    public Recalled<Integer> lastNumber() {
        if (asked < silentFor) {
            return Recalled.notKnown();
        }
        numberTold = true;
        return Recalled.of(Optional.of(last));
    }

    @Override
    public void began(CookHeader begun) {
        header = begun;
        last = begun.number();
        inputs.clear();
        notes.clear();
        events.clear();
    }

    @Override
    public void resumed(UnfinishedCook cook) {
        resumed++;
    }

    @Override
    public void input(CookInput input) {
        inputs.add(input);
    }

    @Override
    public void note(CookNote note) {
        notes.add(note);
    }

    @Override
    public void event(long atMillis, String kind, ObjectNode detail) {
        events.add(kind + " " + atMillis + " " + detail);
    }

    @Override
    public void alive(long atMillis) {
        aliveMillis = atMillis;
    }

    @Override
    public void ended(long atMillis) {
        ended++;
        header = null;
    }

    @Override
    public Diary afternoon() {
        return afternoon;
    }

    @Override
    public Diary plan() {
        return plan;
    }

    @Override
    public boolean settle() {
        return true;
    }

    @Override
    public boolean healthy() {
        return healthy;
    }

    @Override
    public Optional<Unrecorded> trouble() {
        return trouble;
    }
}
