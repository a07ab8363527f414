package spoonfall.afternoon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoonfall.cook.ReminderName;

/** What batch notes may hold. */
final class BatchNotesTest {
    private final BatchNotes usual = UsualAfternoon.notes();

    @Test
    void theUsualAfternoon_hasItsStepsInOrder() {
        assertThat(usual.steps())
                .extracting(Step::id)
                .containsExactly(
                        "soften",
                        "sugar",
                        "boil",
                        "test",
                        "off",
                        "spirit",
                        "rest",
                        "fill",
                        "wipe",
                        "lid",
                        "process",
                        "rest-jars",
                        "cool");
        assertThat(usual.preparation("plates").orElseThrow().minutes()).isEqualTo(15);
        assertThat(usual.preparation("jars").orElseThrow().minutes()).isEqualTo(10);
        // 30 minutes: common practice, no source
        assertThat(usual.preparation("canner").orElseThrow().minutes()).isEqualTo(30);
    }

    @Test
    void aStepThatIsTakenOut_takesItsPreparationsWithIt() {
        BatchNotes shorter = usual.without("process");
        assertThat(shorter.step("process")).isEmpty();
        assertThat(shorter.preparation("canner")).isEmpty();
    }

    @Test
    void nonsense_isRefusedInPlainWords() {
        assertThatThrownBy(() -> usual.changed("boil", Optional.of(" "), Optional.empty()))
                .hasMessageContaining("the name of \"boil\" must be 1 to 60 plain characters");
        assertThatThrownBy(() -> usual.changed("boil", Optional.empty(), Optional.of(5000)))
                .hasMessageContaining("\"boil\" must take 0 to 2880 minutes, not 5000");
        assertThatThrownBy(() -> usual.without("nothing")).hasMessageContaining("nothing called \"nothing\"");
        assertThatThrownBy(() -> usual.with(Step.own("boil", "Boil", 3), "off"))
                .hasMessageContaining("two of the notes are called \"boil\"");
        assertThatThrownBy(() -> usual.with(Step.own("skim", "Skim", 3), "nowhere"))
                .hasMessageContaining("no step \"nowhere\" to come after");
        assertThatThrownBy(() -> usual.with(Preparation.own("labels", "Labels", 3, "nowhere")))
                .hasMessageContaining("a step \"nowhere\" that is not there");
        assertThatThrownBy(() -> Step.own("No", "No", 3)).hasMessageContaining("small letters");
        assertThatThrownBy(() -> new BatchNotes(List.of(), List.of())).hasMessageContaining("1 to 30 steps");
        BatchNotes single = new BatchNotes(List.of(Step.own("fill", "Fill", 3)), List.of());
        assertThatThrownBy(() -> single.without("fill")).hasMessageContaining("only step left");
    }

    @Test
    void whatTheCookIsRemindedOfAnyway_keepsItsLead() {
        assertThatThrownBy(() -> usual.changed("plates", Optional.empty(), Optional.of(20)))
                .hasMessageContaining("reminded of \"plates\" 15 minutes ahead");
        assertThat(usual.changed("plates", Optional.of("Chill the saucers"), Optional.empty())
                        .preparation("plates")
                        .orElseThrow()
                        .saidBy())
                .contains(ReminderName.CHILL_PLATES);
    }
}
