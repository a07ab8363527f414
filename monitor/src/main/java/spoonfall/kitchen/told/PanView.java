package spoonfall.kitchen.told;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.settest.SetTestsNow;
import spoonfall.kitchen.thermometer.Basis;
import spoonfall.kitchen.thermometer.CheckView;
import spoonfall.kitchen.typed.HandView;
import spoonfall.probe.Quality;
import spoonfall.words.Outlook;

/**
 * How the pan is and what is said about it; a newer one replaces an older one.
 *
 * @param startedAt the wall clock at the cook's first reading; empty before it
 * @param seq number of the latest change it includes
 * @param status how the pan is; empty before the first reading
 * @param outlook what is said
 * @param alarms those that stand, most urgent first
 * @param heardNanos instant on {@link System#nanoTime()} at which the reading that caused it was heard
 * @param basis what the cook is measured against, and how sure that is
 * @param others what the other probes in the pan say
 * @param hand what was typed of the followed thermometer; empty if nobody types for it
 * @param check how the check of a thermometer stands; empty if none is running
 * @param tests how the set tests stand; empty before the first reading
 */
public record PanView(
        Optional<Instant> startedAt,
        long seq,
        Optional<CookStatus> status,
        Outlook outlook,
        List<CookAlarm> alarms,
        OptionalLong heardNanos,
        Basis basis,
        List<Other> others,
        Optional<HandView> hand,
        Optional<CheckView> check,
        Optional<SetTestsNow> tests) {

    /** What the pan is measured against by now: the kitchen's settings, re-aimed by what set tests taught. */
    public CookSettings aim() {
        return tests.map(SetTestsNow::aim).orElse(basis.settings());
    }

    /**
     * What another probe in the pan says.
     *
     * @param name as the kitchen calls it
     * @param temperatureC in °C; empty when nothing fresh is known
     * @param quality how far its latest reading can be trusted
     */
    public record Other(String name, OptionalDouble temperatureC, Quality quality) {}
}
