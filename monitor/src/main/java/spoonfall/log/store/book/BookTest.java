package spoonfall.log.store.book;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import spoonfall.book.RiseLine;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.settest.TestAnswer;

/**
 * A set test of a cook that is over.
 *
 * @param t seconds of the cook at which the pan came off the heat for it
 * @param riseC the pan's rise then, in °C; empty if nothing was read
 * @param answer what was seen, by its name on the wire; empty if nobody said
 * @param set whether it was found set
 */
public record BookTest(double t, OptionalDouble riseC, String answer, boolean set) {
    private static final double BEFORE_S = 20;
    private static final double BY_HAND_S = 300;

    /** The tests of a cook, in order; those that were taken back are none. */
    static List<BookTest> of(StoredCook cook, RiseLine line) {
        Map<String, BookTest> tests = new LinkedHashMap<>();
        for (StoredCook.Event event : cook.events()) {
            if (!event.kind().equals("set-test")) {
                continue;
            }
            String id = event.detail().path("id").asText();
            double t = event.atMillis() / 1000.0;
            BookTest before = tests.getOrDefault(id, new BookTest(t, rise(line, t), "", false));
            switch (event.detail().path("change").asText()) {
                case "undone" -> tests.remove(id);
                case "seen" ->
                    tests.put(id, before.seen(event.detail().path("answer").asText()));
                default -> tests.put(id, before.seen(""));
            }
        }
        return List.copyOf(tests.values());
    }

    private BookTest seen(String seen) {
        boolean found = Arrays.stream(TestAnswer.values())
                .anyMatch(one -> one.set() && one.wireName().equals(seen));
        return new BookTest(t, riseC, seen, found);
    }

    private static OptionalDouble rise(RiseLine line, double t) {
        OptionalDouble near = line.middle(t - BEFORE_S, t);
        return near.isPresent() ? near : line.middle(t - BY_HAND_S, t);
    }
}
