package spoonfall.canner;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is said of jars that came out of the canner. */
final class ShelfWords {
    private ShelfWords() {}

    /** What is said while no jars are in the canner. */
    static Say say(List<ShelfLoad> shelf, double now) {
        Optional<ShelfLoad> check = first(shelf, ShelfLoad.Phase.SEAL_CHECK, now);
        if (check.isPresent()) {
            return new Say(
                    "Check the seals.",
                    "Press the middle of each lid: one that sealed does not move.",
                    "Take the bands off first. Say below how each jar is.");
        }
        Optional<ShelfLoad> cooling = first(shelf, ShelfLoad.Phase.COOLING, now);
        if (cooling.isPresent()) {
            return new Say(
                    "The jars are cooling.",
                    String.format(
                            Locale.ROOT,
                            "Leave them alone until {clock:%.0f}.",
                            cooling.get().checkT()),
                    "12 to 24 hours, where no draught reaches them. Do not tighten the bands, and do not press the lids.");
        }
        if (!shelf.isEmpty()) {
            return new Say(
                    "Every jar was looked at.", "", "Wipe them, write the day on them, and keep them cool and dark.");
        }
        return new Say(
                "How long do the jars boil?",
                "",
                "Say what they are, and the published time is looked up. Your recipe's own tested time is never shortened.");
    }

    private static Optional<ShelfLoad> first(List<ShelfLoad> shelf, ShelfLoad.Phase phase, double now) {
        return shelf.stream().filter(load -> load.phase(now) == phase).findFirst();
    }

    /** What is said of one load. */
    static String text(ShelfLoad load, double now) {
        return switch (load.phase(now)) {
            case COOLING ->
                String.format(
                        Locale.ROOT,
                        "Leave %s alone until {clock:%.0f}.",
                        count(load.seals().size(), "jar"),
                        load.checkT());
            case SEAL_CHECK -> {
                boolean late = now >= load.reprocessUntilT();
                yield late
                        ? "Check each lid now. " + LATE
                        : String.format(
                                Locale.ROOT,
                                "Check each lid. What did not seal can be processed again until {clock:%.0f}.",
                                load.reprocessUntilT());
            }
            case DONE -> done(load, now);
        };
    }

    private static final String LATE =
            "More than 24 hours have passed: a jar that did not seal must not be processed again."
                    + " If it stood warm, throw it away untasted.";

    private static String done(ShelfLoad load, double now) {
        List<String> open = new ArrayList<>();
        for (int i = 0; i < load.seals().size(); i++) {
            if (load.seals().get(i) == Seal.UNSEALED) {
                open.add(String.valueOf(i + 1));
            }
        }
        int sealed = load.seals().size() - open.size();
        if (open.isEmpty()) {
            return (sealed == 1 ? "The jar" : "All " + count(sealed, "jar")) + " sealed.";
        }
        String which = (open.size() == 1 ? "Jar " : "Jars ") + String.join(", ", open) + " did not seal. ";
        if (now >= load.reprocessUntilT()) {
            return which + LATE;
        }
        return which
                + String.format(
                        Locale.ROOT,
                        "Refrigerate what did not seal and use it soon, or process it again by {clock:%.0f}: reheated, in a clean hot"
                                + " jar, with a new lid, for the whole time.",
                        load.reprocessUntilT());
    }

    private static String count(int count, String noun) {
        return count == 1 ? "1 " + noun : count + " " + noun + "s";
    }
}
