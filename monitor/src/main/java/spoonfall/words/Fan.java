package spoonfall.words;

import java.util.ArrayList;
import java.util.List;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.calm.CalmTime;
import spoonfall.physics.Syrup;
import spoonfall.words.Outlook.FanPoint;

/** Draws the forecast climb: water leaves at a steady rate, so the rise follows the syrup's curve. */
final class Fan {
    private static final int POINTS = 24;
    /** Below this rise the syrup's curve is too flat to draw a climb from. */
    private static final double LEAST_C = 0.3;

    private static final double BEYOND_C = 1.5;

    private final CookSettings settings;

    Fan(CookSettings settings) {
        this.settings = settings;
    }

    /** From now to a little past the gel point, which moves no more often here than in words; the interval opens from nothing. */
    List<FanPoint> of(CookStatus status, CalmTime.Shown gel) {
        double etaS = gel.t() - status.t();
        if (etaS < 1 || status.temperatureC().isEmpty()) {
            return List.of();
        }
        double riseC =
                status.temperatureC().getAsDouble() - settings.waterBoil().temperatureC();
        if (riseC < LEAST_C || riseC >= settings.riseC()) {
            return List.of();
        }
        double targetU = 1 / solids(settings.riseC());
        double startU = 1 / solids(riseC);
        double topC = settings.riseC() + BEYOND_C;
        double early = etaS / Math.max(gel.fromT() - status.t(), etaS / 4);
        double late = etaS / (gel.untilT() - status.t());
        List<FanPoint> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double share = 1.3 * i / POINTS;
            points.add(new FanPoint(
                    status.t() + share * etaS,
                    riseAt(startU, targetU, share * late, topC),
                    riseAt(startU, targetU, share, topC),
                    riseAt(startU, targetU, share * early, topC)));
        }
        return List.copyOf(points);
    }

    private double riseAt(double startU, double targetU, double share, double topC) {
        double u = Math.max(startU + share * (targetU - startU), 1 / Syrup.MOST_SOLIDS);
        return Math.min(topC, Syrup.riseC(settings.waterBoil().pressurePa(), 1 / u, Syrup.TYPICAL_INVERTED));
    }

    private double solids(double riseC) {
        return Syrup.solids(settings.waterBoil().pressurePa(), riseC, Syrup.TYPICAL_INVERTED);
    }
}
