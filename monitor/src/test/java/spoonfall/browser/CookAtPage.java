package spoonfall.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;

/** A cook at a page, by fingers on a screen or by a keyboard and nothing else, and how often either went down. */
sealed interface CookAtPage {
    /** Does a button or follows a link. */
    void press(Locator control);

    /**
     * Chooses from a list.
     *
     * @param value the option's value
     * @param words how what it says begins, as far as no other option above it does
     */
    void choose(Locator list, String value, String words);

    /** How often a finger or a key went down so far. */
    int count();

    /** Fingers: a tap is one, and a choice from a list two. */
    final class ByFingers implements CookAtPage {
        private int taps;

        @Override
        public void press(Locator control) {
            taps++;
            control.tap();
        }

        @Override
        public void choose(Locator list, String value, String words) {
            taps += 2;
            list.selectOption(value);
        }

        @Override
        public int count() {
            return taps;
        }
    }

    /** Tab leads to a control and Space or Enter does it, in turn. */
    final class ByKeys implements CookAtPage {
        private static final int MOST_TABS = 60;
        private int presses;
        private boolean space;

        @Override
        public void press(Locator control) {
            tabTo(control);
            boolean link = "A".equals(control.evaluate("e => e.tagName"));
            space = !space && !link;
            key(control, space ? "Space" : "Enter");
        }

        @Override
        public void choose(Locator list, String value, String words) {
            tabTo(list);
            presses += words.length();
            list.page().keyboard().type(words);
            assertThat(list).hasValue(value);
        }

        private void tabTo(Locator control) {
            assertThat(control).isVisible();
            for (int tabs = 0; !isFocused(control); tabs++) {
                assertThat(tabs).as("tabs to %s", control).isLessThan(MOST_TABS);
                key(control, "Tab");
            }
        }

        private static boolean isFocused(Locator control) {
            return Boolean.TRUE.equals(control.evaluate("e => e === document.activeElement"));
        }

        private void key(Locator control, String key) {
            presses++;
            control.page().keyboard().press(key);
        }

        @Override
        public int count() {
            return presses;
        }
    }
}
