package spoonfall.announce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class LocalProgramTest {
    @TempDir
    Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "It is 2.1 degrees down. Is the heat on?",
                "'single' and \"double\" quotes",
                "$(touch hacked) `touch hacked` ${HOME} $1",
                "a; b && c | d > e < f * ? ~ # ! \\ \\n",
                "  two  spaces  ",
                "Gelée à l’orange, 100 °C, 橙"
            })
    void whatIsSaid_arrivesLiterallyAsOneArgument(String text) throws Exception {
        Script script = new Script(folder, "");
        script.program("", 5000).say(text);
        assertThat(script.heard()).containsExactly(text);
        assertThat(folder.resolve("hacked")).doesNotExist();
    }

    @Test
    void fixedArguments_comeFirstAndQuotesKeepThemTogether() throws Exception {
        Script script = new Script(folder, "");
        script.program("-s 140  \"two words\" 'it''s'", 5000).say("now");
        assertThat(script.heard()).containsExactly("-s", "140", "two words", "it", "s", "now");
    }

    @Test
    void aProgramThatHangs_isEndedWithItsChildren() throws Exception {
        Script script = new Script(folder, "sleep 600");
        LocalProgram program = script.program("", 300);
        assertThatThrownBy(() -> program.say("hello"))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("was ended");
        assertThat(ProcessHandle.current().descendants().filter(ProcessHandle::isAlive))
                .noneMatch(process -> process.info().commandLine().orElse("").contains("sleep 600"));
    }

    @Test
    void aProgramThatFails_saysWithWhichCode() throws Exception {
        LocalProgram program = new Script(folder, "exit 3").program("", 5000);
        assertThatThrownBy(() -> program.say("hello")).hasMessageContaining("error code 3");
    }

    @Test
    void aProgramThatIsNotThere_isRefusedWithTheWayOut() {
        assertThatThrownBy(() -> LocalProgram.of("no-such-voice -s 140", "/usr/bin:/bin", 1000))
                .hasMessageContaining("there is no program no-such-voice")
                .hasMessageContaining("install it");
        assertThatThrownBy(() -> LocalProgram.of("  ", "/bin", 1000)).hasMessageContaining("which program?");
        assertThatThrownBy(() -> LocalProgram.of("sh 'x", "/bin", 1000)).hasMessageContaining("a quote is not closed");
        assertThatThrownBy(() -> LocalProgram.of("/tmp", "", 1000)).hasMessageContaining("there is no program /tmp");
    }
}
