package spoonfall.bench.engine;

import com.espertech.esper.common.client.EPException;
import com.espertech.esper.compiler.client.EPCompileException;
import com.espertech.esper.runtime.client.EPDeployException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import spoonfall.bench.WatchBench;
import spoonfall.cook.Cooks;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.estimate.filter.FilterRace;
import spoonfall.lab.Scenario;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/** What watching costs, then ours beside Hipparchus' filter and Esper's rules in the same run. Prints figures only. */
public final class EngineBench {
    private static final int WARM_UPS = 40;
    private static final int ROUNDS = 21;

    /** Seconds between the faults that its rules of the probe are tried on. */
    private static final double FAULT_S = 1200;

    private static final double LASTS_S = 120;

    /** The second of them; the others say something wrong. */
    private static final int SILENT = 2;

    /** Held, so that it stays as quiet as it is told to be. */
    private static final Logger ESPER = Logger.getLogger("com.espertech");

    private EngineBench() {}

    /** Runs everything. */
    public static void main(String[] args) throws EPCompileException, EPDeployException, EPException {
        WatchBench.main(args);
        Trace trace = WatchBench.twoHours(Scenario.STALL, WatchBench.SEED);
        FilterRace race = new FilterRace(trace);
        double model = timed("the model alone, microseconds a reading", race.readings(), race::modelOnly);
        double ours = timed("our filter with the model", race.readings(), race::ours);
        double theirs = timed("Hipparchus' filter with the same model", race.readings(), race::hipparchus);
        System.out.printf(
                Locale.ROOT,
                "%-52s %.1f; without the model that both ask %.1f%n",
                "times as fast as Hipparchus",
                theirs / ours,
                (theirs - model) / Math.max(1e-3, ours - model));
        besideEsper(trace);
    }

    private static void besideEsper(Trace trace) throws EPCompileException, EPDeployException {
        List<Reading> readings = WatchBench.readings(trace);
        ESPER.setLevel(Level.OFF);
        EsperKitchen esper = new EsperKitchen(Cooks.settings(trace));
        double[] micros = new double[ROUNDS];
        Map<String, Integer> said = Map.of();
        for (int i = -WARM_UPS; i < ROUNDS; i++) {
            EsperKitchen.Run run = esper.run(readings);
            said = run.said();
            if (i >= 0) {
                micros[i] = run.nanos() / 1e3 / readings.size();
            }
        }
        double theirs = print("Esper's rules for the eight alarms, microseconds a reading", micros);
        System.out.println("  rows that they gave: " + said);
        System.out.println(
                "  where the probe falls out, falls silent, stands still and leaps: " + rowsOfFaults(esper, readings));
        double ours = timed("the whole monitor on the same readings", readings.size(), () -> {
            CookMonitor monitor = new CookMonitor(Cooks.settings(trace), 0);
            long events = 0;
            for (Reading reading : readings) {
                events += monitor.accept(reading).size();
            }
            return events;
        });
        System.out.printf(Locale.ROOT, "%-52s %.1f%n", "times as fast as Esper", theirs / ours);
    }

    /** The rows where two minutes of the cook, one after the other, are faults of the probe: each of the four has a rule. */
    private static Map<String, Integer> rowsOfFaults(EsperKitchen esper, List<Reading> readings)
            throws EPDeployException {
        List<Reading> faulty = new ArrayList<>();
        for (Reading reading : readings) {
            double t = reading.atNanos() / 1e9;
            double c = reading.temperatureC().orElseThrow();
            double forS = t % FAULT_S;
            int fault = forS > 0 && forS < LASTS_S ? (int) (t / FAULT_S) : 0;
            double shownC = switch (fault) {
                case 1 -> Math.max(25, c - forS);
                case 3 -> 101;
                case 4 -> c + 12;
                default -> c;
            };
            if (fault != SILENT) {
                faulty.add(Reading.good(reading.probe(), reading.atNanos(), shownC, ""));
            }
        }
        Map<String, Integer> rows = new TreeMap<>(esper.run(faulty).said());
        rows.keySet().removeIf(rule -> !rule.startsWith("probe-"));
        return rows;
    }

    private static double timed(String what, int readings, DoubleSupplier run) {
        double[] micros = new double[ROUNDS];
        double sum = 0;
        for (int i = -WARM_UPS; i < ROUNDS; i++) {
            long begun = System.nanoTime();
            sum += run.getAsDouble();
            if (i >= 0) {
                micros[i] = (System.nanoTime() - begun) / 1e3 / readings;
            }
        }
        if (Double.isNaN(sum)) {
            throw new IllegalStateException(what + " lost its way");
        }
        return print(what, micros);
    }

    private static double print(String what, double[] micros) {
        Arrays.sort(micros);
        System.out.printf(
                Locale.ROOT,
                "%-52s median %.3f, least %.3f, most %.3f (%d runs, seed %d)%n",
                what,
                micros[ROUNDS / 2],
                micros[0],
                micros[ROUNDS - 1],
                ROUNDS,
                WatchBench.SEED);
        return micros[ROUNDS / 2];
    }
}
