package spoonfall.score;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import spoonfall.probe.trace.Trace;

/** The monitor's score on many labelled traces. The same traces give the same score. */
public final class Evaluation {
    private final Scorecard card;

    private Evaluation(Scorecard card) {
        this.card = card;
    }

    /**
     * Scores the monitor, on all processors at once.
     *
     * @param names of the traces
     * @param read gives the trace of a name; called from several threads, each trace is kept only while it is scored
     */
    public static Evaluation of(List<String> names, Function<String, Trace> read) {
        Stream<CookScore> scores = names.parallelStream().map(name -> {
            Trace trace = read.apply(name);
            return Scorer.score(name, trace, Observed.of(trace));
        });
        return new Evaluation(new Scorecard(scores.toList()));
    }

    /** The figures as text. */
    public String text() {
        return TextReport.of(card);
    }
}
