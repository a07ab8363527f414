package spoonfall.score;

import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

/** The figures as text. */
final class TextReport {
    private final StringBuilder text = new StringBuilder();
    private final Scorecard card;

    private TextReport(Scorecard card) {
        this.card = card;
    }

    static String of(Scorecard card) {
        return new TextReport(card).text();
    }

    private String text() {
        long clean = card.cooks().stream().filter(CookScore::clean).count();
        line("%d cooks, %d of them clean, %.1f hours", card.cooks().size(), clean, card.hours(cook -> true));
        forecasts("Forecast of the gel point, clean cooks", CookScore::clean);
        forecasts("Forecast of the gel point, all cooks where it could be foreseen", cook -> true);
        line("");
        line("Faults found           faults  found        delay s: median    90 %%");
        for (Scorecard.Found found : card.found()) {
            line(
                    "%-22s %6d  %6s %22s %8s",
                    found.alarm(),
                    found.count(),
                    percent(found.share()),
                    number(found.delaysS().median()),
                    number(found.delaysS().ninety()));
        }
        line("");
        falseAlarms("False alarms per 100 h, all cooks", cook -> true);
        falseAlarms("False alarms per 100 h, clean cooks", CookScore::clean);
        window("all cooks", cook -> true);
        window("clean cooks", CookScore::clean);
        line("Gel point called more than four minutes early: %d cooks", card.gelTooEarly());
        line("Most alarms in ten minutes of a clean cook: %d", card.mostAlarmsInCleanCooks());
        return text.toString();
    }

    private void forecasts(String title, Predicate<CookScore> which) {
        line("");
        line("%s; error in minutes, median / 90 %% of cooks", title);
        line(
                "ahead  cooks  none     monitor           straight line     parabola          in 90 %% interval  width min");
        for (Scorecard.Horizon horizon : card.horizons(which)) {
            Map<CookScore.Method, Scorecard.Quantiles> errors = horizon.errors();
            StringBuilder row = new StringBuilder();
            errors.values().forEach(error -> row.append(String.format(Locale.ROOT, "%-18s", pair(error))));
            line(
                    "%3d min %5d %5d     %s%-17s %s",
                    horizon.minutesAhead(),
                    horizon.count(),
                    horizon.missing(),
                    row,
                    percent(horizon.covered()),
                    minutes(horizon.widthS()));
        }
    }

    private void falseAlarms(String title, Predicate<CookScore> which) {
        Map<String, Long> strict = card.falseAlarms(which, alarm -> true);
        long beside = card.falseAlarms(which, CookScore.FalseAlarm::besideAnotherFault).values().stream()
                .mapToLong(Long::longValue)
                .sum();
        long all = strict.values().stream().mapToLong(Long::longValue).sum();
        line(
                "%s: %.1f (%d in %.1f h, %d of them beside another fault) %s",
                title, 100 * all / card.hours(which), all, card.hours(which), beside, strict);
    }

    private void window(String title, Predicate<CookScore> which) {
        long windows = card.windows(which);
        Scorecard.Quantiles errors = card.windowErrorsS(which);
        line(
                "Set tests called for within %.0f s of the window, %s: %s of %d; off by %s s (median), %s s (90 %%)",
                CookScore.IN_TIME_S,
                title,
                percent((double) card.windowsInTime(which) / windows),
                windows,
                number(errors.median()),
                number(errors.ninety()));
    }

    private void line(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    private static String pair(Scorecard.Quantiles errors) {
        return minutes(errors.median()) + " / " + minutes(errors.ninety());
    }

    static String minutes(double seconds) {
        return Double.isNaN(seconds) ? "-" : Double.isInfinite(seconds) ? "none" : format(seconds / 60, 2);
    }

    static String number(double value) {
        return Double.isNaN(value) ? "-" : Double.isInfinite(value) ? "never" : format(value, 0);
    }

    static String percent(double share) {
        return Double.isNaN(share) ? "-" : format(100 * share, 0) + " %";
    }

    private static String format(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
