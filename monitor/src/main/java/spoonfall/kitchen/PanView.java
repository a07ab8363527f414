package spoonfall.kitchen;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookStatus;
import spoonfall.words.Outlook;

/**
 * How the pan is and what is said about it; a newer one replaces an older one.
 *
 * @param seq number of the latest change it includes
 * @param status how the pan is; empty before the first reading
 * @param outlook what is said
 * @param alarms those that stand, most urgent first
 * @param heardNanos instant on {@link System#nanoTime()} at which the reading that caused it was heard
 */
public record PanView(
        long seq, Optional<CookStatus> status, Outlook outlook, List<CookAlarm> alarms, OptionalLong heardNanos) {}
