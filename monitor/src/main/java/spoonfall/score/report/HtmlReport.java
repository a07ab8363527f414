package spoonfall.score.report;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import spoonfall.score.CookScore;
import spoonfall.score.Scorecard;

/** The figures as one page of HTML that needs nothing else: styles inside, pictures as SVG, light and dark. */
final class HtmlReport {
    private static final int WORST = 10;

    private final StringBuilder html = new StringBuilder();
    private final Scorecard card;

    private HtmlReport(Scorecard card) {
        this.card = card;
    }

    /**
     * The page.
     *
     * @param subject what was scored, in a few words
     * @param picture draws the cook of that name
     */
    static String of(Scorecard card, String subject, Function<String, String> picture) {
        return new HtmlReport(card).page(subject, picture);
    }

    private String page(String subject, Function<String, String> picture) {
        long clean = card.cooks().stream().filter(CookScore::clean).count();
        add("<!DOCTYPE html><html lang='en'><head><meta charset='utf-8'>");
        add("<meta name='viewport' content='width=device-width'><title>How well Spoonfall watches</title>");
        add("<style>" + ReportStyle.CSS + "</style></head><body><main>");
        add("<h1>How well Spoonfall watches</h1>");
        add("<p>" + Shown.escaped(subject) + ": " + card.cooks().size() + " cooks, " + clean + " of them clean, "
                + Shown.decimals(card.hours(cook -> true), 1) + " hours.</p>");
        forecasts("Forecast of the gel point: clean cooks", CookScore::clean);
        forecasts("Forecast of the gel point: all cooks where it could be foreseen", cook -> true);
        faults();
        falseAlarms();
        others();
        worst(picture);
        add("</main></body></html>");
        return html.toString();
    }

    private void forecasts(String title, Predicate<CookScore> which) {
        List<Scorecard.Horizon> horizons = card.horizons(which);
        add(
                "<h2>" + title + "</h2><p>Error in minutes: the median of the cooks, and what nine in ten stay within. "
                        + "A missing forecast counts as an infinite error; <em>none</em> means that too many were missing.</p>");
        add("<div class='wide'><table><thead><tr><th>ahead</th><th>cooks</th><th>none given</th>");
        for (CookScore.Method method : CookScore.Method.values()) {
            add("<th class='" + method.wireName() + "'>" + method.title() + "<br>median</th><th>90 %</th>");
        }
        add("<th>truth in the 90 % interval</th><th>its width</th></tr></thead><tbody>");
        for (Scorecard.Horizon horizon : horizons) {
            add("<tr>" + cell(horizon.minutesAhead() + " min") + cell(horizon.count()) + cell(horizon.missing()));
            horizon.errors()
                    .values()
                    .forEach(
                            errors -> add(cell(Shown.minutes(errors.median())) + cell(Shown.minutes(errors.ninety()))));
            add(cell(Shown.percent(horizon.covered())) + cell(Shown.minutes(horizon.widthS())) + "</tr>");
        }
        add("</tbody></table></div><div class='pair'><figure>" + ForecastChart.quantiles(horizons)
                + "<figcaption>Error in minutes, logarithmic: median solid, 90 % dashed. <b class='monitor'>monitor</b>, "
                + "<b class='line'>straight line</b>, <b class='parabola'>parabola</b></figcaption></figure><figure>"
                + ForecastChart.errors(card, which)
                + "<figcaption>Each forecast of the monitor, in minutes late (+) or early; <b class='outside'>these</b> "
                + "lie outside their own 90 % interval</figcaption></figure></div>");
    }

    private void faults() {
        add("<h2>Faults found</h2><p>Found while they lasted, and how soon. A fault that was missed counts as an "
                + "infinite delay.</p><div class='wide'><table><thead><tr><th>alarm</th><th>faults</th><th>found</th>"
                + "<th>share</th><th>delay, s<br>median</th><th>90 %</th></tr></thead><tbody>");
        for (Scorecard.Found found : card.found()) {
            add("<tr>" + cell(found.alarm()) + cell(found.count()) + cell(found.found())
                    + cell(Shown.percent(found.share()))
                    + cell(Shown.seconds(found.delaysS().median()))
                    + cell(Shown.seconds(found.delaysS().ninety())) + "</tr>");
        }
        add("</tbody></table></div>");
    }

    private void falseAlarms() {
        add("<h2>False alarms</h2><p>Raised when nothing of the kind was so, nor had been for two minutes.</p>"
                + "<div class='wide'><table><thead><tr><th>alarm</th><th>all cooks</th><th>beside another fault</th>"
                + "<th>clean cooks</th></tr></thead><tbody>");
        Map<String, Long> all = card.falseAlarms(cook -> true, alarm -> true);
        Map<String, Long> beside = card.falseAlarms(cook -> true, CookScore.FalseAlarm::besideAnotherFault);
        Map<String, Long> clean = card.falseAlarms(CookScore::clean, alarm -> true);
        all.forEach((name, count) -> add("<tr>" + cell(name) + cell(count) + cell(beside.getOrDefault(name, 0L))
                + cell(clean.getOrDefault(name, 0L)) + "</tr>"));
        add("<tr><th>per 100 hours</th>" + cell(Shown.decimals(card.falseAlarmsPer100Hours(cook -> true), 1)) + cell("")
                + cell(Shown.decimals(card.falseAlarmsPer100Hours(CookScore::clean), 1)) + "</tr>");
        add("</tbody></table></div>");
    }

    private void others() {
        add("<h2>The end of the cook</h2><ul>");
        window("all cooks", cook -> true);
        window("all cooks whose probe told the truth then", CookScore::windowSeen);
        window("clean cooks", CookScore::clean);
        add("<li>Gel point called more than four minutes early: " + card.gelTooEarly(false) + " cooks, and "
                + card.gelTooEarly(true) + " more on a reading that a fault had made wrong.</li>");
        add("<li>Most alarms in ten minutes of a clean cook: " + card.mostAlarmsInCleanCooks()
                + "; with the prompts to test, to look at the plate and to take it off: "
                + card.mostCallsInCleanCooks() + ".</li></ul>");
    }

    private void window(String which, Predicate<CookScore> cooks) {
        Scorecard.Quantiles off = card.windowErrorsS(cooks);
        add("<li>Set tests called for within 20 s of the true window, " + which + ": "
                + Shown.percent(card.windowsInTime(cooks)) + " of " + card.windows(cooks) + "; off by "
                + Shown.seconds(off.median()) + " s (median), " + Shown.seconds(off.ninety()) + " s (90 %).</li>");
    }

    private void worst(Function<String, String> picture) {
        add(
                "<h2>The worst cooks</h2><p>By missed faults, false alarms and early calls, then by the forecast's error in "
                        + "the last ten minutes. Above: readings, what truly happened, and the alarms. Below: by how many minutes "
                        + "each forecast was late (+) or early, with its 90 % interval.</p>");
        for (CookScore cook : card.worst(WORST)) {
            long missed = cook.detections().stream()
                    .filter(found -> found.delayS().isEmpty())
                    .count();
            add("<figure>" + picture.apply(cook.name()) + "<figcaption>" + Shown.escaped(cook.title()) + " ("
                    + Shown.escaped(cook.name()) + "): " + missed + " faults missed, "
                    + cook.falseAlarms().size() + " false alarms"
                    + (cook.gelTooEarly() ? ", gel point called too early" : "") + "</figcaption></figure>");
        }
    }

    private void add(String text) {
        html.append(text).append('\n');
    }

    private static String cell(Object value) {
        return "<td>" + Shown.escaped(String.valueOf(value)) + "</td>";
    }
}
