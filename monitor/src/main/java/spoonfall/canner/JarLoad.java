package spoonfall.canner;

import spoonfall.canning.JarBatch;
import spoonfall.canning.ProcessingAnswer;
import spoonfall.canning.ProcessingTables;
import spoonfall.physics.Air;
import spoonfall.physics.Water;

/**
 * Jars that go into the canner.
 *
 * @param batch what they are
 * @param time how long they are processed, with the reasons
 * @param jars how many, 1 to {@link #MOST_JARS}
 */
public record JarLoad(JarBatch batch, ProcessingAnswer.Time time, int jars) {
    /** More do not fit into any canner at home. */
    public static final int MOST_JARS = 48;

    /** Validates the number of jars. */
    public JarLoad {
        if (jars < 1 || jars > MOST_JARS) {
            throw new IllegalArgumentException("a canner holds 1 to " + MOST_JARS + " jars, not " + jars);
        }
    }

    /**
     * So many jars of a batch.
     *
     * @throws NotNow if no time is published for them
     */
    public static JarLoad of(JarBatch batch, int jars) {
        ProcessingAnswer answer = ProcessingTables.answer(batch);
        if (answer instanceof ProcessingAnswer.Time time) {
            return new JarLoad(batch, time, jars);
        }
        throw new NotNow(answer instanceof ProcessingAnswer.None none ? none.text() : "no time is published");
    }

    /** Where water boils in this kitchen by its elevation, in °C; the weather moves it by up to 0.4 °C. */
    public double waterBoilC() {
        return Water.boilingPointC(Air.pressurePa(batch.elevationM()));
    }

    /** The processing time in seconds. */
    public double processS() {
        return time.minutes() * 60.0;
    }
}
