package spoonfall.kitchen.file;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** Reads the table {@code [network]} of a kitchen file. */
record NetworkTable(KitchenToml keys) {
    private static final List<String> KEYS = List.of("lan", "port", "names", "plain", "certificate", "key");
    private static final int LAST_PORT = 65535;

    /** What it says; empty if it is not there. */
    Optional<NetworkEntry> entry() {
        Object value = keys.toml().get("network");
        if (value == null) {
            return Optional.empty();
        }
        if (!(value instanceof TomlTable table)) {
            throw keys.complaint(keys.toml(), "network", "must be a table of its own, headed [network]");
        }
        keys.refuseUnknown(table, KEYS);
        NetworkEntry entry = new NetworkEntry(
                flag(table, "lan"),
                port(table),
                names(table),
                flag(table, "plain"),
                path(table, "certificate"),
                path(table, "key"));
        if (entry.certificate().isPresent() != entry.key().isPresent()) {
            String lonely = entry.key().isPresent() ? "key" : "certificate";
            throw keys.complaint(table, lonely, "certificate and key belong together; give both");
        }
        if (entry.plain() && entry.key().isPresent()) {
            throw keys.complaint(table, "plain", "give plain = true or a certificate, not both");
        }
        return Optional.of(entry);
    }

    private boolean flag(TomlTable table, String key) {
        Object value = table.get(key);
        if (value == null || value instanceof Boolean) {
            return Boolean.TRUE.equals(value);
        }
        throw keys.complaint(table, key, "must be true or false, without quotes");
    }

    private Optional<Integer> port(TomlTable table) {
        Object value = table.get("port");
        if (value == null) {
            return Optional.empty();
        }
        if (value instanceof Long port && port >= 0 && port <= LAST_PORT) {
            return Optional.of(port.intValue());
        }
        throw keys.complaint(table, "port", "must be a whole number from 0 to 65535, such as 8461");
    }

    private List<String> names(TomlTable table) {
        Object value = table.get("names");
        List<String> names = new ArrayList<>();
        if (value instanceof TomlArray array && array.toList().stream().allMatch(String.class::isInstance)) {
            array.toList().forEach(name -> names.add((String) name));
        } else if (value != null) {
            throw keys.complaint(table, "names", "must be a list of names, such as [\"kitchen.home\"]");
        }
        return names;
    }

    /** A file; a relative one is meant from the kitchen file's folder. */
    private Optional<Path> path(TomlTable table, String key) {
        try {
            return keys.text(table, key)
                    .map(text ->
                            keys.file().toAbsolutePath().resolveSibling(text).normalize());
        } catch (InvalidPathException e) {
            throw keys.complaint(table, key, "is no name of a file");
        }
    }
}
