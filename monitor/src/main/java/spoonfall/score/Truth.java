package spoonfall.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import spoonfall.probe.trace.TraceInfo;

/** What truly happened in a cook, by the labels of its trace. */
final class Truth {
    static final String STALLED = "stalled";
    static final String SCORCH = "scorch-risk";

    /** The labels that begin and end what each alarm is for. */
    private static final Map<String, List<List<String>>> FAULTS = Map.of(
            STALLED,
            List.of(List.of("stall-begins", "stall-ends"), List.of("heat-off", "heat-on")),
            SCORCH,
            List.of(List.of("scorch-begins", "scorch-ends")),
            "probe-out-of-pan",
            List.of(List.of("probe-out-begins", "probe-out-ends")),
            "probe-silent",
            List.of(List.of("gap-begins", "gap-ends")),
            "probe-stuck",
            List.of(List.of("stuck-begins", "stuck-ends")),
            "probe-implausible",
            List.of(List.of("spike", "spike"), List.of("jump-begins", "jump-ends")));

    /** What is no trouble at all, so that a cook with these labels alone is a clean one. */
    private static final Set<String> MILESTONES = Set.of("boil", "window", "gel", "off-the-heat");

    private static final List<String> PAN_LABELS =
            List.of("heat-", "stall-", "lid-", "test-", "water-added", "sugar-added");
    private static final double SCORCH_COOLS_S = 180;
    private static final double WILD_LASTS_S = 10;

    private final TraceInfo info;
    private final double lastT;

    Truth(TraceInfo info, double lastT) {
        this.info = info;
        this.lastT = lastT;
    }

    /** The faults that a monitor must find, by the wire names of their alarms. */
    static List<String> faults() {
        return List.of(STALLED, SCORCH, "probe-out-of-pan", "probe-silent", "probe-stuck");
    }

    OptionalDouble boilT() {
        return info.firstT("boil");
    }

    OptionalDouble windowT() {
        return info.firstT("window");
    }

    OptionalDouble gelT() {
        return info.firstT("gel");
    }

    /** When the cook ended: the pan came off the heat for good, or the trace ended. */
    double endT() {
        return info.firstT("off-the-heat").orElse(lastT);
    }

    boolean clean() {
        return info.labels().stream().allMatch(label -> MILESTONES.contains(label.what()));
    }

    /** The spans in which what {@code alarm} is for was so; none for an alarm that is for no fault. */
    List<Span> faults(String alarm) {
        List<Span> spans = new ArrayList<>();
        for (List<String> names : FAULTS.getOrDefault(alarm, List.of())) {
            addSpans(names.get(0), names.get(1), spans);
        }
        return merged(spans);
    }

    /** Whether any fault was in effect at {@code t}, or had been within {@code afterS} before it. */
    boolean faultAt(double t, double afterS) {
        return FAULTS.keySet().stream()
                .flatMap(alarm -> faults(alarm).stream())
                .anyMatch(span -> span.longerBy(afterS).holds(t));
    }

    /** Whether the gel point could be foreseen at {@code t}: the probe tells the truth, and nobody changes the pan. */
    boolean foreseeableAt(double t) {
        double gelT = gelT().orElseThrow();
        boolean changed = info.labels().stream()
                .anyMatch(label -> label.t() > t
                        && label.t() <= gelT
                        && PAN_LABELS.stream().anyMatch(name -> label.what().startsWith(name)));
        return !changed && readAt(t);
    }

    /** Whether the probe is in the pan, speaking and telling the truth at {@code t}. */
    boolean readAt(double t) {
        boolean blind = List.of("probe-out-of-pan", "probe-silent", "probe-stuck").stream()
                .flatMap(alarm -> faults(alarm).stream())
                .anyMatch(span -> span.holds(t));
        return !blind && !readingWrongAt(t);
    }

    /** Whether a scorch, a jump or a wild value makes the reading wrong at {@code t}. */
    boolean readingWrongAt(double t) {
        boolean shifted = faults("probe-implausible").stream()
                .anyMatch(span -> span.longerBy(WILD_LASTS_S).holds(t));
        boolean scorched = faults(SCORCH).stream()
                .anyMatch(span -> span.longerBy(SCORCH_COOLS_S).holds(t));
        return shifted || scorched;
    }

    private void addSpans(String begins, String ends, List<Span> spans) {
        for (TraceInfo.Label label : info.labels()) {
            if (label.what().equals(begins)) {
                double toT = info.labels().stream()
                        .filter(other -> other.what().equals(ends) && other.t() >= label.t())
                        .mapToDouble(TraceInfo.Label::t)
                        .findFirst()
                        .orElse(endT());
                spans.add(new Span(label.t(), Math.max(label.t(), toT)));
            }
        }
    }

    private static List<Span> merged(List<Span> spans) {
        List<Span> sorted = new ArrayList<>(spans);
        sorted.sort(Comparator.comparing(Span::fromT));
        List<Span> merged = new ArrayList<>();
        for (Span span : sorted) {
            if (!merged.isEmpty() && merged.get(merged.size() - 1).touches(span)) {
                Span last = merged.remove(merged.size() - 1);
                merged.add(new Span(last.fromT(), Math.max(last.toT(), span.toT())));
            } else {
                merged.add(span);
            }
        }
        return merged;
    }
}
