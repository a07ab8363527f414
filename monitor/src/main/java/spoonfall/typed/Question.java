package spoonfall.typed;

import java.util.List;
import java.util.Optional;

/**
 * What is asked back of something that can hardly be so. Nothing is taken until it is answered.
 *
 * @param about what seems wrong with it
 * @param text the question, for people
 * @param detail why it is asked, in one sentence
 * @param choices the answers, the likeliest first; the last takes nothing
 */
public record Question(About about, String text, String detail, List<Choice> choices) {
    /** What seems wrong. */
    public enum About {
        /** The point is missing or in the wrong place. */
        POINT,
        /** It is in the other unit. */
        UNIT,
        /** The pan cannot have got there. */
        JUMP
    }

    /**
     * An answer.
     *
     * @param label what its button says
     * @param reading what is taken then; empty for nothing
     */
    public record Choice(String label, Optional<Typed> reading) {}

    /** Keeps a copy of the choices. */
    public Question {
        choices = List.copyOf(choices);
    }
}
