package spoonfall.announce;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.KitchenPlan;
import spoonfall.kitchen.Kitchens;
import spoonfall.lab.Scenario;
import spoonfall.probe.Hearing;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceProbe;

/** A real kitchen at speed, which speaks through a real program. */
final class AnnouncerTest {
    private static final double SPEED = 400;

    @TempDir
    Path folder = Path.of("");

    private static Kitchen kitchen(String pan) {
        Trace trace = Cooks.trace(Scenario.CLEAN, 1);
        KitchenPlan plan = new KitchenPlan(
                "Hollin Bank", "", Cooks.settings(trace), KitchenPlan.Source.REPLAY, SPEED, Optional.empty(), false);
        return new Kitchen(
                plan.inPan(pan), clock -> List.of(new TraceProbe("pan", "a trace", trace, clock)), System::nanoTime);
    }

    private static void awaitSaid(Script script, String text) {
        Hearing.await("“" + text + "”", () -> script.heard().contains(text));
    }

    @Test
    void aCook_isSaidAloudInOrderAndNothingTwice() throws IOException {
        Script script = new Script(folder, "");
        try (Kitchen kitchen = kitchen("pan");
                Announcer announcer = new Announcer(script.program("", 5000), false, System::nanoTime)) {
            announcer.announce(Kitchens.one(kitchen));
            kitchen.start();
            awaitSaid(
                    script,
                    "Start the set tests now. Take the pan off the heat for each one: a plate needs 60 to 120 seconds.");
            awaitSaid(
                    script, "It has reached the setting point, 100.3 degrees. Take it off the heat and test the set.");
        }
        List<String> heard = script.heard();
        assertThat(heard.get(0)).isEqualTo("Spoonfall calls you from here.");
        assertThat(heard)
                .contains("Coming to the boil.")
                .doesNotHaveDuplicates()
                .noneMatch(text -> text.contains("{"));
    }

    @Test
    void anUrgentCallThatNobodyAnswers_isSaidAgainAfterAMinuteUntilSomebodyDoes() throws IOException {
        Script script = new Script(folder, "");
        AtomicLong nanos = new AtomicLong();
        String call =
                "Big pan: It has reached the setting point, 212.5 degrees. Take it off the heat and test the set.";
        try (Kitchen kitchen = kitchen("big pan");
                Kitchen other = kitchen("small pan");
                Announcer announcer = new Announcer(script.program("", 5000), true, nanos::get)) {
            announcer.announce(new Kitchens(List.of(kitchen, other), Optional.empty()));
            kitchen.start();
            awaitSaid(script, call);
            nanos.addAndGet(70_000_000_000L);
            Hearing.await(
                    "the call again",
                    () -> script.heard().stream().filter(call::equals).count() == 2);
        }
    }

    @Test
    void aProgramThatHangs_holdsUpNothingButItself() throws IOException {
        Script script = new Script(folder, "[ -e \"$0.hung\" ] || { touch \"$0.hung\"; sleep 600; }");
        try (Kitchen kitchen = kitchen("pan");
                Announcer announcer = new Announcer(script.program("", 1000), false, System::nanoTime)) {
            announcer.announce(Kitchens.one(kitchen));
            kitchen.start();
            awaitSaid(
                    script,
                    "Start the set tests now. Take the pan off the heat for each one: a plate needs 60 to 120 seconds.");
            assertThat(kitchen.healthy()).isTrue();
        }
    }
}
