package spoonfall.kitchen.ask;

import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Questions that another thread answers. */
public final class Questions {
    private Questions() {}

    /**
     * Has {@code thread} answer the question; what goes wrong there is the answer. A question that is cancelled before the thread comes to
     * it is not asked.
     */
    public static <T> CompletableFuture<T> ask(Consumer<Runnable> thread, Supplier<T> question) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        thread.accept(() -> {
            if (answer.isCancelled()) {
                return;
            }
            try {
                answer.complete(question.get());
            } catch (RuntimeException e) {
                answer.completeExceptionally(e);
            }
        });
        return answer;
    }
}
