package spoonfall.afternoon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import spoonfall.afternoon.Timeline.Moment;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Stage;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.cook.calm.Due;
import spoonfall.cook.calm.Quiet;

/**
 * One afternoon: feed it the pan and what somebody says, and it says what is done and what is due. Every word can be
 * taken back, the newest first, and so can what the probe saw. Times are seconds of the afternoon.
 *
 * <p>Not safe for use by several threads.
 */
public final class Afternoon {
    /** Nobody does so much in an afternoon. */
    private static final int MOST_MARKS = 1000;

    /** What would come too late if it waited does not. */
    private static final double WAITS_UNTIL_S = 90;

    private record Noted(long number, Mark mark, boolean counts) {}

    private final BatchNotes begunWith;
    private final List<Noted> marks = new ArrayList<>();
    private final Map<String, Due> dues = new HashMap<>();
    private final List<Reminder> reminders = new ArrayList<>();
    private final Quiet quiet = new Quiet();
    private PanSight sight = new PanSight();
    private boolean isOff;
    private Progress progress;
    private long numbers;
    private double t;

    /** An afternoon at its very beginning. */
    public Afternoon(BatchNotes notes) {
        begunWith = notes;
        progress = new Progress(notes);
    }

    /** The notes as they are now. */
    public BatchNotes notes() {
        return progress.notes();
    }

    /**
     * Lets time pass, and takes note of the pan.
     *
     * @param nowT seconds of the afternoon; a time before the latest counts as the latest
     * @param status how the pan is; empty when no cook has begun. Its own seconds are not looked at
     * @param foretold what is told of the forecast, here and elsewhere, in seconds of the afternoon
     * @param goesBack whether a set test found it not set yet and it is not back at the boil since
     */
    public void follow(
            double nowT, Optional<CookStatus> status, Optional<CalmForecast.Shown> foretold, boolean goesBack) {
        t = Math.max(t, nowT);
        Optional<Step> before = progress.current();
        progress.advance(t);
        Optional<Step> after = progress.current();
        boolean lapsed = before.isPresent() && !before.map(Step::id).equals(after.map(Step::id));
        status.ifPresent(pan -> sight.look(t, pan, goesBack).forEach(this::note));
        status.ifPresent(pan -> quiet.follow(t, pan.stage(), pan.forecast()));
        isOff = status.filter(pan -> pan.stage() == Stage.OFF_THE_HEAT).isPresent();
        if (lapsed) {
            sayWhatBegan(before.get());
        }
        sayWhatIsDue(schedule(foretold));
    }

    /** A new cook has begun in the pan, as after a check of the thermometer: what the probe saw counts no more. */
    public void forgetThePan() {
        marks.removeIf(noted -> noted.mark() instanceof Mark.Seen);
        sight = new PanSight();
        again();
    }

    /**
     * Somebody says that a step is done; all before it are then over, too. Harmless when it was over already.
     *
     * @throws IllegalArgumentException if the notes have no such step
     */
    public void tap(String step, double atT) {
        Step known = step(step);
        say(atT, now -> new Mark.Ended(now, step, By.HAND, known.name()));
    }

    /** Somebody says that a preparation was done. Harmless when it was already. */
    public void prepare(String preparation, double atT) {
        Preparation known = preparation(preparation);
        say(atT, now -> new Mark.Prepared(now, preparation, known.name()));
    }

    /** Somebody begins a step; all before it are then over. Harmless when it has begun. */
    public void begin(String step, double atT) {
        Step known = step(step);
        say(atT, now -> new Mark.Begun(now, step, By.HAND, known.name()));
    }

    /** A step is left out this time. Harmless when it is over. */
    public void skip(String step, double atT) {
        Step known = step(step);
        say(atT, now -> new Mark.Skipped(now, step, known.name()));
    }

    /** Another timer says that a step has begun, such as that of the jars the processing; all before it are over. */
    public void stepStarted(String step, double atT) {
        Step known = step(step);
        say(atT, now -> new Mark.Begun(now, step, By.TIMER, known.name()));
    }

    /** Another timer says that a step is done, such as that of the jars the processing; all before it are over. */
    public void stepDone(String step, double atT) {
        Step known = step(step);
        say(atT, now -> new Mark.Ended(now, step, By.TIMER, known.name()));
    }

    /**
     * What was begun with a preparation is ready, as a canner that boils: how long it took is learnt. Nothing is learnt when
     * nobody said when it was begun, or when the cook is reminded of it anyway.
     */
    public void prepared(String preparation, double atT) {
        Preparation known = preparation(preparation);
        double now = Math.max(t, atT);
        progress.preparedT(known).ifPresent(begunT -> {
            int minutes = (int) Math.ceil((now - begunT) / 60);
            if (known.saidBy().isEmpty() && minutes >= 1 && minutes <= 240) {
                BatchNotes learnt = notes().changed(preparation, Optional.empty(), Optional.of(minutes));
                say(
                        now,
                        at -> new Mark.Edited(
                                at, learnt, "Learnt: " + known.name() + " takes " + minutes + " minutes"));
            }
        });
    }

    /**
     * The notes become others; what was done so far stays done.
     *
     * @param change how; may throw IllegalArgumentException
     * @param words what it is, for who wants to take it back
     */
    public void edit(UnaryOperator<BatchNotes> change, String words, double atT) {
        BatchNotes changed = change.apply(notes());
        say(atT, now -> new Mark.Edited(now, changed, words));
    }

    /** Takes back what is undone by {@code number}; nothing happens when something newer counts, or it is gone. */
    public void undo(long number) {
        Optional<Noted> last = last();
        if (last.isPresent() && last.get().number() == number) {
            marks.remove(last.get());
            again();
        }
    }

    /** What can be taken back; empty when nothing can. */
    public Optional<Timeline.Undo> undo() {
        return last().map(
                        noted -> new Timeline.Undo(noted.number(), noted.mark().words()));
    }

    /** How it stands, when that is told of the forecast in seconds of the afternoon. */
    public Timeline timeline(Optional<CalmForecast.Shown> foretold) {
        Schedule schedule = schedule(foretold);
        return new Timeline(t, schedule.steps(), schedule.preparations(), isOff, undo());
    }

    /** What is to be said since this was last asked. */
    public List<Reminder> takeReminders() {
        List<Reminder> taken = List.copyOf(reminders);
        reminders.clear();
        return taken;
    }

    private Schedule schedule(Optional<CalmForecast.Shown> foretold) {
        return Schedule.of(progress, t, foretold.filter(pan -> !isOff)); // when it goes back is for the cook to say
    }

    private Optional<Noted> last() {
        for (int i = marks.size() - 1; i >= 0; i--) {
            if (marks.get(i).counts()) {
                return Optional.of(marks.get(i));
            }
        }
        return Optional.empty();
    }

    private void say(double atT, Function<Double, Mark> word) {
        if (marks.size() >= MOST_MARKS) {
            throw new IllegalArgumentException("too much has happened this afternoon; begin a new one");
        }
        t = Math.max(t, atT);
        note(word.apply(t));
    }

    private void note(Mark mark) {
        boolean counts = progress.take(mark);
        if (counts || mark instanceof Mark.Seen) {
            marks.add(new Noted(++numbers, mark, counts));
        }
    }

    /** Goes through what is left of the marks again. */
    private void again() {
        progress = new Progress(begunWith);
        marks.replaceAll(noted -> new Noted(noted.number(), noted.mark(), progress.take(noted.mark())));
        progress.advance(t);
    }

    private void sayWhatBegan(Step before) {
        Optional<Step> began = progress.current();
        if (began.isPresent()) {
            reminders.add(Reminder.now(t, began.get().id(), began.get().name()));
        } else if (progress.firstOpen().isEmpty()) {
            reminders.add(new Reminder(
                    t, before.id(), "The afternoon is over: check the seal of every jar.", "", OptionalDouble.empty()));
        }
    }

    private void sayWhatIsDue(Schedule schedule) {
        for (Preparation preparation : notes().preparations()) {
            Optional<Moment> begins = schedule.begins(preparation.before());
            boolean ours = preparation.saidBy().isEmpty()
                    && progress.preparedT(preparation).isEmpty();
            if (!ours || begins.isEmpty() || progress.current().isEmpty()) {
                continue;
            }
            String key = preparation.id() + " " + preparation.minutes();
            Due due = dues.computeIfAbsent(key, id -> new Due(preparation.leadS()));
            double forT = begins.get().t();
            boolean waits = quiet.isAt(t) && forT - t > WAITS_UNTIL_S;
            if (!waits && due.comes(t, forT - t)) {
                quiet.told(t);
                String step = notes().step(preparation.before()).orElseThrow().name();
                reminders.add(Reminder.ahead(t, preparation.id(), preparation.name(), step, forT));
            }
        }
    }

    private Step step(String id) {
        return notes().step(id)
                .orElseThrow(() -> new IllegalArgumentException("the notes have no step \"" + id + "\""));
    }

    private Preparation preparation(String id) {
        return notes().preparation(id)
                .orElseThrow(() -> new IllegalArgumentException("the notes have no preparation \"" + id + "\""));
    }
}
