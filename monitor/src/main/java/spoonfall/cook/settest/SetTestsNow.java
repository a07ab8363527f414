package spoonfall.cook.settest;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.CookSettings;
import spoonfall.cook.SetTest;

/**
 * How the set tests of a cook stand.
 *
 * @param tests all that were made, oldest first; the last one may still go on
 * @param aim what the cook is measured against by now: the settings, re-aimed by what was learnt
 * @param nextRiseC how far above the water boil to test next, in °C
 * @param nextInS seconds until then, by the forecast; 0 when it is now, empty when that is not known
 * @param goesBack whether it was found not set and is not back at the boil since
 */
public record SetTestsNow(
        List<SetTest> tests, CookSettings aim, double nextRiseC, OptionalDouble nextInS, boolean goesBack) {
    /** The test that goes on. */
    public Optional<SetTest> open() {
        return last().filter(test -> test.seen().isEmpty());
    }

    /** The latest test. */
    public Optional<SetTest> last() {
        return tests.isEmpty() ? Optional.empty() : Optional.of(tests.get(tests.size() - 1));
    }

    /** Whether the preserve was found set: the boil has ended. */
    public boolean set() {
        return last().filter(SetTest::set).isPresent();
    }
}
