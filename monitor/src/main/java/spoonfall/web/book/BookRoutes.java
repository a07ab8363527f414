package spoonfall.web.book;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.NotFoundResponse;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import spoonfall.book.Firmness;
import spoonfall.book.OutcomeWords;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.book.BookPage;
import spoonfall.log.store.book.BookQuery;
import spoonfall.paper.FirstPicture;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls of the batch book: what was cooked, and what somebody says of it. */
public final class BookRoutes {
    private static final List<String> OUTCOME = List.of("after", "set", "taste", "words", "fruit", "jars");
    private static final int LONGEST_WORDS = 2000;
    private static final int MOST_POINTS = 1500;

    private final Optional<BatchBook> kept;

    /** The calls on a book; where no cook is kept they say so. */
    public BookRoutes(Optional<BatchBook> kept) {
        this.kept = kept;
    }

    /** Adds the calls. */
    public void add(RoutesConfig routes) {
        routes.get("/api/book", known(ctx -> Answers.json(ctx, 200, BookViews.list(book().list(query(ctx))))));
        routes.get("/api/book/{id}", known(ctx -> Answers.json(ctx, 200, BookViews.page(book().page(id(ctx))))));
        routes.get(
                "/api/book/{id}/climb",
                known(ctx -> Answers.json(ctx, 200, BookViews.climb(book().page(id(ctx)), MOST_POINTS))));
        routes.get("/api/book/{id}/picture.svg", known(this::picture));
        routes.post("/api/book/{id}/outcome", known(this::outcome));
        new PhotoRoutes(this::book).add(routes);
        new PaperRoutes(this::book).add(routes);
        new LessonRoutes(this::book).add(routes);
    }

    private void outcome(Context ctx) {
        JsonNode asked = Asked.body(ctx, OUTCOME);
        OutcomeWords words = OutcomeWords.of(
                Asked.needed(asked, "after", "day"),
                words(asked, "set").filter(set -> !set.isEmpty()),
                tastes(asked),
                words(asked, "words"),
                words(asked, "fruit"),
                jars(asked));
        ObjectNode said = BookViews.said(book().say(id(ctx), words));
        said.set("plan", BookViews.plan(book().page(id(ctx))));
        Answers.json(ctx, 200, said);
    }

    private void picture(Context ctx) {
        Optional<BookPage> beside =
                Asked.parameter(ctx, "beside").map(BookRoutes::whole).flatMap(this::found);
        ZoneId zone = Asked.parameter(ctx, "zone").map(BookRoutes::zone).orElse(ZoneId.systemDefault());
        boolean fahrenheit = Asked.parameter(ctx, "unit").filter("F"::equals).isPresent();
        String svg = FirstPicture.of(book().page(id(ctx)), beside, fahrenheit, zone);
        ctx.header("Cache-Control", "no-store").contentType("image/svg+xml").result(svg);
    }

    /** A cook that is gone leaves the other's picture as it is; the page says so. */
    private Optional<BookPage> found(long other) {
        try {
            return Optional.of(book().page(other));
        } catch (BatchBook.NoSuchCook e) {
            return Optional.empty();
        }
    }

    private static ZoneId zone(String name) {
        try {
            return ZoneId.of(name);
        } catch (DateTimeException e) {
            throw new Refusal("a zone of time is such as Europe/London", e);
        }
    }

    private BatchBook book() {
        return kept.orElseThrow(
                () -> new Refusal("nothing is kept here, so there is no book; start with \"spoonfall serve\""));
    }

    /** What cannot be is answered in words; a cook that is not there is not found. */
    static Handler known(Handler handler) {
        return ctx -> {
            try {
                handler.handle(ctx);
            } catch (BatchBook.NoSuchCook e) {
                throw new NotFoundResponse("there is no cook " + ctx.pathParam("id") + " in the book");
            } catch (IllegalArgumentException e) {
                throw new Refusal(String.valueOf(e.getMessage()), e);
            }
        };
    }

    private static BookQuery query(Context ctx) {
        return new BookQuery(
                Asked.parameter(ctx, "text").orElse(""),
                Asked.parameter(ctx, "fruit").orElse(""),
                Asked.parameter(ctx, "set").map(Firmness::named),
                Asked.parameter(ctx, "from")
                        .map(BookRoutes::day)
                        .map(day -> day.atStartOfDay(ZoneId.systemDefault()).toInstant()),
                Asked.parameter(ctx, "until")
                        .map(BookRoutes::day)
                        .map(day -> day.plusDays(1)
                                .atStartOfDay(ZoneId.systemDefault())
                                .toInstant()),
                Asked.parameter(ctx, "page").map(BookRoutes::whole).orElse(0));
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new Refusal("a day is such as 2026-11-25", e);
        }
    }

    private static int whole(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new Refusal("a page of the list is a whole number from 0, and so is the number of a cook", e);
        }
    }

    private static long id(Context ctx) {
        return number(ctx, "id");
    }

    /** A number in the path; nothing is there if it is none. */
    static long number(Context ctx, String name) {
        try {
            return Long.parseLong(ctx.pathParam(name));
        } catch (NumberFormatException e) {
            throw new NotFoundResponse("a cook has a whole number, such as 12, and so has a photo");
        }
    }

    private static Optional<String> words(JsonNode asked, String name) {
        JsonNode node = asked.path(name);
        if (node.isMissingNode() || node.isNull()) {
            return Optional.empty();
        }
        if (!node.isTextual() || node.textValue().length() > LONGEST_WORDS) {
            throw new Refusal("\"" + name + "\" must be a text");
        }
        return Optional.of(node.textValue());
    }

    private static Optional<List<String>> tastes(JsonNode asked) {
        JsonNode node = asked.path("taste");
        if (node.isMissingNode()) {
            return Optional.empty();
        }
        List<String> names = new ArrayList<>();
        node.forEach(one -> names.add(one.asText()));
        if (!node.isArray() || names.size() > 10) {
            throw new Refusal("\"taste\" must be a list, such as [\"bright\", \"bitter\"]");
        }
        return Optional.of(names);
    }

    private static OptionalInt jars(JsonNode asked) {
        JsonNode node = asked.path("jars");
        if (node.isMissingNode() || node.isNull()) {
            return OptionalInt.empty();
        }
        if (!node.isIntegralNumber() || !node.canConvertToInt()) {
            throw new Refusal("\"jars\" must be a whole number, such as 6");
        }
        return OptionalInt.of(node.intValue());
    }
}
