package spoonfall.learn;

import java.util.Locale;
import spoonfall.book.Firmness;

/**
 * How likely each outcome is; together 1.
 *
 * @param runny the chance of a syrup
 * @param soft of a softer set than wanted
 * @param right of the wanted one
 * @param firm of a firmer one
 * @param stiff of one that must be cut
 */
public record Chances(double runny, double soft, double right, double firm, double stiff) {
    /** Validates that it is a distribution. */
    public Chances {
        double sum = runny + soft + right + firm + stiff;
        double least = Math.min(Math.min(Math.min(runny, soft), Math.min(right, firm)), stiff);
        if (!(least >= -1e-9 && Math.abs(sum - 1) < 1e-6)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "chances are 0 or more and together 1, not %.3f", sum));
        }
    }

    /** The chance of an outcome. */
    public double of(Firmness set) {
        return switch (set) {
            case RUNNY -> runny;
            case SOFT -> soft;
            case RIGHT -> right;
            case FIRM -> firm;
            case STIFF -> stiff;
        };
    }
}
