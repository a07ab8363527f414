package spoonfall.probe.trace;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.BitSet;
import java.util.OptionalDouble;

/**
 * A recorded cook: seconds since it began, and the temperature at each of them. A row without a temperature
 * is a reading that was lost; so is one that no pan thermometer shows, as long as others can be believed.
 */
public final class Trace {
    private final TraceInfo info;
    private final double[] elapsed;
    private final double[] temperatures;
    private final BitSet missing;

    private Trace(TraceInfo info, double[] elapsed, double[] temperatures, BitSet missing) {
        this.info = info;
        this.elapsed = elapsed;
        this.temperatures = temperatures;
        this.missing = missing;
    }

    /**
     * Reads a trace and, from the file {@code NAME-metadata.json} beside it, its metadata.
     *
     * @throws TraceException if it cannot be used, saying where and why
     */
    public static Trace read(Path csv) {
        return TraceFile.read(csv);
    }

    /**
     * Writes the trace and its metadata beside it, over whatever was there.
     *
     * @throws TraceException if it cannot be written
     */
    public void write(Path csv) {
        TraceFile.write(this, csv);
    }

    /** The trace as CSV text, times to the millisecond. */
    public String csv() {
        return TraceFile.csv(this);
    }

    /**
     * Its metadata as JSON text (W3C CSVW).
     *
     * @param url name of the CSV file that it describes
     */
    public String metadata(String url) {
        return TraceMetadata.json(info, url);
    }

    /** What is known beside the readings. */
    public TraceInfo info() {
        return info;
    }

    /** How many rows it has. */
    public int size() {
        return elapsed.length;
    }

    /** Seconds since it began, at row {@code i}. */
    public double elapsedS(int i) {
        return elapsed[i];
    }

    /** Temperature in °C at row {@code i}; empty if that reading was lost. */
    public OptionalDouble temperatureC(int i) {
        return missing.get(i) ? OptionalDouble.empty() : OptionalDouble.of(temperatures[i]);
    }

    /** Seconds from its beginning to its last row; 0 for an empty one. */
    public double lastS() {
        return elapsed.length == 0 ? 0 : elapsed[elapsed.length - 1];
    }

    /** The same readings with other information. */
    public Trace with(TraceInfo newInfo) {
        return new Trace(newInfo, elapsed, temperatures, missing);
    }

    /** Collects rows in the order of their time. */
    public static final class Builder {
        private double[] elapsed = new double[1024];
        private double[] temperatures = new double[1024];
        private final BitSet missing = new BitSet();
        private int size;

        /**
         * Adds a row.
         *
         * @param elapsedS seconds since the trace began; not negative, not before the last row
         * @param temperatureC in °C; empty for a lost reading
         */
        public void add(double elapsedS, OptionalDouble temperatureC) {
            if (!(elapsedS >= 0) || Double.isInfinite(elapsedS)) {
                throw new IllegalArgumentException("not a time: " + elapsedS);
            }
            if (size > 0 && elapsedS < elapsed[size - 1]) {
                throw new IllegalArgumentException(
                        "time runs backwards from " + elapsed[size - 1] + " s to " + elapsedS + " s");
            }
            if (size == elapsed.length) {
                elapsed = Arrays.copyOf(elapsed, 2 * size);
                temperatures = Arrays.copyOf(temperatures, 2 * size);
            }
            elapsed[size] = elapsedS;
            if (temperatureC.isPresent()) {
                temperatures[size] = temperatureC.getAsDouble();
            } else {
                missing.set(size);
            }
            size++;
        }

        /** The trace of the rows so far. */
        public Trace build(TraceInfo info) {
            return new Trace(
                    info, Arrays.copyOf(elapsed, size), Arrays.copyOf(temperatures, size), (BitSet) missing.clone());
        }
    }
}
