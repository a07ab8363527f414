package spoonfall.web.book;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.function.Supplier;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.log.store.book.BatchBook;
import spoonfall.paper.BookLabels;
import spoonfall.paper.CookReport;
import spoonfall.paper.Label;
import spoonfall.paper.LabelPrinter;
import spoonfall.paper.LabelSheet;
import spoonfall.paper.ReportChoice;
import spoonfall.web.wire.Asked;

/** The calls by which a cook leaves the book as a file: labels and a report. */
final class PaperRoutes {
    private final Supplier<BatchBook> book;

    PaperRoutes(Supplier<BatchBook> book) {
        this.book = book;
    }

    void add(RoutesConfig routes) {
        routes.get("/api/book/{id}/labels.pdf", BookRoutes.known(ctx -> {
            BookLabels labels = BookLabels.of(book.get(), BookRoutes.number(ctx, "id"));
            byte[] pdf = LabelPrinter.pdf(label(ctx, labels), sheet(ctx, labels));
            file(ctx, "labels", "application/pdf", "pdf").result(pdf);
        }));
        routes.get("/api/book/{id}/labels.svg", BookRoutes.known(ctx -> {
            BookLabels labels = BookLabels.of(book.get(), BookRoutes.number(ctx, "id"));
            String svg = LabelPrinter.svg(label(ctx, labels), sheet(ctx, labels));
            file(ctx, "labels", "image/svg+xml", "svg").result(svg);
        }));
        routes.get("/api/book/{id}/report.html", BookRoutes.known(this::report));
    }

    /** A file to keep rather than a page of this service. */
    private static Context file(Context ctx, String name, String type, String ending) {
        ctx.header("Cache-Control", "no-store");
        ctx.header(
                "Content-Disposition",
                "attachment; filename=\"" + name + "-" + BookRoutes.number(ctx, "id") + "." + ending + "\"");
        return ctx.contentType(type);
    }

    private static Label label(Context ctx, BookLabels labels) {
        return Asked.parameter(ctx, "contents").map(labels::label).orElseGet(labels::label);
    }

    private static LabelSheet sheet(Context ctx, BookLabels labels) {
        return LabelSheet.of(
                Asked.parameter(ctx, "paper").orElse("a4"),
                Asked.parameter(ctx, "size").orElse("63.5x38.1"),
                Asked.parameter(ctx, "gap").orElse("2.5x0"),
                Asked.parameter(ctx, "grid"),
                Asked.parameter(ctx, "count").map(PaperRoutes::whole).orElseGet(labels::count));
    }

    private void report(Context ctx) {
        ReportChoice chosen = new ReportChoice(
                Asked.parameter(ctx, "notes").isPresent(),
                Asked.parameter(ctx, "photos").isPresent(),
                Asked.parameter(ctx, "kitchen").isPresent(),
                Asked.parameter(ctx, "ingredients").isPresent());
        String report = CookReport.of(book.get(), BookRoutes.number(ctx, "id"), chosen);
        file(ctx, "cook", "text/html; charset=utf-8", "html").result(report);
    }

    private static int whole(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new Refusal("how many labels is a whole number, such as 21", e);
        }
    }
}
