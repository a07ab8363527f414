package spoonfall.probe.serial;

import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Reading;

/** A thermometer that speaks only when asked, alone on its line or with others. */
final class AskingProbe implements Probe {
    private final AskingLine line;
    private final String name;
    private final Question question;
    private final Pace pace;
    private volatile State state = new State.Fresh();
    private String trouble = "";
    private boolean found;

    /** How far its life has come. */
    private sealed interface State {
        /** Not started. */
        record Fresh() implements State {}

        /** Started, and heard by somebody. */
        record Started(ProbeListener listener) implements State {}

        /** Closed for good. */
        record Closed() implements State {}
    }

    AskingProbe(AskingLine line, String name, Question question, Pace pace) {
        this.line = line;
        this.name = name;
        this.question = question;
        this.pace = pace;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String place() {
        return line.settings().path();
    }

    @Override
    public void start(ProbeListener listener) {
        synchronized (this) {
            if (!(state instanceof State.Fresh)) {
                throw new IllegalStateException("probe " + name + " was started or closed before");
            }
            state = new State.Started(listener);
        }
        line.join();
    }

    /** Waits for a call of the listener that is under way; there is none afterwards. */
    @Override
    public void close() {
        synchronized (this) {
            state = new State.Closed();
        }
        line.leave();
    }

    Question question() {
        return question;
    }

    Pace pace() {
        return pace;
    }

    /** Whether it was started and not closed. */
    boolean active() {
        return state instanceof State.Started;
    }

    void lineOpened(long nowNanos) {
        found = false;
        pace.restart(nowNanos);
    }

    /** Tells the listener what came of asking. */
    synchronized void hear(Question.Outcome outcome) {
        if (state instanceof State.Started started) {
            long atNanos = line.nowNanos();
            if (outcome.trouble().isEmpty()) {
                find(started.listener(), atNanos);
            } else {
                lose(place() + " at " + line.settings().description() + ": " + outcome.trouble());
            }
            started.listener()
                    .reading(new Reading(name, atNanos, outcome.temperatureC(), outcome.raw(), outcome.quality()));
        }
    }

    private void find(ProbeListener listener, long atNanos) {
        if (!found) {
            found = true;
            trouble = "";
            listener.found(
                    name, place() + ", " + line.settings().description() + ": " + question.description(), atNanos);
        }
    }

    /** Says what is wrong, once until the instrument answers again. */
    synchronized void lose(String what) {
        found = false;
        if (state instanceof State.Started started && trouble.isEmpty()) {
            trouble = what;
            started.listener().lost(name, what, line.nowNanos());
        }
    }
}
