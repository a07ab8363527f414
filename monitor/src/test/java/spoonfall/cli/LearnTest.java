package spoonfall.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.Cooks;
import spoonfall.lab.Scenario;

/** {@code spoonfall learn}, {@code diagnose} and {@code log recook} as they are typed. */
final class LearnTest {
    @TempDir
    Path folder = Path.of("");

    private String said = "";

    private int run(String... args) {
        StringWriter text = new StringWriter();
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(List.of("--data", folder.toString()));
        int code = Main.run(new PrintWriter(text), new PrintWriter(text), all.toArray(String[]::new));
        said = text.toString();
        return code;
    }

    @Test
    void learn_withoutAnyBatch_saysWhereToWriteThem() {
        assertThat(run("learn")).isZero();
        assertThat(said)
                .contains("No batch has told how it set yet")
                .contains("batches.csv")
                .contains("fruit,final_rise,set")
                .contains("Next: 4.4 °C above boiling water.");
    }

    @Test
    void learn_saysForEachFruitWhatToAimAt() throws IOException {
        Files.writeString(
                folder.resolve("batches.csv"),
                "fruit,final_rise,set\norange,4.4C,soft\norange,4.8C,right\nquince,4.4C,firm\n");
        assertThat(run("learn")).isZero();
        assertThat(said)
                .contains("orange: 2 batches (1 soft, 1 right)")
                .contains("quince: 1 batch (1 firm)")
                .contains("another fruit: 0 batches")
                .contains("chance of \"right\"")
                .contains("nine times in ten")
                .contains("A set test has the last word.");
        assertThat(run("learn", "--fruit", "Orange", "--json")).isZero();
        assertThat(said)
                .startsWith("{\"fruit\":\"orange\",\"riseC\":")
                .contains("\"sets\":{\"runny\":0,\"soft\":1,\"right\":1");
    }

    @Test
    void diagnose_andRecook_goByTheRecord() throws IOException {
        Path trace = folder.resolve("in.csv");
        Cooks.trace(Scenario.PAST, 1).write(trace);
        assertThat(run("log", "import", trace.toString())).isZero();
        Path another = folder.resolve("another.csv");
        Cooks.trace(Scenario.PAST, 2).write(another);
        assertThat(run("log", "import", another.toString())).isZero();
        assertThat(run("diagnose", "1", "--set", "stiff")).isZero();
        assertThat(said)
                .contains("Cook 1. It came out stiff.")
                .contains("past its target. It boiled on for")
                .contains("Overcooked cannot be mended")
                .contains("Take care: Boiling sugar sticks and burns");
        assertThat(run("diagnose", "1", "--set", "solid")).isEqualTo(2);
        assertThat(said).contains("a set is runny, soft, right, firm, stiff, not \"solid\"");
        assertThat(run("diagnose", "9")).isOne();
        assertThat(said).contains("there is no cook 9");
        assertThat(run("log", "recook", "2", "--of", "2")).isOne();
        assertThat(said).contains("which did not begin before it");
    }
}
