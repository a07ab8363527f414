package spoonfall.announce;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import spoonfall.words.Saying;

/**
 * Decides when the sentence is worth saying aloud: when what to do changes, and when ten, five and two minutes are left. Minutes that
 * merely count down are not. The page's {@code spoken.js} decides alike.
 */
final class Newsworthy {
    private static final Pattern WHEN =
            Pattern.compile("in about (?:a|(\\d+)) minutes?|(?:in (\\d+) to|within) (\\d+) minutes"
                    + "|in (more) than \\d+ minutes|any moment now");
    private static final int[] WORTH_SAYING = {2, 5, 10};
    private static final int FAR = Integer.MAX_VALUE;

    private String heard = "";
    private int leftMinutes = FAR;

    /** Takes the newest sentence, and whether it ought to be said. */
    boolean isNews(Saying saying) {
        String matters = saying.act().isEmpty() ? saying.state() : saying.act();
        String what = WHEN.matcher(matters).replaceAll("…");
        int left = left(matters);
        boolean news = !what.equals(heard) || left < leftMinutes;
        leftMinutes = what.equals(heard) ? Math.min(left, leftMinutes) : left;
        heard = what;
        return news;
    }

    /** The least of the minutes worth saying that are not below those of the sentence; of a range its middle counts. */
    private static int left(String matters) {
        Matcher matcher = WHEN.matcher(matters);
        if (!matcher.find() || matcher.group(4) != null) {
            return FAR;
        }
        double minutes = matcher.group(3) == null
                ? digits(matcher.group(1), 1)
                : (digits(matcher.group(2), 0) + digits(matcher.group(3), 0)) / 2.0;
        for (int worth : WORTH_SAYING) {
            if (minutes <= worth) {
                return worth;
            }
        }
        return FAR;
    }

    private static int digits(@Nullable String group, int otherwise) {
        return group == null ? otherwise : Integer.parseInt(group);
    }
}
