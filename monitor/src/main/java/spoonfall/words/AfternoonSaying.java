package spoonfall.words;

import java.util.Optional;

/**
 * What is said of an afternoon.
 *
 * @param saying the sentence; clocks in it are in seconds of the afternoon
 * @param act the one thing to tap; empty when nothing is left to do
 * @param other a second thing, quieter
 */
public record AfternoonSaying(Saying saying, Optional<Act> act, Optional<Act> other) {
    /**
     * Something to tap.
     *
     * @param does {@code begin} or {@code done} for a step, {@code prepared} for a preparation
     * @param id of the step or preparation
     * @param label what is said by tapping it
     */
    public record Act(String does, String id, String label) {}
}
