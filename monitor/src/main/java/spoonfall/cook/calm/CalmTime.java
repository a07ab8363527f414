package spoonfall.cook.calm;

import java.util.Optional;

/**
 * A moment ahead that stays put while the forecast of it merely wobbles, so that the minutes shown count
 * down by the clock and jump only when the news does.
 */
public final class CalmTime {
    private static final double LEAST_NEWS_S = 45;
    private static final double NEWS_SHARE = 0.12;
    private static final double LAST_WORD_S = 120;

    /** What is less than this part of the interval off is no news. */
    private static final double DOUBT_SHARE = 0.25;

    private static final double LEAST_EDGE_S = 60;

    /** News is believed when it stays for so long: much of the first is taken back. */
    private static final double NEWS_STAYS_S = 15;

    /**
     * A moment to show, in the seconds of whoever asks.
     *
     * @param t its middle estimate
     * @param fromT early end of the interval
     * @param untilT late end of it
     * @param howLong how long until then
     */
    public record Shown(double t, double fromT, double untilT, HowLong howLong) {
        Shown later(double s) {
            return new Shown(t + s, fromT + s, untilT + s, howLong);
        }
    }

    private record Spot(double t, double fromT, double untilT) {}

    private final CalmMinutes minutes = new CalmMinutes();
    private final Stays moved = new Stays(NEWS_STAYS_S);
    private Optional<Spot> shown = Optional.empty();

    /** Takes the newest forecast, {@code etaS} seconds after {@code t} and within an interval, and returns what to show. */
    public Shown settle(double t, double etaS, double lowS, double highS) {
        Spot news = new Spot(t + etaS, t + lowS, t + highS);
        Spot calm = shown.map(old -> calmed(t, old, news, etaS)).orElse(news);
        shown = Optional.of(calm);
        HowLong howLong = minutes.tell(t, calm.t() - t, calm.fromT() - t, calm.untilT() - t);
        return new Shown(calm.t(), calm.fromT(), calm.untilT(), howLong);
    }

    private Spot calmed(double t, Spot old, Spot news, double etaS) {
        double doubtS = DOUBT_SHARE * (news.untilT() - news.fromT());
        double newsS =
                etaS < LAST_WORD_S ? LEAST_NEWS_S / 3 : Math.max(Math.max(LEAST_NEWS_S, NEWS_SHARE * etaS), doubtS);
        double edgeS = Math.max(LEAST_EDGE_S, doubtS);
        boolean same = near(news.fromT(), old.fromT(), edgeS) && near(news.untilT(), old.untilT(), edgeS);
        boolean moves = moved.at(t, !near(news.t(), old.t(), newsS));
        if (moves) {
            moved.forget();
        }
        double middleT = moves ? news.t() : old.t();
        Spot edges = same ? old : news;
        return new Spot(middleT, Math.min(edges.fromT(), middleT), Math.max(edges.untilT(), middleT));
    }

    private static boolean near(double one, double other, double withinS) {
        return Math.abs(one - other) < withinS;
    }

    /** There is no forecast now. */
    public void forget() {
        shown = Optional.empty();
        moved.forget();
        minutes.forget();
    }
}
