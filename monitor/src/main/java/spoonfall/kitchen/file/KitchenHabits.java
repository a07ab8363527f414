package spoonfall.kitchen.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import spoonfall.log.Keep;
import spoonfall.log.KeepRules;

/**
 * What a kitchen file says of how a kitchen does things.
 *
 * @param notes the file of its batch notes
 * @param announce the program that says calls aloud, with its arguments
 * @param announceUnit in which unit it says temperatures, C or F
 * @param keep what is kept of old cooks
 */
public record KitchenHabits(
        Optional<Path> notes, Optional<String> announce, Optional<String> announceUnit, KeepRules keep) {
    static final KitchenHabits USUAL =
            new KitchenHabits(Optional.empty(), Optional.empty(), Optional.empty(), KeepRules.EVERYTHING);

    static final List<String> KEYS = List.of("notes", "announce", "announce-unit", "keep", "thin");

    /** Reads them; notes lie beside the kitchen file unless they say otherwise. */
    static KitchenHabits of(KitchenToml keys) {
        Optional<String> unit = keys.text(keys.toml(), "announce-unit");
        if (unit.filter(one -> !one.equals("C") && !one.equals("F")).isPresent()) {
            throw keys.complaint(keys.toml(), "announce-unit", "must be \"C\" or \"F\"");
        }
        if (unit.isPresent() && !keys.toml().contains("announce")) {
            throw keys.complaint(keys.toml(), "announce-unit", "needs announce too, such as announce = \"espeak-ng\"");
        }
        return new KitchenHabits(
                keys.text(keys.toml(), "notes").map(name -> keys.file().resolveSibling(name)),
                keys.text(keys.toml(), "announce"),
                unit,
                new KeepRules(keep(keys, "thin"), keep(keys, "keep")));
    }

    private static Keep keep(KitchenToml keys, String key) {
        Optional<String> said = keys.text(keys.toml(), key);
        try {
            return said.map(Keep::parse).orElse(Keep.EVERYTHING);
        } catch (IllegalArgumentException e) {
            throw keys.complaint(keys.toml(), key, e.getMessage());
        }
    }
}
