package spoonfall.log.store.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteErrorCode;

/**
 * Reads what can be read of a damaged file: each table from its beginning up to the damage, and from its end back to it.
 * Works on a copy, so that the file itself stays as it was found.
 */
final class Salvage {
    private static final Logger LOG = LoggerFactory.getLogger(Salvage.class);

    /**
     * A table.
     *
     * @param name what it is called
     * @param parent the table to whose rows its own belong by their first column; empty if they stand alone
     * @param columns those that are saved
     * @param order those that order it
     */
    private record Table(String name, String parent, List<String> columns, List<String> order) {}

    private static final List<Table> TABLES = List.of(
            new Table(
                    "cook",
                    "",
                    List.of(
                            "id",
                            "key",
                            "pan",
                            "number",
                            "started_ms",
                            "header",
                            "alive_ms",
                            "alive_wall_ms",
                            "alive_boot",
                            "alive_uptime_ms",
                            "ended_ms",
                            "thinned"),
                    List.of("id")),
            new Table("chunk", "cook", List.of("cook", "first", "count", "readings"), List.of("cook", "first")),
            new Table(
                    "word", "cook", List.of("cook", "n", "after", "taken_ms", "kind", "detail"), List.of("cook", "n")),
            new Table("event", "cook", List.of("cook", "n", "at_ms", "kind", "detail"), List.of("cook", "n")),
            new Table("note", "cook", List.of("cook", "key", "at_ms", "wall_ms", "text"), List.of("cook", "key")),
            new Table("made", "cook", List.of("cook", "fruit", "jars"), List.of("cook")),
            new Table(
                    "outcome",
                    "cook",
                    List.of("cook", "after", "firmness", "taste", "words", "wall_ms"),
                    List.of("cook", "after")),
            new Table(
                    "photo",
                    "cook",
                    List.of("cook", "digest", "wall_ms", "width", "height", "jpeg"),
                    List.of("cook", "digest")),
            new Table(
                    "diary",
                    "",
                    List.of(
                            "id",
                            "key",
                            "subject",
                            "header",
                            "alive_ms",
                            "alive_wall_ms",
                            "alive_boot",
                            "alive_uptime_ms"),
                    List.of("id")),
            new Table("diary_line", "diary", List.of("diary", "n", "at_ms", "kind", "detail"), List.of("diary", "n")),
            new Table("upkeep", "", List.of("id", "wall_ms", "kind", "detail"), List.of("id")));

    private static final int PRIMARY = 0xFF;
    private static final int FULL_DISK = SQLiteErrorCode.SQLITE_FULL.code;
    private static final Set<Integer> NO_ROW = Set.of(
            SQLiteErrorCode.SQLITE_CONSTRAINT.code,
            SQLiteErrorCode.SQLITE_MISMATCH.code,
            SQLiteErrorCode.SQLITE_TOOBIG.code);

    private Salvage() {}

    /**
     * What was saved.
     *
     * @param cooks how many cooks
     * @param parts how many chunks of readings, words, events and others
     */
    record Saved(int cooks, int parts) {}

    /**
     * Copies what can be read of {@code damaged} into a fresh file.
     *
     * @throws SQLException if the fresh file cannot be written
     */
    static Saved into(Database fresh, Path damaged) throws SQLException {
        Path copy = damaged.resolveSibling(damaged.getFileName() + ".reading");
        Path wal = damaged.resolveSibling(damaged.getFileName() + "-wal");
        try {
            Files.copy(damaged, copy, StandardCopyOption.REPLACE_EXISTING);
            if (Files.exists(wal)) {
                Files.copy(wal, copy.resolveSibling(copy.getFileName() + "-wal"), StandardCopyOption.REPLACE_EXISTING);
            }
            SQLiteDataSource source = new SQLiteDataSource();
            source.setUrl("jdbc:sqlite:" + copy);
            try (Connection from = source.getConnection()) {
                return save(from, fresh);
            }
        } catch (CannotSave e) {
            throw e;
        } catch (SQLException | IOException e) {
            if (cannotWrite(e) || noRoom(damaged)) {
                throw new CannotSave(e);
            }
            LOG.warn("nothing could be read of {}: {}", damaged, e.getMessage());
            return new Saved(0, 0);
        } finally {
            for (String part : List.of("", "-wal", "-shm", "-journal")) {
                delete(copy.resolveSibling(copy.getFileName() + part));
            }
        }
    }

    /** The fresh file does not take it: nothing is said of the damaged one by that, so that it must not be given up. */
    private static final class CannotSave extends SQLException {
        private static final long serialVersionUID = 1L;

        CannotSave(Exception cause) {
            super(cause.getMessage(), "", cause instanceof SQLException sql ? sql.getErrorCode() : FULL_DISK, cause);
        }
    }

    /** Whether a copy does not fit beside the damaged file. */
    private static boolean noRoom(Path damaged) {
        try {
            return Files.getFileStore(damaged).getUsableSpace() < 2 * Files.size(damaged);
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean cannotWrite(Exception e) {
        Fault fault = Fault.of(e);
        return fault == Fault.FULL || fault == Fault.NOT_WRITABLE;
    }

    private static Saved save(Connection from, Database fresh) throws SQLException {
        return fresh.handle().inTransaction(into -> {
            Connection to = into.getConnection();
            int cooks = 0;
            int parts = 0;
            for (Table table : TABLES) {
                int saved = copy(from, to, table, false) + copy(from, to, table, true);
                cooks += table.name().equals("cook") ? saved : 0;
                parts += table.name().equals("cook") ? 0 : saved;
            }
            return new Saved(cooks, parts);
        });
    }

    /** Copies rows until the damage stops it; those that are there already do not count. */
    private static int copy(Connection from, Connection to, Table table, boolean backwards) throws SQLException {
        String columns = String.join(", ", table.columns());
        String order = String.join(backwards ? " DESC, " : ", ", table.order()) + (backwards ? " DESC" : "");
        String marks = String.join(", ", Collections.nCopies(table.columns().size(), "?"));
        boolean part = !table.parent().isEmpty();
        String insert = "INSERT OR IGNORE INTO " + table.name() + " (" + columns + ") SELECT " + marks
                + (part ? " WHERE EXISTS (SELECT 1 FROM " + table.parent() + " WHERE id = ?)" : "");
        int saved = 0;
        try (PreparedStatement write = to.prepareStatement(insert);
                Statement read = from.createStatement();
                ResultSet rows = read.executeQuery(
                        "SELECT " + columns + " FROM " + table.name() + " NOT INDEXED ORDER BY " + order)) {
            while (rows.next()) {
                for (int i = 1; i <= table.columns().size(); i++) {
                    write.setObject(i, rows.getObject(i));
                }
                if (part) {
                    write.setObject(table.columns().size() + 1, rows.getObject(1));
                }
                saved += written(write);
            }
        } catch (CannotSave e) {
            throw e;
        } catch (SQLException e) {
            if (cannotWrite(e)) {
                throw new CannotSave(e);
            }
            LOG.debug("{} is damaged: {}", table.name(), e.getMessage());
        }
        return saved;
    }

    /** Writes a row; one that damage has made into none is left out. */
    private static int written(PreparedStatement write) throws CannotSave {
        try {
            return write.executeUpdate();
        } catch (SQLException e) {
            if (NO_ROW.contains(e.getErrorCode() & PRIMARY)) {
                LOG.debug("a row is damaged: {}", e.getMessage());
                return 0;
            }
            throw new CannotSave(e);
        }
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            LOG.debug("{} stays: {}", file, e.getMessage());
        }
    }
}
