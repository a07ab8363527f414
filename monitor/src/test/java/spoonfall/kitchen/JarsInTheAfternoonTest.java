package spoonfall.kitchen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import spoonfall.afternoon.Timeline;
import spoonfall.canner.CannerPhase;
import spoonfall.canner.CannerTap;
import spoonfall.canner.JarLoad;
import spoonfall.canning.CannerKind;
import spoonfall.canning.Food;
import spoonfall.canning.JarBatch;
import spoonfall.canning.JarSize;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.probe.Hearing;

/** The jars' timer moves the afternoon of the batch that it is about; time passes 600 times as fast as life. */
final class JarsInTheAfternoonTest {
    private final Kitchen large = kitchen("large");
    private final Kitchen small = kitchen("small");
    private final Kitchens kitchens = new Kitchens(List.of(large, small), Optional.empty());

    @AfterEach
    void stop() {
        kitchens.close();
    }

    private static Kitchen kitchen(String pan) {
        KitchenPlan plan =
                KitchenPlan.live("Hollin Bank", "batch 14", new CookSettings(WaterBoil.atElevation(1240), 4.4), 600);
        return new Kitchen(plan.inPan(pan), clock -> List.of(new ToldProbe(pan, 0)), System::nanoTime);
    }

    private static Timeline.State process(Kitchen pan) {
        return pan.state().join().afternoon().timeline().steps().stream()
                .filter(line -> line.step().id().equals("process"))
                .findFirst()
                .orElseThrow()
                .state();
    }

    @Test
    void jarsInTheCanner_moveTheBatchThatIsOffTheHeat_andNoOther() {
        kitchens.start();
        large.afternoon().tap(Optional.empty(), "lid").join();
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
        Hearing.await("the jars to be in the canner", () -> process(large) == Timeline.State.NOW);
        kitchens.jars().tap("b", CannerTap.BOILS).join();
        Hearing.await(
                "the ten minutes", () -> kitchens.jars().state().join().view().phase() == CannerPhase.HEAT_OFF);
        Hearing.await("the processing to be over", () -> process(large) == Timeline.State.DONE);
        assertThat(process(small)).isEqualTo(Timeline.State.LATER);
    }
}
