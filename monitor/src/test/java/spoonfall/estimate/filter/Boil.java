package spoonfall.estimate.filter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import spoonfall.physics.Air;
import spoonfall.physics.Water;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

/**
 * The boiling part of a cook, to the pan's coming off the heat or the trace's end.
 *
 * @param pressurePa air pressure as the cook knows it
 * @param gelRiseC the rise at which it sets
 * @param fromT when it boils, in seconds of the trace
 * @param gelT when it truly reaches that rise
 * @param points the readings
 */
public record Boil(double pressurePa, double gelRiseC, double fromT, double gelT, List<Point> points) {
    private static final double SETTLES_S = 30;

    /**
     * One reading.
     *
     * @param t seconds of the trace
     * @param riseC above the water boil that the cook knows
     */
    public record Point(double t, double riseC) {}

    public static Boil of(Trace trace) {
        TraceInfo info = trace.info();
        double pressurePa = info.pressurePa()
                .orElseGet(() -> Air.pressurePa(info.elevationM().orElseThrow()));
        double waterBoilC = Water.boilingPointC(pressurePa);
        double fromT = labelled(info, "boil") + SETTLES_S;
        double untilT = labelled(info, "off-the-heat");
        List<Point> points = IntStream.range(0, trace.size())
                .filter(i -> trace.elapsedS(i) >= fromT && trace.elapsedS(i) < untilT)
                .filter(i -> trace.temperatureC(i).isPresent())
                .mapToObj(
                        i -> new Point(trace.elapsedS(i), trace.temperatureC(i).getAsDouble() - waterBoilC))
                .toList();
        return new Boil(pressurePa, info.riseC().orElseThrow(), fromT, labelled(info, "gel"), new ArrayList<>(points));
    }

    private static double labelled(TraceInfo info, String what) {
        return info.labels().stream()
                .filter(label -> label.what().equals(what))
                .mapToDouble(TraceInfo.Label::t)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
