package spoonfall.kitchen.told;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoonfall.afternoon.Timeline;
import spoonfall.afternoon.Timeline.Moment;
import spoonfall.words.AfternoonSaying;

/**
 * An afternoon for the page.
 *
 * @param startedAt the wall clock at second 0 of the afternoon
 * @param timeline how it stands
 * @param saying what is said of it
 */
public record AfternoonView(Instant startedAt, Timeline timeline, AfternoonSaying saying) {
    private static final double NEWS_S = 30;

    /** Whether a page that shows {@code shown} would be wrong by now; what moves by seconds is no news. */
    public boolean isNewsAfter(AfternoonView shown) {
        Timeline old = shown.timeline();
        return !startedAt.equals(shown.startedAt)
                || !saying.equals(shown.saying)
                || !timeline.undo().equals(old.undo())
                || !stands(timeline).equals(stands(old))
                || moved(moments(timeline), moments(old));
    }

    private static List<Object> stands(Timeline timeline) {
        List<Object> stands = new ArrayList<>();
        timeline.steps()
                .forEach(line -> stands.add(List.of(
                        line.step(),
                        line.state(),
                        line.begunT(),
                        line.endedT(),
                        timeline.onlyThePanKnows(line),
                        timeline.isBeingDone(line),
                        line.beginsInMoreThan())));
        timeline.preparations().forEach(line -> stands.add(List.of(line.preparation(), line.state(), line.doneT())));
        return stands;
    }

    private static List<Optional<Moment>> moments(Timeline timeline) {
        List<Optional<Moment>> moments = new ArrayList<>();
        timeline.steps().forEach(line -> moments.add(line.begins().or(line::ends)));
        timeline.preparations().forEach(line -> moments.add(line.due()));
        return moments;
    }

    private static boolean moved(List<Optional<Moment>> one, List<Optional<Moment>> other) {
        for (int i = 0; i < one.size(); i++) {
            double to = one.get(i).map(Moment::t).orElse(0.0);
            double from = other.get(i).map(Moment::t).orElse(0.0);
            if (Math.abs(to - from) >= NEWS_S) {
                return true;
            }
        }
        return false;
    }
}
