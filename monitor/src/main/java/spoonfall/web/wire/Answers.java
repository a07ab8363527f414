package spoonfall.web.wire;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import spoonfall.kitchen.ask.Refusal;

/** How a call is answered, and for how long the kitchen may think about it. */
public final class Answers {
    private static final long ANSWER_SECONDS = 5;

    private Answers() {}

    /** Answers with an error that people can read. */
    public static void error(Context ctx, int status, String message) {
        json(ctx, status, JsonNodeFactory.instance.objectNode().put("error", message));
    }

    /** Answers with JSON that must not be kept. */
    public static void json(Context ctx, int status, ObjectNode node) {
        ctx.status(status).header("Cache-Control", "no-store");
        ctx.contentType("application/json").result(WireJson.text(node));
    }

    /** What the kitchen answers; its {@link Refusal} as it is. What it has not come to when nobody waits any longer, it does not do. */
    public static <T> T of(CompletableFuture<T> question) {
        try {
            return question.get(ANSWER_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the kitchen was asked", e);
        } catch (TimeoutException e) {
            question.cancel(false);
            throw new IllegalStateException("the kitchen did not answer", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Refusal refusal) {
                throw refusal;
            }
            throw new IllegalStateException("the kitchen did not answer", e);
        }
    }
}
