package spoonfall.lesson;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import spoonfall.cook.CookAlarm;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.words.Saying;

/** The moments of a cook, from what its record says happened. */
final class Moments {
    /** What is done later about an alarm is hardly done about it; common practice, no source. */
    private static final double ABOUT_IT_S = 15 * 60;

    /** A stage that begins so near to an alarm is what the alarm is about. */
    private static final long NEAR_MILLIS = 5000;

    private final List<StoredCook.Event> events;
    private final Map<String, CookAlarm> alarms;
    private final Function<Double, Optional<Saying>> sayingAt;

    /**
     * @param events what happened, in order
     * @param alarms the alarms by their ids as they are worded today
     * @param sayingAt what was said at a second of the cook
     */
    Moments(List<StoredCook.Event> events, Map<String, CookAlarm> alarms, Function<Double, Optional<Saying>> sayingAt) {
        this.events = events;
        this.alarms = alarms;
        this.sayingAt = sayingAt;
    }

    List<Moment> all() {
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < events.size() && moments.size() <= LessonMaker.MOST_MOMENTS; i++) {
            moment(i).ifPresent(moments::add);
        }
        return moments;
    }

    private Optional<Moment> moment(int i) {
        StoredCook.Event event = events.get(i);
        String change = event.detail().path("change").asText();
        return switch (event.kind()) {
            case "alarm" -> change.equals("raised") ? Optional.of(alarm(i, event)) : Optional.empty();
            case "stage" -> callsToo(event) ? Optional.empty() : Optional.of(stage(i, event));
            case "set-test" -> change.equals("begun") ? Optional.of(test(i, event)) : Optional.empty();
            default -> Optional.empty();
        };
    }

    private Moment alarm(int i, StoredCook.Event event) {
        ObjectNode detail = event.detail();
        String text = detail.path("text").asText();
        Optional<CookAlarm> same = Optional.ofNullable(
                        alarms.get(detail.path("id").asText()))
                .filter(alarm -> alarm.text().equals(text));
        return new Moment(
                t(event),
                Moment.Kind.ALARM,
                same.map(CookAlarm::title).orElse("Spoonfall called."),
                same.map(CookAlarm::act).orElse(text),
                answers(i, detail.path("id").asText()),
                Choice.atAlarm(detail.path("alarm").asText()));
    }

    private Moment stage(int i, StoredCook.Event event) {
        String stage = event.detail().path("stage").asText();
        List<Choice> choices = Choice.atStage(stage);
        return new Moment(
                t(event),
                Moment.Kind.STAGE,
                Told.stage(stage),
                said(event),
                choices.isEmpty() ? List.of() : answers(i, ""),
                choices);
    }

    private Moment test(int i, StoredCook.Event event) {
        List<String> done = new ArrayList<>();
        String id = event.detail().path("id").asText();
        for (StoredCook.Event later : after(i, Double.POSITIVE_INFINITY)) {
            if (later.kind().equals("set-test")
                    && later.detail().path("id").asText().equals(id)) {
                String change = later.detail().path("change").asText();
                if (change.equals("seen")) {
                    done.add(Told.seen(
                            t(later) - t(event), later.detail().path("answer").asText()));
                } else if (change.equals("undone")) {
                    done.add("It was taken back: there was no such test.");
                }
            }
        }
        return new Moment(
                t(event),
                Moment.Kind.TEST,
                "The pan came off the heat for a set test.",
                said(event),
                done.subList(Math.max(0, done.size() - 1), done.size()),
                List.of());
    }

    private boolean callsToo(StoredCook.Event stage) {
        return events.stream()
                .anyMatch(event -> event.kind().equals("alarm")
                        && event.detail().path("change").asText().equals("raised")
                        && Math.abs(event.atMillis() - stage.atMillis()) <= NEAR_MILLIS);
    }

    private String said(StoredCook.Event event) {
        return sayingAt.apply(t(event))
                .map(saying -> (saying.act() + " " + saying.note()).strip())
                .orElse("");
    }

    /** The first of each thing that was done within a quarter of an hour. */
    private List<String> answers(int i, String alarm) {
        List<String> done = new ArrayList<>();
        List<String> told = new ArrayList<>();
        for (StoredCook.Event later : after(i, ABOUT_IT_S)) {
            ObjectNode detail = later.detail();
            String change = detail.path("change").asText();
            boolean same = detail.path("id").asText().equals(alarm);
            String what = switch (later.kind()) {
                case "alarm" -> same ? change : "";
                case "set-test" -> change.equals("begun") ? "tested" : "";
                case "stage" -> detail.path("stage").asText().equals("off-the-heat") ? "off" : "";
                default -> "";
            };
            String words = Told.done(what, t(later) - t(events.get(i)));
            if (!words.isEmpty() && !told.contains(what)) {
                told.add(what);
                done.add(words);
            }
        }
        return done;
    }

    private List<StoredCook.Event> after(int i, double withinS) {
        return events.subList(i + 1, events.size()).stream()
                .takeWhile(later -> t(later) - t(events.get(i)) <= withinS)
                .toList();
    }

    private static double t(StoredCook.Event event) {
        return event.atMillis() / 1000.0;
    }
}
