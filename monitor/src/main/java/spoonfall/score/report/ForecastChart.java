package spoonfall.score.report;

import java.util.List;
import java.util.function.Predicate;
import spoonfall.score.CookScore;
import spoonfall.score.Scorecard;
import spoonfall.score.Scorer;

/** Forecast errors by minutes ahead: a chart of all three methods, and every single error of the monitor's. */
final class ForecastChart {
    private static final double LEAST_MIN = 0.1;
    private static final double MOST_MIN = 60;
    private static final double CLIP_MIN = 10;

    private ForecastChart() {}

    /** Median (solid) and 90 % (dashed) by method, minutes on a logarithmic scale. */
    static String quantiles(List<Scorecard.Horizon> horizons) {
        Plot plot = new Plot(46, 8, 330, 230, -0.3, horizons.size() - 0.7, Math.log10(LEAST_MIN), Math.log10(MOST_MIN));
        for (double minutes : new double[] {0.1, 0.3, 1, 3, 10, 30}) {
            plot.horizontal(Math.log10(minutes), "grid", Shown.decimals(minutes, minutes < 1 ? 1 : 0));
        }
        for (int i = 0; i < horizons.size(); i++) {
            plot.below(i, horizons.get(i).minutesAhead() + " min");
        }
        for (CookScore.Method method : CookScore.Method.values()) {
            Plot.Path median = plot.new Path();
            Plot.Path ninety = plot.new Path();
            for (int i = 0; i < horizons.size(); i++) {
                Scorecard.Quantiles errors = horizons.get(i).errors().get(method);
                draw(median, i, errors == null ? Double.NaN : errors.median());
                draw(ninety, i, errors == null ? Double.NaN : errors.ninety());
            }
            plot.path(median, "method " + method.wireName());
            plot.path(ninety, "method dashed " + method.wireName());
        }
        return picture(plot, "Forecast errors by minutes ahead, median and 90 %");
    }

    /** The monitor's errors, a dot each; those beyond ten minutes lie on the edge, missing ones are not drawn. */
    static String errors(Scorecard card, Predicate<CookScore> which) {
        int count = Scorer.HORIZONS.size();
        Plot plot = new Plot(46, 8, 330, 230, -0.5, count - 0.5, -CLIP_MIN, CLIP_MIN);
        for (int minutes = -10; minutes <= 10; minutes += 5) {
            plot.horizontal(minutes, minutes == 0 ? "gel" : "grid", minutes > 0 ? "+" + minutes : "" + minutes);
        }
        for (int i = 0; i < count; i++) {
            int ahead = Scorer.HORIZONS.get(i);
            plot.below(i, ahead + " min");
            int drawn = 0;
            for (CookScore cook : card.cooks()) {
                for (CookScore.ForecastScore score : cook.forecasts()) {
                    if (which.test(cook)
                            && score.minutesAhead() == ahead
                            && score.monitorS().isPresent()) {
                        double aside = 0.6 * ((drawn++ * 0.618) % 1) - 0.3;
                        String style = score.covered() ? "error" : "error outside";
                        plot.dot(i + aside, score.monitorS().getAsDouble() / 60, style, 2);
                    }
                }
            }
        }
        return picture(plot, "Every forecast error of the monitor by minutes ahead");
    }

    private static void draw(Plot.Path path, int i, double errorS) {
        if (Double.isFinite(errorS)) {
            path.to(i, Math.log10(Math.max(LEAST_MIN, errorS / 60)));
        } else {
            path.gap();
        }
    }

    private static String picture(Plot plot, String label) {
        return "<svg viewBox='0 0 384 262' role='img' aria-label='" + label + "'>" + plot.svg() + "</svg>";
    }
}
