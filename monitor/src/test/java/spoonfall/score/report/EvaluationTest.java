package spoonfall.score.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

final class EvaluationTest {
    private static final List<String> NAMES = List.of("clean.csv", "gap.csv", "past.csv", "scorch.csv", "stall.csv");

    private static Evaluation samples() {
        return Evaluation.of(
                NAMES, name -> Trace.read(Path.of("../sample-traces").resolve(name)));
    }

    @Test
    void theSamples_areScored() throws IOException {
        JsonNode figures = new ObjectMapper().readTree(samples().json("the samples"));
        assertThat(figures.path("cooks").asInt()).isEqualTo(5);
        for (JsonNode fault : figures.path("faults")) {
            int held = List.of("stalled", "scorch-risk", "probe-silent")
                            .contains(fault.path("alarm").asText())
                    ? 1
                    : 0;
            assertThat(fault.path("count").asInt()).as(fault.toString()).isEqualTo(held);
            assertThat(fault.path("found").asInt()).as(fault.toString()).isEqualTo(held);
        }
        JsonNode tenAhead = figures.path("clean").path("forecasts").path(2);
        assertThat(tenAhead.path("count").asInt()).isEqualTo(2);
    }

    @Test
    void theSameTraces_giveTheSameReportsOnAnyNumberOfThreads() {
        Evaluation once = samples();
        Evaluation again = samples();
        assertThat(again.text()).isEqualTo(once.text());
        assertThat(again.json("x")).isEqualTo(once.json("x"));
        assertThat(again.html("x")).isEqualTo(once.html("x"));
    }

    @Test
    void thePage_needsNothingElse() {
        String html = samples().html("five & more <samples>");
        assertThat(html)
                .contains("five &amp; more &lt;samples&gt;", "<svg", "prefers-color-scheme: dark")
                .doesNotContain("http", "src=", "<script", "url(", "@import", "NaN", "Infinity");
    }

    @Test
    void theTextOfATrace_cannotBecomeMarkup() {
        Trace trace = Trace.read(Path.of("../sample-traces/clean.csv"));
        TraceInfo evil = new TraceInfo(
                "<script>alert(1)</script>",
                "",
                "recorded",
                trace.info().elevationM(),
                trace.info().pressurePa(),
                trace.info().riseC(),
                trace.info().seed(),
                trace.info().startedAt(),
                List.of(new TraceInfo.Label(700, "<b>stir</b>")));
        String html =
                Evaluation.of(List.of("a\"b'.csv"), name -> trace.with(evil)).html("x");
        assertThat(html).doesNotContain("<script", "<b>stir", "b'.csv");
    }

    @Test
    void aTraceOfAKitchenThatCannotBe_isNamed() {
        Trace trace = Trace.read(Path.of("../sample-traces/clean.csv"));
        TraceInfo high = new TraceInfo(
                "a cook",
                "",
                "recorded",
                OptionalDouble.of(99_999),
                OptionalDouble.empty(),
                trace.info().riseC(),
                trace.info().seed(),
                trace.info().startedAt(),
                trace.info().labels());
        assertThatThrownBy(() -> Evaluation.of(
                        List.of("clean.csv", "high.csv"), name -> name.equals("high.csv") ? trace.with(high) : trace))
                .hasMessageContaining("high.csv: elevation must be -1,000 to 11,000 m");
    }
}
