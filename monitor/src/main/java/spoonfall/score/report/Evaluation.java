package spoonfall.score.report;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import spoonfall.cook.ProbeTrust;
import spoonfall.probe.trace.Trace;
import spoonfall.score.ByHand;
import spoonfall.score.CookScore;
import spoonfall.score.Observed;
import spoonfall.score.Scorecard;
import spoonfall.score.Scorer;

/** The monitor's score on many labelled traces. The same traces give the same score. */
public final class Evaluation {
    private final Scorecard card;
    private final Function<String, Trace> read;
    private final ProbeTrust probe;

    private Evaluation(Scorecard card, Function<String, Trace> read, ProbeTrust probe) {
        this.card = card;
        this.read = read;
        this.probe = probe;
    }

    /**
     * Scores the monitor, on all processors at once.
     *
     * @param names of the traces
     * @param read gives the trace of a name; called from several threads, each trace is kept only while it is scored
     * @throws IllegalArgumentException naming a trace whose water cannot boil where it says
     */
    public static Evaluation of(List<String> names, Function<String, Trace> read) {
        return of(names, read, ProbeTrust.unchecked("pan"));
    }

    /** The same on traces whose temperatures somebody reads now and then, and types. */
    public static Evaluation byHand(List<String> names, Function<String, Trace> read, ByHand hand) {
        return of(names, name -> hand.look(name, read.apply(name)), ProbeTrust.byHand("pan"));
    }

    private static Evaluation of(List<String> names, Function<String, Trace> read, ProbeTrust probe) {
        Stream<CookScore> scores = names.parallelStream().map(name -> {
            Trace trace = read.apply(name);
            try {
                return Scorer.score(name, trace, Observed.of(trace, probe));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(name + ": " + e.getMessage(), e);
            }
        });
        return new Evaluation(new Scorecard(scores.toList()), read, probe);
    }

    /** The figures as text. */
    public String text() {
        return TextReport.of(card);
    }

    /** The figures as JSON; {@code subject} says in a few words what was scored. */
    public String json(String subject) {
        return JsonReport.of(card, subject);
    }

    /** The figures and the worst cooks as one page of HTML; {@code subject} says what was scored. */
    public String html(String subject) {
        return HtmlReport.of(card, subject, name -> {
            Trace trace = read.apply(name);
            return CookPicture.of(trace, Observed.of(trace, probe));
        });
    }
}
