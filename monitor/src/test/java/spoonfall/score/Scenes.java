package spoonfall.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Forecast;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

/** Cooks made by hand, and monitors that say what a test wants them to. */
final class Scenes {
    static final CookSettings SETTINGS = CookSettings.defaults();
    static final double GEL_T = 2400;
    static final double END_T = 2460;

    private Scenes() {}

    /** It boils at 600 s, sets at 2,400 s and comes off the heat at 2,460 s; besides, {@code more} happens. */
    static Trace cook(TraceInfo.Label... more) {
        return cook(t -> SETTINGS.gelPointC() + (t - GEL_T) / 600, more);
    }

    static Trace cook(DoubleUnaryOperator temperatureC, TraceInfo.Label... more) {
        Trace.Builder rows = new Trace.Builder();
        for (int t = 0; t <= 2700; t += 10) {
            rows.add(t, OptionalDouble.of(temperatureC.applyAsDouble(t)));
        }
        List<TraceInfo.Label> labels = Stream.concat(
                        Stream.of(
                                label(600, "boil"),
                                label(2100, "window"),
                                label(GEL_T, "gel"),
                                label(END_T, "off-the-heat")),
                        Stream.of(more))
                .sorted((a, b) -> Double.compare(a.t(), b.t()))
                .toList();
        return rows.build(new TraceInfo(
                "A cook made by hand",
                "",
                "simulated",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalLong.empty(),
                Optional.empty(),
                labels));
    }

    static TraceInfo.Label label(double t, String what) {
        return new TraceInfo.Label(t, what);
    }

    static Observed.Call call(double t, String alarm) {
        return new Observed.Call(t, alarm);
    }

    /** A monitor whose every forecast is late by {@code lateS}, give or take {@code marginS}, and that raises these. */
    static Observed monitor(double lateS, double marginS, Observed.Call... raised) {
        List<Observed.Look> looks = new ArrayList<>();
        for (int t = 0; t <= GEL_T; t += 10) {
            double etaS = Math.max(0, GEL_T - t + lateS);
            Forecast forecast = new Forecast(0, etaS, Math.max(0, etaS - marginS), etaS + marginS, 1);
            looks.add(new Observed.Look(t, Optional.of(forecast)));
        }
        return new Observed(SETTINGS, looks, List.of(raised), List.of());
    }

    /** A monitor that never says a word. */
    static Observed mute() {
        List<Observed.Look> looks = new ArrayList<>();
        for (int t = 0; t <= GEL_T; t += 10) {
            looks.add(new Observed.Look(t, Optional.empty()));
        }
        return new Observed(SETTINGS, looks, List.of(), List.of());
    }
}
