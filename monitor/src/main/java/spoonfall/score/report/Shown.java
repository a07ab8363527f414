package spoonfall.score.report;

import java.util.Locale;

/** Figures as people read them. */
final class Shown {
    private Shown() {}

    /** Seconds as minutes with two decimals; "none" for infinite, when a tenth or more of the forecasts were missing. */
    static String minutes(double seconds) {
        return Double.isNaN(seconds) ? "-" : Double.isInfinite(seconds) ? "none" : decimals(seconds / 60, 2);
    }

    /** Whole seconds; "never" for infinite. */
    static String seconds(double seconds) {
        return Double.isNaN(seconds) ? "-" : Double.isInfinite(seconds) ? "never" : decimals(seconds, 0);
    }

    static String percent(double share) {
        return Double.isNaN(share) ? "-" : decimals(100 * share, 0) + " %";
    }

    static String decimals(double value, int count) {
        return Double.isNaN(value) ? "-" : String.format(Locale.ROOT, "%." + count + "f", value);
    }

    /** Text that cannot be taken for markup. */
    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
