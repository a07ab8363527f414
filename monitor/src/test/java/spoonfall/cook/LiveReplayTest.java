package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.lab.Scenario;
import spoonfall.log.CookRecord;
import spoonfall.log.RecordedTrace;
import spoonfall.log.TraceReplay;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/** A replay gives exactly what the live cook gave. */
final class LiveReplayTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void aReplay_givesTheEventsOfTheLiveCook(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Scenario scenario = List.of(Scenario.values()).get(random.nextInt(Scenario.values().length));
        Trace cook = Cooks.trace(scenario, seed);
        CookSettings settings = Cooks.settings(cook);
        long origin = random.nextLong(1L << 50);
        CookMonitor monitor = new CookMonitor(settings, origin);
        CookRecord record = new CookRecord();
        List<CookEvent> live = new ArrayList<>();
        double lastT = 0;
        for (int i = 0; i < cook.size(); i++) {
            long at = origin + Math.round(cook.elapsedS(i) * 1e9) + (i == 0 ? 0 : random.nextLong(900_000_000L));
            // The service lets time pass whenever it likes, and now and then a little too far.
            for (int ticks = random.nextInt(3); ticks > 0; ticks--) {
                live.addAll(monitor.advanceTo(at - random.nextLong(2_000_000_000L) + 200_000_000L));
            }
            if (random.nextInt(50) == 0) {
                live.addAll(monitor.accept(Reading.bad("pan", at, "?", Quality.NO_NUMBER)));
            }
            OptionalDouble temperatureC = cook.temperatureC(i);
            live.addAll(monitor.accept(Reading.good("pan", at, temperatureC.orElseThrow(), "")));
            record.add(monitor.timeS(), temperatureC.orElseThrow());
            lastT = monitor.timeS();
        }
        Trace recorded = RecordedTrace.of(record, settings, "", Optional.empty(), List.of());
        TraceReplay replay = new TraceReplay(recorded, settings);
        List<CookEvent> again = new ArrayList<>();
        while (replay.hasNext()) {
            again.addAll(replay.next());
        }
        double until = lastT;
        assertThat(again)
                .as("%s, seed %d", scenario, seed)
                .isEqualTo(live.stream().filter(event -> event.t() <= until).toList());
        assertThat(again).isNotEmpty();
    }
}
