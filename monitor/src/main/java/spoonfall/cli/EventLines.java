package spoonfall.cli;

import java.io.PrintWriter;
import spoonfall.alarm.AlarmChange;
import spoonfall.cook.CookEvent;
import spoonfall.words.Plain;

/** The events of a cook as lines for people. */
final class EventLines {
    private final PrintWriter out;

    EventLines(PrintWriter out) {
        this.out = out;
    }

    void print(CookEvent event) {
        if (event instanceof CookEvent.StageEntered entered) {
            line(event.t(), entered.stage().wireName().replace('-', ' '));
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

    private void line(double t, String text) {
        out.printf("%8s  %s%n", Plain.clock(t), text);
    }
}
