package spoonfall.cli.sample;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.alarm.AlarmChange;
import spoonfall.book.Made;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.TestWord;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.kitchen.cook.Words;
import spoonfall.log.CookBasis;
import spoonfall.log.CookEventJson;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.store.WholeCook;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;
import spoonfall.settest.TestAnswer;

/** A trace watched as a kitchen would have: calls are answered, and the set is tested where the trace says that it was. */
final class SampleCook {
    private static final String PROBE = "pan";
    private static final double ANSWERED_AFTER_S = 20;

    private final CookMonitor monitor;
    private final List<CookInput> inputs = new ArrayList<>();
    private final List<StoredCook.Event> events = new ArrayList<>();
    private final Deque<Call> calls = new ArrayDeque<>();
    private int tests;

    /** A call that somebody will answer. */
    private record Call(String id, double raisedT) {}

    private SampleCook(CookSettings settings) {
        monitor = new CookMonitor(settings, 0, List.of(ProbeTrust.unchecked(PROBE)));
    }

    /**
     * Watches a trace from its beginning to its end, or until it is found set: then the pan stays off the heat.
     *
     * @param first what was said before the first reading
     */
    static WholeCook of(
            Trace trace, CookSettings settings, String batch, Instant startedAt, List<CookInput.Word> first) {
        SampleCook cook = new SampleCook(settings);
        cook.inputs.addAll(first);
        Deque<TraceInfo.Label> labels = new ArrayDeque<>(trace.info().labels());
        double t = 0;
        for (int row = 0; row < trace.size() && !cook.monitor.tests().set(); row++) {
            t = trace.elapsedS(row);
            while (!labels.isEmpty() && labels.peek().t() <= t) {
                cook.test(labels.pop().what(), t);
            }
            cook.answer(t);
            OptionalDouble temperatureC = trace.temperatureC(row);
            if (temperatureC.isPresent()) {
                cook.hear(t, temperatureC.getAsDouble());
            }
        }
        long lastMillis = Math.round(t * 1000);
        CookBasis basis =
                new CookBasis(settings, List.of(ProbeTrust.unchecked(PROBE)), settings.waterBoil(), Optional.empty());
        CookHeader header =
                new CookHeader(1, "", SampleCooks.KITCHEN, batch, "demo", 1, startedAt, settings, basis, Map.of());
        return new WholeCook(
                header,
                cook.inputs,
                cook.events,
                List.of(),
                lastMillis,
                lastMillis,
                Made.UNKNOWN,
                List.of(),
                List.of());
    }

    private void hear(double t, double temperatureC) {
        long millis = Math.round(t * 1000);
        inputs.add(new CookInput.Heard(PROBE, millis, millis, OptionalDouble.of(temperatureC), Quality.GOOD));
        happened(monitor.accept(Reading.good(PROBE, nanos(t), temperatureC, "")));
    }

    /** It thickened the first time, and wrinkled the second. */
    private void test(String label, double t) {
        if (label.equals("test-begins")) {
            tests++;
            say(TestWord.begun("test-" + tests, TestWord.SHORTEST_PLATE_S), t);
        } else if (label.equals("test-ends")) {
            say(TestWord.seen("test-" + tests, tests == 1 ? TestAnswer.THICKENS : TestAnswer.WRINKLES), t);
        }
    }

    private void say(TestWord word, double t) {
        happened(monitor.say(word, nanos(t)));
        inputs.add(new CookInput.Word(Math.round(t * 1000), Words.SET_TEST, Words.detail(word)));
    }

    private void answer(double t) {
        while (!calls.isEmpty() && calls.peek().raisedT() + ANSWERED_AFTER_S <= t) {
            String id = calls.pop().id();
            monitor.acknowledge(id, nanos(t)).ifPresent(answer -> {
                happened(answer.events());
                ObjectNode detail = CookJson.object().put("id", id);
                inputs.add(new CookInput.Word(Math.round(t * 1000), Words.ACKNOWLEDGE, detail));
            });
        }
    }

    private void happened(List<CookEvent> came) {
        for (CookEvent event : came) {
            String kind = CookEventJson.kind(event);
            if (!kind.isEmpty()) {
                events.add(new StoredCook.Event(Math.round(event.t() * 1000), kind, CookEventJson.detail(event)));
            }
            if (event instanceof CookEvent.AlarmChanged changed && changed.change() == AlarmChange.RAISED) {
                calls.add(new Call(changed.alarm().id(), event.t()));
            }
        }
    }

    private static long nanos(double t) {
        return Math.round(t * 1e9);
    }
}
