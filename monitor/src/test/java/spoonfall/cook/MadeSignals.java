package spoonfall.cook;

import java.util.Optional;
import spoonfall.cook.signal.Signals;
import spoonfall.series.RobustLine;

/** Signals made by hand, for tests of what is made of them. Where nothing else is said, a pan that stands at one height. */
public final class MadeSignals {
    private MadeSignals() {}

    /** A pan at {@code c} °C of which no line is known yet. */
    public static Signals at(double t, double c) {
        return new Signals(t, c, c, Optional.empty(), Optional.empty(), c, c, 0.01);
    }

    /** A pan at {@code c} °C that has been moving by {@code perMinC} °C a minute. */
    public static Signals moving(double t, double c, double perMinC) {
        return falling(t, c, c, perMinC);
    }

    /** A pan at {@code c} °C that moves by {@code perMinC} °C a minute and stood at {@code peakC} °C lately. */
    public static Signals falling(double t, double c, double peakC, double perMinC) {
        return lines(t, c, peakC, perMinC, perMinC);
    }

    /** The same, with one pace over the last 45 s and another over two minutes. */
    public static Signals lines(double t, double c, double peakC, double quickPerMinC, double steadyPerMinC) {
        return new Signals(
                t,
                c,
                c,
                Optional.of(line(t, c, quickPerMinC)),
                Optional.of(line(t, c, steadyPerMinC)),
                peakC,
                peakC,
                0.01);
    }

    private static RobustLine line(double t, double c, double perMinC) {
        return new RobustLine(perMinC / 60, c, t, 0.01, 1e-5);
    }
}
