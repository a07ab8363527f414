package spoonfall.announce;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoonfall.alarm.Priority;

final class WaitingTest {
    private final Waiting waiting = new Waiting();

    private void add(String topic, Priority priority) {
        waiting.add(new Announcement(topic, priority, topic));
    }

    private List<String> take(int count) throws InterruptedException {
        List<String> taken = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            taken.add(waiting.take().topic());
        }
        return taken;
    }

    @Test
    void alarms_areNeverDroppedBeforeLesserNews() throws InterruptedException {
        add("gel-point", Priority.HIGH);
        for (int i = 0; i < 20; i++) {
            add("reminder " + i, Priority.LOW);
        }
        add("stalled", Priority.MEDIUM);
        add("scorch-risk", Priority.HIGH);
        assertThat(take(6))
                .containsExactly("gel-point", "scorch-risk", "stalled", "reminder 17", "reminder 18", "reminder 19");
        assertThat(waiting.dropped()).isEqualTo(17);
    }

    @Test
    void newsOfATopic_takesThePlaceOfWhatStillWaits() throws InterruptedException {
        waiting.add(new Announcement("sentence", Priority.LOW, "Warming up."));
        waiting.add(new Announcement("sentence", Priority.LOW, "Coming to the boil."));
        add("stir", Priority.LOW);
        assertThat(waiting.take().text()).isEqualTo("Coming to the boil.");
        assertThat(take(1)).containsExactly("stir");
    }

    @Test
    void whatIsOverBeforeItsTurn_isNotSaid() throws InterruptedException {
        add("stalled", Priority.MEDIUM);
        add("stir", Priority.LOW);
        waiting.forget("stalled");
        assertThat(take(1)).containsExactly("stir");
    }

    @Test
    void controlsAndEndlessTexts_areTamed() {
        Announcement announcement = new Announcement("x", Priority.LOW, "a\u0000b\r\n\tc" + "d".repeat(1000));
        assertThat(announcement.text()).startsWith("a b cd").hasSize(300);
    }
}
