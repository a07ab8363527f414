package spoonfall.web.live;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.util.component.AbstractLifeCycle;
import org.eclipse.jetty.util.thread.Scheduler;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.probe.Hearing;

/** What readers of the board are told, and when: the time between is over when the test says so. */
final class PanBoardTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private final ToldProbe big = new ToldProbe("big", 0.02);
    private final ToldProbe small = new ToldProbe("small", 0.02);
    private final ToldProbe tiny = new ToldProbe("tiny", 0.02);
    private final Kitchens kitchens = new Kitchens(
            List.of(kitchen("big", big), kitchen("small", small), kitchen("tiny", tiny)), Optional.empty());
    private final LaterByHand later = new LaterByHand();
    private final PanBoard board = new PanBoard(kitchens, () -> later);
    private final List<String> told = new CopyOnWriteArrayList<>();

    PanBoardTest() {
        kitchens.start();
        board.listen();
        board.tell(told::add);
    }

    @AfterEach
    void stop() {
        kitchens.close();
    }

    private static Kitchen kitchen(String pan, ToldProbe probe) {
        CookSettings settings = new CookSettings(WaterBoil.atElevation(1240), 4.4);
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", pan, settings, 1).inPan(pan);
        return new Kitchen(plan, clock -> List.of(probe), System::nanoTime);
    }

    /** The pans of which a message tells. */
    private static List<String> named(String message) throws JsonProcessingException {
        return MAPPER.readTree(message).path("pans").findValuesAsText("name");
    }

    private JsonNode board() {
        ObjectNode message = JsonNodeFactory.instance.objectNode();
        board.addTo(message);
        return message.path("pans");
    }

    /** The stages that stand on the board, whoever was told of them. */
    private String stages() {
        StringBuilder stages = new StringBuilder();
        board().forEach(row -> stages.append(row.path("name").asText())
                .append(' ')
                .append(row.path("stage").asText())
                .append("; "));
        return stages.toString();
    }

    /** Waits until every pan has said how it stands, lets what was put off be done, and forgets what was told. */
    private void settle() {
        Hearing.await(
                "every pan's words",
                () -> board().findValuesAsText("state").stream().noneMatch(String::isEmpty));
        boolean ran = true;
        while (ran) {
            ran = later.runOne();
        }
        told.clear();
    }

    @Test
    void theFirstChange_isToldAtOnce_andThoseSoonAfterTogether() throws JsonProcessingException {
        settle();
        big.say(60, 20);
        Hearing.await("the big pan warms", () -> stages().startsWith("big warming;"));
        assertThat(told).hasSize(1);
        assertThat(named(told.get(0))).containsExactly("big");
        small.say(60, 20);
        tiny.say(60, 20);
        Hearing.await("all warm", () -> stages().equals("big warming; small warming; tiny warming; "));
        assertThat(told).hasSize(1);
        assertThat(later.runOne()).isTrue();
        assertThat(told).hasSize(2);
        assertThat(named(told.get(1))).contains("small", "tiny");
    }

    @Test
    void nothingToTell_endsTheGathering() {
        settle();
        assertThat(later.runOne()).isFalse();
        small.say(60, 20);
        Hearing.await("the small pan warms", () -> stages().contains("small warming; "));
        assertThat(told).hasSize(1);
    }

    /** Does what is put off when the test says so. */
    private static final class LaterByHand extends AbstractLifeCycle implements Scheduler {
        private final Queue<Runnable> tasks = new ConcurrentLinkedQueue<>();

        @Override
        public Task schedule(Runnable task, long delay, TimeUnit units) {
            tasks.add(task);
            return () -> tasks.remove(task);
        }

        /** Does the oldest; says whether there was one. */
        private boolean runOne() {
            Runnable task = tasks.poll();
            if (task != null) {
                task.run();
            }
            return task != null;
        }
    }
}
