package spoonfall.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class JarsTest {
    private static final String USUAL =
            "jars --elevation 1240m --jar half-pint --sterilised no --canner boiling-water ";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String line) {
        return Main.run(
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                line.strip().split(" +"));
    }

    @Test
    void theTime_isSaidWithReasonsCautionsAndSources() {
        assertThat(run(USUAL + "--headspace 1/4in --recipe-time 15min"))
                .as(err.toString())
                .isZero();
        assertThat(out.toString())
                .contains(
                        "Process the jars for 15 min.",
                        "14 min in boiling water here",
                        "Why:",
                        "Take care:",
                        "Sources:")
                .contains("longer than the table's 10 min", "Never shorten a tested time", "Bulletin 539");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                USUAL + "|Nobody said how much headspace the jars have",
                USUAL + "--headspace 1/4in --food other|Ask the source of your recipe",
                "jars --elevation 1240m --jar pint --sterilised no --canner steam --headspace 6mm|how acid this one is",
                "jars --elevation 3200m --jar pint --sterilised no --canner boiling-water --headspace 6mm|above 10,000 ft",
                "jars --elevation 1240m|say the jar's size",
                "jars|say the kitchen's elevation"
            })
    void whatIsNotPublishedOrNotSaid_endsInOneLineAndAnExitCode(String line, String words) {
        assertThat(run(line)).isEqualTo(words.startsWith("say ") ? 2 : 1);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString().strip())
                .startsWith("spoonfall jars: ")
                .contains(words)
                .doesNotContain("\n");
    }
}
