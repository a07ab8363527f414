package spoonfall.announce;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.canner.CannerTap;
import spoonfall.canner.JarLoad;
import spoonfall.canning.CannerKind;
import spoonfall.canning.Food;
import spoonfall.canning.JarBatch;
import spoonfall.canning.JarSize;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Cooks;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.probe.Hearing;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceProbe;

/** A real kitchen at speed, which speaks through a real program. */
final class AnnouncerTest {
    private static final double SPEED = 400;
    private static final String CALL =
            "Start the set tests now. Take the pan off the heat for each one: a plate needs 60 to 120 seconds.";

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
            awaitSaid(script, CALL);
        }
        List<String> heard = script.heard();
        assertThat(heard.get(0)).isEqualTo("Spoonfall calls you from here.");
        assertThat(heard)
                .contains("Coming to the boil.")
                .doesNotHaveDuplicates()
                .noneMatch(text -> text.contains("{"));
    }

    @Test
    void anUrgentCallThatNobodyAnswers_isSaidAgainAfterAMinuteUntilSomebodyDoes() throws Exception {
        Script script = new Script(folder, "");
        AtomicLong nanos = new AtomicLong();
        ToldProbe probe = new ToldProbe("big pan", 0.03);
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1);
        String call = "Big pan: " + CALL;
        try (Kitchen kitchen = new Kitchen(plan.inPan("big pan"), clock -> List.of(probe), System::nanoTime);
                Kitchen other = kitchen("small pan");
                Announcer announcer = new Announcer(script.program("", 5000), true, nanos::get)) {
            announcer.announce(new Kitchens(List.of(kitchen, other), Optional.empty()));
            kitchen.start();
            for (double c = 94; c < 99.9; c += 0.01) {
                probe.say(c, 1);
            }
            awaitSaid(script, call);
            nanos.addAndGet(70_000_000_000L);
            Hearing.await("the call again", () -> times(script, call) == 2);
            kitchen.alarms().acknowledge("start-set-tests-1").get();
            nanos.addAndGet(70_000_000_000L);
            probe.say(100, 5);
            assertThat(kitchen.state().get().pan().alarms()).isNotEmpty();
            assertThat(times(script, call)).isEqualTo(2);
        }
    }

    private static long times(Script script, String text) {
        return script.heard().stream().filter(text::equals).count();
    }

    @Test
    void theJars_areCalledForToo() throws Exception {
        Script script = new Script(folder, "");
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", new CookSettings(WaterBoil.atElevation(1240), 4.4), 600);
        try (Kitchens kitchens =
                        Kitchens.one(new Kitchen(plan, clock -> List.of(new ToldProbe("pan", 0)), System::nanoTime));
                Announcer announcer = new Announcer(script.program("", 5000), false, System::nanoTime)) {
            announcer.announce(kitchens);
            JarBatch batch = new JarBatch(
                    Food.MARMALADE,
                    1240,
                    JarSize.HALF_PINT,
                    false,
                    CannerKind.BOILING_WATER,
                    Optional.empty(),
                    OptionalDouble.of(6.35),
                    OptionalDouble.empty(),
                    true);
            kitchens.jars().load("a", JarLoad.of(batch, 6)).join();
            kitchens.jars().tap("b", CannerTap.BOILS).join();
            Hearing.await(
                    "the call that the time is up",
                    () -> script.heard().stream().anyMatch(text -> text.contains("lid off")));
        }
    }

    @Test
    void aProgramThatHangs_holdsUpNothingButItself() throws IOException {
        Script script = new Script(folder, "[ -e \"$0.hung\" ] || { touch \"$0.hung\"; sleep 600; }");
        try (Kitchen kitchen = kitchen("pan");
                Announcer announcer = new Announcer(script.program("", 1000), false, System::nanoTime)) {
            announcer.announce(Kitchens.one(kitchen));
            kitchen.start();
            awaitSaid(script, CALL);
            assertThat(kitchen.healthy()).isTrue();
        }
    }
}
