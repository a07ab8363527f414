package spoonfall.score.report;

import java.util.HashSet;
import java.util.OptionalDouble;
import java.util.Set;
import spoonfall.cook.Forecast;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;
import spoonfall.score.Observed;

/** A cook as a picture: the readings, the truth and the alarms; below, how far each forecast was off. */
final class CookPicture {
    private static final int WIDTH = 760;
    private static final int PLOT_LEFT = 76;
    private static final int PLOT_WIDTH = 674;
    private static final int COLUMNS = 352;
    private static final double BELOW_C = 4;
    private static final double ABOVE_C = 3;
    private static final double WINDOW_C = 2 / 1.8;
    private static final double MOST_MIN = 10;
    private static final double NEAR_THE_END = 0.85;

    private CookPicture() {}

    static String of(Trace trace, Observed observed) {
        double gelC = observed.settings().gelPointC();
        double waterC = observed.settings().waterBoil().temperatureC();
        double lastS = Math.max(60, trace.lastS());
        Plot top = new Plot(PLOT_LEFT, 6, PLOT_WIDTH, 210, 0, lastS, waterC - BELOW_C, gelC + ABOVE_C);
        top.band(gelC - WINDOW_C, gelC, "window");
        top.horizontal(waterC, "grid", "water boils");
        top.horizontal(gelC, "gel", "sets");
        labels(trace, top);
        readings(trace, lastS, top);
        alarms(observed, waterC, top);
        Plot below = new Plot(PLOT_LEFT, 236, PLOT_WIDTH, 90, 0, lastS, -MOST_MIN, MOST_MIN);
        for (int minutes : new int[] {-10, -5, 0, 5, 10}) {
            below.horizontal(minutes, minutes == 0 ? "gel" : "grid", minutes > 0 ? "+" + minutes : "" + minutes);
        }
        OptionalDouble gelT = trace.info().firstT("gel");
        if (gelT.isPresent()) {
            forecasts(observed, gelT.getAsDouble(), below);
        }
        int everyMin = lastS > 5400 ? 20 : lastS > 2400 ? 10 : 5;
        for (int minute = 0; minute * 60 <= lastS; minute += everyMin) {
            below.below(minute * 60, minute + " min");
        }
        return "<svg viewBox='0 0 " + WIDTH + " 346' role='img' aria-label='"
                + Shown.escaped("Readings, truth, alarms and forecasts of "
                        + trace.info().title()) + "'>"
                + top.svg() + below.svg() + "</svg>";
    }

    private static void labels(Trace trace, Plot plot) {
        Set<Long> taken = new HashSet<>();
        for (TraceInfo.Label label : trace.info().labels()) {
            boolean first = taken.add(Math.round(label.t()));
            plot.vertical(label.t(), "truth", first ? label.what() : "");
        }
    }

    /** The range of the readings in each column, so that single wild ones show. */
    private static void readings(Trace trace, double lastS, Plot plot) {
        Plot.Path path = plot.new Path();
        int row = 0;
        for (int column = 0; column < COLUMNS; column++) {
            double untilS = lastS * (column + 1) / COLUMNS;
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            while (row < trace.size() && trace.elapsedS(row) <= untilS) {
                OptionalDouble reading = trace.temperatureC(row++);
                if (reading.isPresent()) {
                    least = Math.min(least, reading.getAsDouble());
                    most = Math.max(most, reading.getAsDouble());
                }
            }
            if (least <= most) {
                double middleS = lastS * (column + 0.5) / COLUMNS;
                path.to(middleS, least);
                path.to(middleS, most);
            } else if (untilS - lastGoodS(trace, row) > 4 * lastS / COLUMNS) {
                path.gap();
            }
        }
        plot.path(path, "reading");
    }

    private static double lastGoodS(Trace trace, int beforeRow) {
        int row = beforeRow - 1;
        while (row >= 0 && trace.temperatureC(row).isEmpty()) {
            row--;
        }
        return row < 0 ? 0 : trace.elapsedS(row);
    }

    private static void alarms(Observed observed, double waterC, Plot plot) {
        double levelC = waterC - BELOW_C + 0.4;
        int place = 0;
        for (Observed.Call call : observed.raised()) {
            double atC = levelC + 0.5 * (place++ % 5);
            plot.dot(call.t(), atC, "alarm", 3);
            boolean leftwards = plot.x(call.t()) > PLOT_LEFT + NEAR_THE_END * PLOT_WIDTH;
            double besideX = plot.x(call.t()) + (leftwards ? -5 : 5);
            plot.text(besideX, plot.y(atC) + 4, "alarm", leftwards ? "end" : "start", call.alarm());
        }
    }

    private static void forecasts(Observed observed, double gelT, Plot plot) {
        Plot.Path middle = plot.new Path();
        for (Observed.Look look : observed.looks()) {
            if (look.forecast().isEmpty() || look.t() > gelT) {
                middle.gap();
                continue;
            }
            Forecast said = look.forecast().get();
            double leftS = gelT - look.t();
            plot.bar(look.t(), (said.lowS() - leftS) / 60, (said.highS() - leftS) / 60, "interval");
            middle.to(look.t(), (said.etaS() - leftS) / 60);
        }
        plot.path(middle, "forecast");
    }
}
