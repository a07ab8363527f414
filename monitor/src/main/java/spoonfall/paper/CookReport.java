package spoonfall.paper;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import spoonfall.book.Firmness;
import spoonfall.book.Outcome;
import spoonfall.book.Taste;
import spoonfall.log.CookNote;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.book.BookEvent;
import spoonfall.log.store.book.BookPage;
import spoonfall.log.store.book.BookPhoto;
import spoonfall.log.store.book.BookTest;
import spoonfall.plan.Yield;
import spoonfall.words.Plain;

/**
 * A cook in one HTML file that opens without the program and without a network: a picture, no scripts, and a policy of its own that lets
 * nothing in from elsewhere.
 */
public final class CookReport {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.UK);
    private static final String STYLE = """
            :root{--ground:#fff;--ink:#152238;--soft:#51607a;--rim:#1d3f7a;--line:#cbd5e3;--window:#dbe7fb;--syrup:#f5a623;color-scheme:light dark}
            @media (prefers-color-scheme:dark){:root{--ground:#131e33;--ink:#eef3fb;--soft:#a9b7cf;--rim:#7fa6e8;--line:#2b3b58;--window:#1c3158;--syrup:#c97a16}}
            body{margin:0 auto;max-width:60rem;padding:1.5rem;font:1.05rem/1.45 system-ui,"Liberation Sans",Arial,sans-serif;color:var(--ink);background:var(--ground);overflow-wrap:anywhere}
            h1{font-size:2rem;line-height:1.15}h2{font-size:1.1rem;color:var(--soft)}
            svg{width:100%;height:auto}svg text{fill:var(--ink);font-size:15px;paint-order:stroke;stroke:var(--ground);stroke-width:4px;stroke-linejoin:round}
            .window{fill:var(--window)}.syrup{fill:var(--syrup);fill-opacity:.55}.climb{fill:none;stroke:var(--ink);stroke-width:2}
            .gel,.base{stroke:var(--rim);stroke-width:2}.test{fill:var(--ground);stroke:var(--rim);stroke-width:2.5}.set{fill:var(--rim)}
            table{border-collapse:collapse;width:100%}td{border-bottom:1px solid var(--line);padding:.3rem .6rem .3rem 0;vertical-align:top}td:first-child{color:var(--soft);width:8rem}
            img{max-width:100%;height:auto;border-radius:12px}figure{margin:0 0 1rem}footer{color:var(--soft);font-size:.9rem;padding-top:1rem}
            """;

    private final BookPage page;
    private final ReportChoice chosen;
    private final Markup html = new Markup();

    private CookReport(BookPage page, ReportChoice chosen) {
        this.page = page;
        this.chosen = chosen;
    }

    /** The report of a cook of the book. */
    public static String of(BatchBook book, long id, ReportChoice chosen) {
        CookReport report = new CookReport(book.page(id), chosen);
        report.head();
        report.outcomes();
        report.page.plan().ifPresent(report::planned);
        report.happened();
        if (chosen.photos()) {
            report.photos(book, id);
        }
        return report.end();
    }

    private void head() {
        String batch = page.cook().header().batch();
        String name = batch.isEmpty() ? page.made().fruit() : batch;
        String title = name.isEmpty() ? "A cook" : name;
        html.raw("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline';"
                + " img-src data:; base-uri 'none'; form-action 'none'\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
        html.text(title).raw("</title>\n<style>\n" + STYLE + "</style>\n</head>\n<body>\n<main>\n<h1>");
        html.text(title).raw("</h1>\n<p>").text(summary()).raw("</p>\n").raw(ClimbSvg.of(page));
    }

    private String summary() {
        List<String> parts = new ArrayList<>();
        parts.add(DAY.format(page.cook().header().startedAt().atZone(ZoneId.systemDefault())));
        if (chosen.kitchen() && !page.cook().header().kitchen().isEmpty()) {
            parts.add(page.cook().header().kitchen());
        }
        if (!page.made().fruit().isEmpty()) {
            parts.add(page.made().fruit());
        }
        page.marks()
                .finalRiseC()
                .ifPresent(riseC -> parts.add(
                        String.format(Locale.ROOT, "rose %.1f °C (%.1f °F) above boiling water", riseC, riseC * 1.8)));
        page.marks()
                .boilMinutes()
                .ifPresent(minutes -> parts.add(String.format(Locale.ROOT, "boiled for %.0f minutes", minutes)));
        page.made().jars().ifPresent(jars -> parts.add(jars == 1 ? "1 jar" : jars + " jars"));
        return String.join(" · ", parts);
    }

    private void outcomes() {
        if (page.outcomes().isEmpty()) {
            return;
        }
        html.raw("<h2>How it came out</h2>\n<table>\n");
        for (Outcome outcome : page.outcomes()) {
            String set = outcome.set().map(Firmness::wireName).orElse("");
            String taste = outcome.taste().stream().map(Taste::wireName).collect(Collectors.joining(" and "));
            String words = chosen.notes() ? outcome.words() : "";
            row("After a " + outcome.after().wireName(), joined(set, taste.isEmpty() ? "" : "tastes " + taste, words));
        }
        html.raw("</table>\n");
    }

    private void planned(PlannedBatch plan) {
        html.raw("<h2>The plan</h2>\n<table>\n");
        if (chosen.ingredients()) {
            plan.rows().forEach(one -> row(one.amount(), one.food()));
        }
        row("Planned", plan.massWords() + ", " + plan.jarWords());
        page.made().jars().ifPresent(jars -> row("Filled", Yield.words(plan.jars(), plan.manyJars(), jars)));
        html.raw("</table>\n");
    }

    private static String joined(String... parts) {
        return List.of(parts).stream().filter(part -> !part.isEmpty()).collect(Collectors.joining("; "));
    }

    /**
     * A line of what happened.
     *
     * @param t seconds of the cook
     * @param words the line
     */
    private record Row(double t, String words) {}

    private void happened() {
        List<Row> rows = new ArrayList<>();
        for (BookEvent event : page.events()) {
            rows.add(new Row(event.t(), Plain.text(event.text())));
        }
        for (BookTest test : page.tests()) {
            String where = test.riseC().isPresent()
                    ? String.format(
                            Locale.ROOT,
                            " at %.1f °C above boiling water",
                            test.riseC().getAsDouble())
                    : "";
            String seen = test.answer().isEmpty() ? "" : ": " + test.answer().replace('-', ' ');
            rows.add(new Row(test.t(), "Set test" + where + seen));
        }
        if (chosen.notes()) {
            for (CookNote note : page.cook().notes()) {
                rows.add(new Row(note.atMillis() / 1000.0, "Note: " + note.text()));
            }
        }
        rows.sort(Comparator.comparingDouble(Row::t));
        html.raw("<h2>What happened, in minutes and seconds of the cook</h2>\n<table>\n");
        double endS = page.cook().aliveMillis() / 1000.0;
        rows.forEach(row -> row(row.t() > endS ? "later" : Plain.clock(row.t()), row.words()));
        html.raw("</table>\n");
    }

    private void row(String left, String right) {
        html.raw("<tr><td>").text(left).raw("</td><td>").text(right).raw("</td></tr>\n");
    }

    private void photos(BatchBook book, long id) {
        int number = 0;
        for (BookPhoto photo : page.photos()) {
            Optional<byte[]> jpeg = book.photo(id, photo.id());
            if (jpeg.isPresent()) {
                number++;
                html.raw("<figure><img alt=\"Photo " + number + " of the batch\" width=\"" + photo.width()
                        + "\" height=\""
                        + photo.height() + "\" src=\"data:image/jpeg;base64,"
                        + Base64.getEncoder().encodeToString(jpeg.get()) + "\"></figure>\n");
            }
        }
    }

    private String end() {
        return html.raw(
                        "</main>\n<footer>Recorded by Spoonfall. One kitchen's cook, not a recipe: use a tested one; your local"
                                + " food-safety authority decides.</footer>\n</body>\n</html>\n")
                .toString();
    }
}
