package spoonfall.web.pan;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import spoonfall.cook.TestWord;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.settest.TestAnswer;
import spoonfall.web.live.Snapshots;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls about set tests. Each answers with the snapshot afterwards, and doing one twice is harmless. */
final class TestRoutes {
    private final Function<Context, Kitchen> pan;
    private final Snapshots snapshots;

    /** The calls on the pan that a request is about. */
    TestRoutes(Function<Context, Kitchen> pan, Snapshots snapshots) {
        this.pan = pan;
        this.snapshots = snapshots;
    }

    /** Adds the calls below a path. */
    void add(RoutesConfig routes, String base) {
        routes.post(base + "/test", this::begin);
        routes.delete(base + "/test", ctx -> say(ctx, () -> TestWord.undone(id(ctx.queryParam("id")))));
        routes.post(base + "/test/seen", this::seen);
        routes.delete(base + "/test/seen", ctx -> say(ctx, () -> TestWord.unseen(id(ctx.queryParam("id")))));
    }

    private void begin(Context ctx) {
        JsonNode asked = Asked.body(ctx, List.of("id", "plateS"));
        JsonNode plateS = asked.path("plateS");
        if (!plateS.isMissingNode() && !plateS.isNumber()) {
            throw new Refusal("\"plateS\" must be a number of seconds from 60 to 120");
        }
        say(ctx, () -> TestWord.begun(id(asked.path("id").textValue()), plateS.asDouble(TestWord.USUAL_PLATE_S)));
    }

    private void seen(Context ctx) {
        JsonNode asked = Asked.body(ctx, List.of("id", "sheet", "plate", "verdict"));
        List<TestAnswer.Kind> told = Arrays.stream(TestAnswer.Kind.values())
                .filter(kind -> asked.has(kind.wireName()))
                .toList();
        if (told.size() != 1) {
            throw new Refusal("one of \"sheet\", \"plate\" and \"verdict\" is needed");
        }
        TestAnswer.Kind kind = told.get(0);
        TestAnswer answer = TestAnswer.named(kind, asked.path(kind.wireName()).asText())
                .orElseThrow(() -> new Refusal("\"" + kind.wireName() + "\" must be one of " + names(kind)));
        say(ctx, () -> TestWord.seen(id(asked.path("id").textValue()), answer));
    }

    private static String names(TestAnswer.Kind kind) {
        return Arrays.stream(TestAnswer.values())
                .filter(answer -> answer.kind() == kind)
                .map(TestAnswer::wireName)
                .collect(Collectors.joining(", "));
    }

    private static String id(@Nullable String given) {
        if (given == null) {
            throw new Refusal("\"id\" is needed: any name for the test, of letters, digits and hyphens");
        }
        return given;
    }

    /** What the word refuses is said to whoever asked. */
    private void say(Context ctx, Supplier<TestWord> word) {
        TestWord said;
        try {
            said = word.get();
        } catch (IllegalArgumentException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
        Answers.json(ctx, 200, snapshots.of(Answers.of(pan.apply(ctx).tests().say(said))));
    }
}
