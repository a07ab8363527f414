package spoonfall.score.report;

import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import spoonfall.score.CookScore;
import spoonfall.score.Scorecard;

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
                    Shown.percent(found.share()),
                    Shown.seconds(found.delaysS().median()),
                    Shown.seconds(found.delaysS().ninety()));
        }
        line("");
        falseAlarms("False alarms per 100 h, all cooks", cook -> true);
        falseAlarms("False alarms per 100 h, clean cooks", CookScore::clean);
        window("all cooks", cook -> true);
        window("all cooks whose probe told the truth then", CookScore::windowSeen);
        window("clean cooks", CookScore::clean);
        line(
                "Gel point called more than four minutes early: %d cooks, in %d of them on a reading that a fault made wrong",
                card.gelTooEarly(false) + card.gelTooEarly(true), card.gelTooEarly(true));
        line(
                "Most in ten minutes of a clean cook: alarms %d; with the prompts to test, to look at the plate and to take it off %d",
                card.mostAlarmsInCleanCooks(), card.mostCallsInCleanCooks());
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
                    Shown.percent(horizon.covered()),
                    Shown.minutes(horizon.widthS()));
        }
    }

    private void falseAlarms(String title, Predicate<CookScore> which) {
        Map<String, Long> strict = card.falseAlarms(which, alarm -> true);
        long beside = card.falseAlarms(which, CookScore.FalseAlarm::besideAnotherFault).values().stream()
                .mapToLong(Long::longValue)
                .sum();
        long all = strict.values().stream().mapToLong(Long::longValue).sum();
        line(
                "%s: %s (%d in %.1f h, %d of them beside another fault) %s",
                title, Shown.decimals(card.falseAlarmsPer100Hours(which), 1), all, card.hours(which), beside, strict);
    }

    private void window(String title, Predicate<CookScore> which) {
        long windows = card.windows(which);
        Scorecard.Quantiles errors = card.windowErrorsS(which);
        line(
                "Set tests called for within %.0f s of the window, %s: %s of %d; off by %s s (median), %s s (90 %%)",
                CookScore.IN_TIME_S,
                title,
                Shown.percent(card.windowsInTime(which)),
                windows,
                Shown.seconds(errors.median()),
                Shown.seconds(errors.ninety()));
    }

    private void line(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    private static String pair(Scorecard.Quantiles errors) {
        return Shown.minutes(errors.median()) + " / " + Shown.minutes(errors.ninety());
    }
}
