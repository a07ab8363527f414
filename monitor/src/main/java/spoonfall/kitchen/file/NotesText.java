package spoonfall.kitchen.file;

import java.util.List;
import spoonfall.afternoon.BatchNotes;
import spoonfall.afternoon.Preparation;
import spoonfall.afternoon.Step;
import spoonfall.afternoon.UsualAfternoon;

/** Batch notes as the text of a file that {@link NotesFile} reads to the same notes. */
public final class NotesText {
    private NotesText() {}

    /** The notes as TOML. */
    public static String of(BatchNotes notes) {
        BatchNotes usual = UsualAfternoon.notes();
        StringBuilder toml = new StringBuilder("# How this batch goes; see \"The afternoon\" in the user guide.\n");
        for (Step step : usual.steps()) {
            if (notes.step(step.id()).isEmpty()) {
                toml.append("\n[steps.").append(step.id()).append("]\nleave-out = true\n");
            }
        }
        // One of the cook's own comes after a step that the file has by then: its neighbour, written above it.
        List<Step> steps = notes.steps();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            entry(toml, "steps", step.id(), step.name(), step.minutes());
            if (usual.step(step.id()).isEmpty() && i > 0) {
                toml.append("after = ").append(quoted(steps.get(i - 1).id())).append('\n');
            }
        }
        for (Preparation one : usual.preparations()) {
            boolean goneWithItsStep = notes.step(one.before()).isEmpty();
            if (notes.preparation(one.id()).isEmpty() && !goneWithItsStep) {
                toml.append("\n[prepare.").append(one.id()).append("]\nleave-out = true\n");
            }
        }
        for (Preparation one : notes.preparations()) {
            entry(toml, "prepare", one.id(), one.name(), one.minutes());
            if (usual.preparation(one.id()).isEmpty()) {
                toml.append("before = ").append(quoted(one.before())).append('\n');
            }
        }
        return toml.toString();
    }

    private static void entry(StringBuilder toml, String table, String id, String name, int minutes) {
        toml.append("\n[")
                .append(table)
                .append('.')
                .append(id)
                .append("]\nname = ")
                .append(quoted(name));
        toml.append("\nminutes = ").append(minutes).append('\n');
    }

    /** A basic string of TOML; control characters are none in notes. */
    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
