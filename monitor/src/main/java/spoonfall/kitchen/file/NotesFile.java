package spoonfall.kitchen.file;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import spoonfall.afternoon.BatchNotes;
import spoonfall.afternoon.Preparation;
import spoonfall.afternoon.Step;
import spoonfall.afternoon.UsualAfternoon;
import spoonfall.units.Spelling;

/**
 * Batch notes as a file: TOML that says how this batch differs from a usual afternoon. A table {@code [steps.ID]} changes, adds
 * or leaves out a step, and {@code [prepare.ID]} a preparation; everything in them is optional, nothing else is allowed but
 * what {@link PlanFile} reads.
 */
public final class NotesFile {
    private static final List<String> KEYS = List.of("steps", "prepare", "ingredient", "plan");
    private static final List<String> STEP_KEYS = List.of("name", "minutes", "after", "leave-out");
    private static final List<String> PREPARE_KEYS = List.of("name", "minutes", "before", "leave-out");

    private final Path file;

    private NotesFile(Path file) {
        this.file = file;
    }

    /**
     * Reads batch notes.
     *
     * @throws IllegalArgumentException with one line naming file, line and key, and the way out
     */
    public static BatchNotes read(Path file) {
        return new NotesFile(file)
                .notes(KitchenToml.read(file, "there are no batch notes", "batch notes never are")
                        .toml());
    }

    /**
     * Batch notes out of the text of such a file.
     *
     * @throws IllegalArgumentException if it is none
     */
    public static BatchNotes parse(String text) {
        Path file = Path.of("notes");
        return new NotesFile(file).notes(TomlText.keys(text, (at, what) -> KitchenToml.complaint(file, at, what)));
    }

    private BatchNotes notes(TomlTable toml) {
        refuseUnknown(toml, KEYS);
        BatchNotes notes = UsualAfternoon.notes();
        TomlTable steps = table(toml, "steps");
        for (String id : byLine(steps)) {
            notes = step(notes, id, table(steps, id), steps.inputPositionOf(List.of(id)));
        }
        TomlTable preparations = table(toml, "prepare");
        for (String id : byLine(preparations)) {
            notes = preparation(notes, id, table(preparations, id), preparations.inputPositionOf(List.of(id)));
        }
        return notes;
    }

    private BatchNotes step(BatchNotes notes, String id, TomlTable said, @Nullable TomlPosition at) {
        refuseUnknown(said, STEP_KEYS);
        boolean known = notes.step(id).isPresent();
        try {
            if (leftOut(said)) {
                return notes.without(id);
            }
            if (known && said.contains("after")) {
                throw complaint(
                        said.inputPositionOf(List.of("after")), "after: only a step of your own can be put somewhere");
            }
            if (known) {
                return notes.changed(id, text(said, "name"), minutes(said));
            }
            String name = needed(text(said, "name"), at, id, "name = \"Skim\"");
            int minutes = needed(minutes(said), at, id, "minutes = 5");
            return notes.with(Step.own(id, name, minutes), needed(text(said, "after"), at, id, "after = \"off\""));
        } catch (IllegalArgumentException e) {
            throw complaint(at, e);
        }
    }

    private BatchNotes preparation(BatchNotes notes, String id, TomlTable said, @Nullable TomlPosition at) {
        refuseUnknown(said, PREPARE_KEYS);
        boolean known = notes.preparation(id).isPresent();
        try {
            if (leftOut(said)) {
                return notes.without(id);
            }
            if (known && said.contains("before")) {
                throw complaint(
                        said.inputPositionOf(List.of("before")),
                        "before: only a preparation of your own can be put somewhere");
            }
            if (known) {
                return notes.changed(id, text(said, "name"), minutes(said));
            }
            String name = needed(text(said, "name"), at, id, "name = \"Write the labels\"");
            int minutes = needed(minutes(said), at, id, "minutes = 20");
            String before = needed(text(said, "before"), at, id, "before = \"fill\"");
            return notes.with(Preparation.own(id, name, minutes, before));
        } catch (IllegalArgumentException e) {
            throw complaint(at, e);
        }
    }

    private static List<String> byLine(TomlTable table) {
        return table.keySet().stream()
                .sorted(Comparator.comparingInt(id -> {
                    TomlPosition at = table.inputPositionOf(List.of(id));
                    return at == null ? 0 : at.line();
                }))
                .toList();
    }

    private TomlTable table(TomlTable in, String key) {
        Object value = in.get(List.of(key));
        if (value == null) {
            return Toml.parse("");
        }
        if (value instanceof TomlTable table) {
            return table;
        }
        String example = key.equals("steps") || key.equals("prepare") ? "[" + key + ".ID]" : "[steps." + key + "]";
        throw complaint(in.inputPositionOf(List.of(key)), key + ": must be a table of its own, headed " + example);
    }

    private boolean leftOut(TomlTable said) {
        Object value = said.get("leave-out");
        if (value == null || value instanceof Boolean) {
            return Boolean.TRUE.equals(value);
        }
        throw complaint(said.inputPositionOf("leave-out"), "leave-out: must be true or false");
    }

    private Optional<String> text(TomlTable said, String key) {
        Object value = said.get(key);
        if (value == null || value instanceof String) {
            return Optional.ofNullable((String) value).map(String::strip);
        }
        throw complaint(said.inputPositionOf(key), key + ": must be a text in quotes");
    }

    private Optional<Integer> minutes(TomlTable said) {
        Object value = said.get("minutes");
        if (value == null) {
            return Optional.empty();
        }
        if (value instanceof Long minutes && minutes == minutes.intValue()) {
            return Optional.of(minutes.intValue());
        }
        throw complaint(said.inputPositionOf("minutes"), "minutes: must be a whole number, such as 20");
    }

    private <T> T needed(Optional<T> value, @Nullable TomlPosition at, String id, String example) {
        return value.orElseThrow(() -> complaint(
                at,
                id + ": is not one of the usual afternoon; one of your own needs " + example.split(" ", 2)[0]
                        + ", such as " + example));
    }

    private void refuseUnknown(TomlTable table, List<String> known) {
        for (String key : table.keySet()) {
            if (!known.contains(key)) {
                String hint = known.stream()
                        .filter(one -> Spelling.distance(key, one) <= 2)
                        .findFirst()
                        .map(one -> "did you mean " + one + "?")
                        .orElse("it can be " + String.join(", ", known));
                throw complaint(table.inputPositionOf(List.of(key)), key + ": is not a key of batch notes; " + hint);
            }
        }
    }

    /** What is wrong by the notes themselves, or a complaint that already says where. */
    private IllegalArgumentException complaint(@Nullable TomlPosition at, IllegalArgumentException wrong) {
        String message = String.valueOf(wrong.getMessage());
        return message.startsWith(file.toString()) ? wrong : complaint(at, message);
    }

    private IllegalArgumentException complaint(@Nullable TomlPosition at, String what) {
        return KitchenToml.complaint(file, at, what);
    }
}
