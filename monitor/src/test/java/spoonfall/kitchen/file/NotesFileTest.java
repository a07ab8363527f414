package spoonfall.kitchen.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.afternoon.BatchNotes;
import spoonfall.afternoon.Preparation;
import spoonfall.afternoon.Step;
import spoonfall.afternoon.UsualAfternoon;

final class NotesFileTest {
    @TempDir
    Path folder = Path.of("");

    private Path file(String toml) throws IOException {
        return Files.writeString(folder.resolve("notes.toml"), toml);
    }

    @Test
    void notes_changeAddAndLeaveOut() throws IOException {
        BatchNotes notes = NotesFile.read(file("""
                [steps.soften]
                minutes = 120
                [steps.spirit]
                leave-out = true
                [steps.skim]
                name = "Skim"
                minutes = 3
                after = "off"
                [steps.taste]
                name = "Taste a cold spoonful"
                minutes = 1
                after = "skim"
                [prepare.canner]
                minutes = 45
                [prepare.labels]
                name = "Write the labels"
                minutes = 20
                before = "fill"
                """));
        assertThat(notes.steps())
                .extracting(Step::id)
                .containsSubsequence("soften", "off", "skim", "taste", "rest")
                .doesNotContain("spirit");
        assertThat(notes.step("soften").orElseThrow().minutes()).isEqualTo(120);
        assertThat(notes.preparation("canner").orElseThrow().minutes()).isEqualTo(45);
        assertThat(notes.preparation("labels").orElseThrow().before()).isEqualTo("fill");
    }

    @Test
    void anEmptyFile_isTheUsualAfternoon() throws IOException {
        assertThat(NotesFile.read(file(""))).isEqualTo(UsualAfternoon.notes());
    }

    @Test
    void whatThePageGivesToKeep_isReadToTheSame() throws IOException {
        BatchNotes notes = UsualAfternoon.notes()
                .without("soften")
                .without("process")
                .without("jars")
                .changed("boil", Optional.of("Boil \"hard\" \\ fast"), Optional.of(30))
                .with(Step.own("skim", "Skim", 3), "off")
                .with(Step.own("taste", "Taste", 1), "skim")
                .with(Preparation.own("labels", "Labels", 20, "fill"));
        assertThat(NotesFile.read(file(NotesText.of(notes)))).isEqualTo(notes);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[step.boil]|, line 1: step: is not a key of batch notes; did you mean steps?",
                "[steps.boil]\\nminuts = 3|, line 2: minuts: is not a key of batch notes; did you mean minutes?",
                "[steps.boil]\\nminutes = 3.5|, line 2: minutes: must be a whole number",
                "[steps.boil]\\nminutes = 90000|, line 1: \"boil\" must take 0 to 2880 minutes, not 90000",
                "[steps.boil]\\nminutes = \"25\"|, line 2: minutes: must be a whole number",
                "[steps.boil]\\nname = 7|, line 2: name: must be a text in quotes",
                "[steps.boil]\\nafter = \"fill\"|, line 2: after: only a step of your own",
                "[steps.skim]\\nname = \"Skim\"|, line 1: skim: is not one of the usual afternoon; one of your own needs minutes",
                "[steps.skim]\\nname = \"Skim\"\\nminutes = 3\\nafter = \"nowhere\"|, line 1: there is no step \"nowhere\" to come after",
                "[steps.boyl]\\nleave-out = true|, line 1: the notes have nothing called \"boyl\"",
                "[steps]\\nboil = 25|, line 2: boil: must be a table of its own, headed [steps.boil]",
                "[prepare.plates]\\nminutes = 20|, line 1: the cook is reminded of \"plates\" 15 minutes ahead",
                "[prepare.labels]\\nname = \"L\"\\nminutes = 3\\nbefore = \"nowhere\"|, line 1: \"labels\" is for a step \"nowhere\"",
                "steps = |, line 1: Unexpected"
            })
    void wrongNotes_areNamedByFileLineAndKey(String toml, String message) throws IOException {
        Path file = file(toml.replace("\\n", "\n"));
        assertThatThrownBy(() -> NotesFile.read(file))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(file.toString())
                .hasMessageContaining(message)
                .hasMessageNotContaining("\n");
    }

    @Test
    void missingNotes_areNamed() {
        assertThatThrownBy(() -> NotesFile.read(folder.resolve("none.toml")))
                .hasMessageContaining("there are no batch notes");
    }
}
