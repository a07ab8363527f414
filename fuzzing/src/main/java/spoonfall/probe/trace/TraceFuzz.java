package spoonfall.probe.trace;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import spoonfall.fuzz.Must;
import spoonfall.fuzz.Scratch;

/** Traces and their metadata, as files of somebody else's. */
public final class TraceFuzz {
    private static final String NAME = "trace.csv";
    private static final String BESIDE = NAME + "-metadata.json";

    /** What parts the trace from its metadata in the made-up input. */
    private static final String PARTING = "\n%%%\n";

    private static final double MILLI = 0.0005 + 1e-9;

    private TraceFuzz() {}

    /** A trace is refused in one line, or says the same when it is written and read again. */
    public static void trace(byte[] input) {
        String text = new String(input, StandardCharsets.ISO_8859_1);
        int parting = text.indexOf(PARTING);
        String csv = parting < 0 ? text : text.substring(0, parting);
        Path file = Scratch.holding(NAME, csv.getBytes(StandardCharsets.ISO_8859_1));
        if (parting < 0) {
            Scratch.without(BESIDE);
        } else {
            String metadata = text.substring(parting + PARTING.length());
            Scratch.holding(BESIDE, metadata.getBytes(StandardCharsets.ISO_8859_1));
        }
        Trace trace;
        try {
            trace = Trace.read(file);
        } catch (TraceException e) {
            Must.beOneLine(String.valueOf(e.getMessage()));
            Must.hold(String.valueOf(e.getMessage()).contains(NAME), "a complaint does not name the file");
            return;
        }
        Must.hold(trace.size() > 0 && trace.size() <= csv.length(), "rows out of nothing");
        trace.write(file);
        Trace again = Trace.read(file);
        same(trace, again);
        Must.equal(again.info(), trace.info(), "other metadata after writing");
        Must.equal(again.csv(), trace.csv(), "another trace after writing");
    }

    private static void same(Trace trace, Trace again) {
        Must.equal(again.size(), trace.size(), "another number of rows after writing");
        double before = 0;
        for (int i = 0; i < trace.size(); i++) {
            double elapsedS = trace.elapsedS(i);
            Must.hold(elapsedS >= before && Double.isFinite(elapsedS), "a time of " + elapsedS);
            Must.hold(Math.abs(again.elapsedS(i) - elapsedS) <= MILLI, "another time after writing");
            Must.equal(again.temperatureC(i), trace.temperatureC(i), "another temperature after writing");
            before = elapsedS;
        }
    }
}
