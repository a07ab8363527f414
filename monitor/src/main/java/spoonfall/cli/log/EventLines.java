package spoonfall.cli.log;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spoonfall.alarm.AlarmChange;
import spoonfall.cook.CookEvent;
import spoonfall.cook.Stage;
import spoonfall.log.CookNote;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.words.Plain;

/** The events of a cook as lines for people. */
public final class EventLines {
    private static final DateTimeFormatter WRITTEN =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT).withZone(ZoneId.systemDefault());

    private final PrintWriter out;

    /** Lines that are printed there. */
    public EventLines(PrintWriter out) {
        this.out = out;
    }

    /** Prints an event, if it is one for people. */
    public void print(CookEvent event) {
        if (event instanceof CookEvent.StageEntered entered) {
            line(event.t(), Stage.words(entered.stage().wireName()));
        } else if (event instanceof CookEvent.Reminded reminded) {
            line(event.t(), reminded.reminder().wireName() + ": " + Plain.text(reminded.text()));
        } else if (event instanceof CookEvent.TestChanged changed) {
            String seen = changed.test()
                    .seen()
                    .map(it -> ": " + it.answer().wireName().replace('-', ' '))
                    .orElse("");
            line(event.t(), "set test " + changed.change().wireName() + seen);
        } else if (event instanceof CookEvent.AlarmChanged changed) {
            boolean raised = changed.change() == AlarmChange.RAISED;
            String name = changed.alarm().name().wireName();
            line(
                    event.t(),
                    raised
                            ? name + ": " + Plain.text(changed.alarm().text())
                            : name + " " + changed.change().wireName());
        }
    }

    /** What the record kept of a cook: what came of it and what somebody wrote, in order. */
    static void print(StoredCook cook, PrintWriter out) {
        List<CookNote> notes = new ArrayList<>(cook.notes());
        for (StoredCook.Event event : cook.events()) {
            while (!notes.isEmpty() && notes.get(0).atMillis() < event.atMillis()) {
                print(notes.remove(0), cook, out);
            }
            out.printf(Locale.ROOT, "%8s  %s%n", Plain.clock(event.atMillis() / 1000.0), kept(event));
        }
        notes.forEach(note -> print(note, cook, out));
    }

    private static void print(CookNote note, StoredCook cook, PrintWriter out) {
        boolean after = note.atMillis() > cook.endedMillis().orElse(cook.aliveMillis());
        String when = after ? WRITTEN.format(note.writtenAt()) : Plain.clock(note.atMillis() / 1000.0);
        out.printf(Locale.ROOT, "%8s  note: %s%n", when, note.text());
    }

    /** An event that the record kept, in one line. */
    private static String kept(StoredCook.Event event) {
        ObjectNode detail = event.detail();
        String text = Plain.text(detail.path("text").asText());
        return switch (event.kind()) {
            case "alarm" -> {
                String change = detail.path("change").asText();
                String name = detail.path("alarm").asText();
                yield change.equals("raised") ? name + ": " + text : name + " " + change;
            }
            case "stage" -> Stage.words(detail.path("stage").asText());
            case "reminder" -> detail.path("reminder").asText() + ": " + text;
            case "set-test" ->
                "set test " + detail.path("change").asText() + " "
                        + detail.path("answer").asText().replace('-', ' ');
            case "came-back" ->
                "Spoonfall was away for " + Plain.clock(detail.path("forS").asDouble()) + " until then";
            default -> event.kind() + " " + detail;
        };
    }

    private void line(double t, String text) {
        out.printf(Locale.ROOT, "%8s  %s%n", Plain.clock(t), text);
    }
}
