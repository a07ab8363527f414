package spoonfall.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Stage;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.cook.calm.CalmTime;
import spoonfall.kitchen.again.CookAgain;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.words.Saying;

/** Makes a lesson of a cook that is over: what was seen and said comes of going through it again, what happened out of its record. */
public final class LessonMaker implements CookAgain.Witness {
    /** A lesson has at most so many frames. */
    public static final int MOST_FRAMES = 1200;

    /** A lesson has at most so many moments. */
    public static final int MOST_MOMENTS = 300;

    /** A lesson ends after so many seconds of the cook, if the cook did not before. */
    public static final int LONGEST_S = 24 * 3600;

    private static final int LEAST_EVERY_S = 5;

    /** No cook has so many events; what a damaged or foreign record has beyond them is left out. */
    private static final int MOST_EVENTS = 5000;

    /** Frames that times nobody watched may add to those that come at a steady pace. */
    private static final int SPARE_FRAMES = 50;

    private static final Saying NOBODY = new Saying("Nobody watched the pan just then.", "", "");

    private final int everyS;
    private final List<Frame> frames = new ArrayList<>();
    private final Map<Long, Saying> sayings = new HashMap<>();
    private final Map<String, CookAlarm> alarms = new HashMap<>();
    private Stage stage = Stage.WAITING;
    private int timesAway;

    private LessonMaker(double lastT) {
        everyS = Math.max(LEAST_EVERY_S, (int) Math.ceil(lastT / (MOST_FRAMES - SPARE_FRAMES - 1)));
    }

    /** The lesson of a cook. */
    public static Lesson of(StoredCook cook) {
        long lastMillis = Math.max(0, Math.min(cook.aliveMillis(), LONGEST_S * 1000L));
        LessonMaker maker = new LessonMaker(lastMillis / 1000.0);
        CookAgain.watch(cook.header(), cook.inputs(), lastMillis, maker);
        List<StoredCook.Event> events = cook.events().stream()
                .filter(event -> event.atMillis() >= 0 && event.atMillis() <= lastMillis)
                .limit(MOST_EVENTS)
                .toList();
        List<Moment> moments = new Moments(events, maker.alarms, maker::sayingAt).all();
        return new Lesson(
                maker.frames,
                moments.subList(0, Math.min(moments.size(), MOST_MOMENTS)),
                lastMillis / 1000.0,
                cook.aliveMillis() > lastMillis || moments.size() > MOST_MOMENTS);
    }

    @Override
    public void happened(CookEvent event) {
        if (event instanceof CookEvent.AlarmChanged changed) {
            alarms.putIfAbsent(changed.alarm().id(), changed.alarm());
        }
    }

    @Override
    public void saw(CookStatus status, Optional<CalmForecast.Shown> foretold, Saying saying) {
        long second = Math.round(status.t());
        sayings.put(second, saying);
        stage = status.stage();
        if (second % everyS == 0 && frames.size() < MOST_FRAMES) {
            Optional<CalmTime.Shown> sets = foretold.map(CalmForecast.Shown::gel);
            frames.add(new Frame(status.t(), status.temperatureC(), stage, saying, sets));
        }
    }

    @Override
    public void away(double fromT, double untilT) {
        if (untilT - fromT >= everyS && timesAway < SPARE_FRAMES && frames.size() < MOST_FRAMES) {
            timesAway++;
            frames.add(new Frame(fromT, OptionalDouble.empty(), stage, NOBODY, Optional.empty()));
        }
    }

    private Optional<Saying> sayingAt(double t) {
        return Optional.ofNullable(sayings.get((long) Math.ceil(t)));
    }
}
