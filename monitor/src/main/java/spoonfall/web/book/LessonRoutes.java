package spoonfall.web.book;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.lesson.Lesson;
import spoonfall.lesson.LessonMaker;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.cook.StoredTrace;
import spoonfall.web.wire.Answers;

/** The call that makes a lesson of a cook of the book. */
final class LessonRoutes {
    private final Supplier<BatchBook> book;

    /** A long cook takes a second to go through: one at a time, so that lessons never slow the pan on a small machine. */
    private final ReentrantLock one = new ReentrantLock();

    LessonRoutes(Supplier<BatchBook> book) {
        this.book = book;
    }

    void add(RoutesConfig routes) {
        routes.get("/api/book/{id}/lesson", BookRoutes.known(this::lesson));
    }

    private void lesson(Context ctx) {
        long id = BookRoutes.number(ctx, "id");
        one.lock();
        try {
            StoredCook cook = book.get().cook(id);
            if (cook.goesOn()) {
                throw new Refusal("cook " + id + " is in the pan still; it can be a lesson when it is off the heat");
            }
            Lesson lesson = LessonMaker.of(cook);
            double waterBoilC = StoredTrace.settings(cook).waterBoil().temperatureC();
            Answers.json(ctx, 200, LessonViews.lesson(cook, lesson, waterBoilC));
        } finally {
            one.unlock();
        }
    }
}
