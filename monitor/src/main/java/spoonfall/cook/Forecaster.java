package spoonfall.cook;

import java.util.Optional;
import spoonfall.physics.GelPoint;
import spoonfall.physics.Syrup;

/**
 * Says when the gel point will be reached. With steady heat, water leaves at a steady rate, so {@code u =
 * all mass / solids mass} falls along a straight line while the temperature follows a curve that steepens.
 * This first forecast puts a robust line through the last five minutes of {@code u}; a filter that carries
 * the pan's state may take its place behind the same two methods.
 */
final class Forecaster {

    private static final double WINDOW_S = 300;
    private static final double POINT_EVERY_S = 10;
    private static final double SETTLE_S = 90;
    private static final double LEAST_RISE_C = 0.7;
    private static final double COLD_ADDITION_C = 1;
    private static final double FARTHEST_S = 5400;
    private static final double LEAST_CERTAINTY = 3;

    /** Relative doubt of the curve and of the burner, one standard deviation: tables differ that much. */
    private static final double MODEL_DOUBT = 0.1;

    private static final double TIMING_DOUBT_S = 15;
    private static final double NINETY_PERCENT = 1.645;

    private final CookSettings settings;
    private final double targetU;
    private final double windowU;
    private final Track us = new Track(WINDOW_S);
    private Optional<RobustLine> line = Optional.empty();
    private double lastT = Double.NEGATIVE_INFINITY;

    Forecaster(CookSettings settings) {
        this.settings = settings;
        targetU = u(settings.riseC());
        windowU = u(settings.riseC() - GelPoint.WINDOW_C);
    }

    /** Takes note of the pan; {@code boilingForS} is how long it has been boiling, 0 when it is not. */
    void observe(Signals signals, double boilingForS) {
        if (boilingForS < SETTLE_S || signals.fallC() > COLD_ADDITION_C) {
            restart();
            return;
        }
        if (signals.t() - lastT < POINT_EVERY_S) {
            return;
        }
        lastT = signals.t();
        double riseC = signals.levelC() - settings.waterBoil().temperatureC();
        if (riseC >= LEAST_RISE_C) {
            us.add(signals.t(), u(riseC));
            line = us.lineSince(signals.t() - WINDOW_S, signals.t());
        }
    }

    /** Forgets the way here. */
    void restart() {
        us.clear();
        line = Optional.empty();
    }

    /** The forecast at {@code t}; empty when it would be a guess. */
    Optional<Forecast> forecast(double t) {
        if (line.isEmpty() || line.get().slope() >= 0) {
            return Optional.empty();
        }
        RobustLine fit = line.get();
        double slope = -fit.slope();
        if (slope < LEAST_CERTAINTY * fit.slopeError()) {
            return Optional.empty();
        }
        double now = fit.atEnd() - slope * (t - fit.endX());
        double etaS = Math.max(0, (now - targetU) / slope);
        if (etaS > FARTHEST_S) {
            return Optional.empty();
        }
        double doubt = NINETY_PERCENT * Math.hypot(fit.slopeError() / slope, MODEL_DOUBT);
        double marginS = etaS * doubt + TIMING_DOUBT_S;
        double windowS = Math.max(0, (now - windowU) / slope);
        return Optional.of(new Forecast(windowS, etaS, Math.max(0, etaS - marginS), etaS + marginS, slope * 60));
    }

    /** How fast the temperature should climb at {@code riseC}, in °C per minute, by the water that leaves. */
    Optional<Double> expectedPerMinC(double riseC) {
        if (riseC < LEAST_RISE_C) {
            return Optional.empty();
        }
        return line.filter(fit -> fit.slope() < 0).map(fit -> {
            double solids = solids(riseC);
            double solidsPerMin = -fit.slope() * 60 * solids * solids;
            return solidsPerMin * Syrup.riseSlopeC(settings.waterBoil().pressurePa(), solids, Syrup.TYPICAL_INVERTED);
        });
    }

    /** Dissolved solids at {@code riseC} above the water boil, as a fraction by mass. */
    double solids(double riseC) {
        return Syrup.solids(settings.waterBoil().pressurePa(), riseC, Syrup.TYPICAL_INVERTED);
    }

    private double u(double riseC) {
        return 1 / solids(riseC);
    }
}
