package spoonfall.probe.serial;

import java.io.IOException;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import spoonfall.probe.Quality;

/** What an instrument is asked for its temperature, and how its answer is read. */
public interface Question {
    /**
     * Asks once, with whatever repeats that takes, and returns when there is an answer or the time for one is over.
     *
     * @param link the open line
     * @param closing whether the probe is being closed, when any answer will do
     * @throws IOException if the device is gone
     */
    Outcome ask(SerialLink link, BooleanSupplier closing) throws IOException;

    /** What is asked and read, in a few words. */
    String description();

    /** The address of the instrument that is asked; questions with the same one go to the same instrument. */
    int instrument();

    /**
     * What came of asking.
     *
     * @param temperatureC in °C; present exactly when the quality is {@link Quality#GOOD}
     * @param quality how far to trust it
     * @param raw what was answered, for people
     * @param trouble what is wrong and what to check, in a sentence that goes on from the port; empty when the
     *     instrument is understood
     * @param waitedOut whether the time for an answer ran out, so that one may still be on its way
     */
    record Outcome(OptionalDouble temperatureC, Quality quality, String raw, String trouble, boolean waitedOut) {}
}
