package spoonfall.cook.calm;

import java.util.Optional;

/**
 * Tells how long until one moment, again and again, no more precisely than it is known. The minutes stay while they hold: they
 * count down, and change besides only when the news does. The numbers are judged by how often what is said then changes, and how
 * often it is true.
 *
 * <p>Not safe for use by several threads.
 */
final class CalmMinutes {
    /** Doubt is told at once; that it is gone, when it clearly has been for so long. */
    private static final double FINER_AFTER_S = 120;

    /** It is clearly gone where there is no more than this part of what would do. */
    private static final double CLEARLY = 0.75;

    /** A minute more must be almost a whole one. */
    private static final double LATER_MINUTES = 0.9;

    private static final double FIVE_HOLDS_MINUTES = 3;
    private static final double NO_FIVE_S = 150;
    private static final double RANGE_HOLDS_S = 60;
    private static final double RANGE_LOOSE_S = 600;

    /** A range that ends later does so by tens. */
    private static final long FAR = 30;

    /** A range so wide, of which the end is so many times the beginning, tells only when it begins. */
    private static final long WIDE = 45;

    private static final long NO_LONGER_WIDE = 35;
    private static final long WIDE_TIMES = 4;

    private final Stays finer = new Stays(FINER_AFTER_S);
    private Optional<Grain> grain = Optional.empty();
    private Optional<HowLong> told = Optional.empty();
    private boolean tooWide;

    /** How long from {@code t}, when it is {@code s} seconds ahead within an interval; to be asked in order. */
    HowLong tell(double t, double s, double lowS, double highS) {
        HowLong now = switch (settle(t, s, highS - lowS)) {
            case MINUTE -> HowLong.about(minute(s));
            case FIVE -> HowLong.about(five(s));
            case RANGE -> range(s, lowS, highS);
        };
        told = Optional.of(now);
        tooWide =
                now.most() - now.least() >= (tooWide ? NO_LONGER_WIDE : WIDE) && now.most() >= WIDE_TIMES * now.least();
        return tooWide ? HowLong.moreThan(now.least()) : now;
    }

    /** Nothing is ahead now. */
    void forget() {
        grain = Optional.empty();
        finer.forget();
        told = Optional.empty();
        tooWide = false;
    }

    private Grain settle(double t, double s, double widthS) {
        Grain fits = Grain.of(s, widthS);
        Grain before = grain.orElse(fits);
        Grain clearly = Grain.of(s, widthS / CLEARLY);
        boolean stays = finer.at(t, clearly.compareTo(before) < 0);
        Grain wanted = fits.compareTo(before) > 0 ? fits : stays ? clearly : before;
        boolean numbers = wanted != Grain.RANGE && before != Grain.RANGE;
        if (wanted == before || (numbers && !isTheSame(wanted, s))) {
            grain = Optional.of(before);
            return before;
        }
        finer.forget();
        told = told.filter(number -> numbers);
        grain = Optional.of(wanted);
        return wanted;
    }

    /** A number is told more or less precisely from where that changes nothing, or brings it on by the clock: 12 is no 15, nor 10 a 12. */
    private boolean isTheSame(Grain wanted, double s) {
        long before = told.orElseThrow().least();
        return wanted == Grain.FIVE ? before % 5 == 0 : HowLong.minutes(s) <= before;
    }

    private long minute(double s) {
        long minutes = HowLong.minutes(s);
        return told.map(HowLong::least)
                .filter(before -> before > 0 && minutes == before + 1 && s / 60 < before + LATER_MINUTES)
                .orElse(minutes);
    }

    private long five(double s) {
        long fives = s < NO_FIVE_S ? HowLong.minutes(s) : 5 * Math.round(s / 300);
        return told.map(HowLong::least)
                .filter(before -> Math.abs(s / 60 - before) < FIVE_HOLDS_MINUTES)
                .orElse(fives);
    }

    /** An end stays while the interval neither passes it nor leaves it far behind, and the middle is between. */
    private HowLong range(double s, double lowS, double highS) {
        Optional<HowLong> holds = told.filter(before -> before.least() * 60 <= s && s <= before.most() * 60);
        long least = holds.map(HowLong::least)
                .filter(low -> lowS >= low * 60 - RANGE_HOLDS_S && lowS <= low * 60 + RANGE_LOOSE_S)
                .orElse(5 * (long) Math.floor(Math.max(0, lowS) / 300));
        long most = holds.map(HowLong::most)
                .filter(high -> highS <= high * 60 + RANGE_HOLDS_S && highS >= high * 60 - RANGE_LOOSE_S)
                .orElse(rounded(highS));
        return new HowLong(least, Math.max(most, least + 5));
    }

    private static long rounded(double s) {
        long minutes = 5 * Math.max(1, (long) Math.ceil(s / 300));
        return minutes > FAR ? 10 * ((minutes + 9) / 10) : minutes;
    }
}
