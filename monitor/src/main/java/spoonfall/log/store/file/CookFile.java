package spoonfall.log.store.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Opens the file of all cooks. One that is damaged is set aside, never deleted, and what can be read of it is saved. */
public final class CookFile {
    private static final Logger LOG = LoggerFactory.getLogger(CookFile.class);
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss").withZone(ZoneOffset.UTC);
    private static final List<String> ENDINGS = List.of("", "-wal", "-shm");

    private CookFile() {}

    /**
     * Opens it, making it if it is not there.
     *
     * @throws SQLException if that cannot be done, for another reason than damage
     */
    public static Database open(Path file) throws SQLException {
        return open(file, connection -> connection);
    }

    /** The same, with something between the program and the file, so that a disk can be made to fail. */
    static Database open(Path file, UnaryOperator<Connection> between) throws SQLException {
        boolean there = Files.exists(file);
        try {
            Database database = Database.open(file, between);
            if (!there || sound(database, file)) {
                return database;
            }
        } catch (SQLException | RuntimeException e) {
            if (Fault.of(e) != Fault.DAMAGED) {
                throw e;
            }
        }
        return replace(file, between);
    }

    private static boolean sound(Database database, Path file) {
        String verdict = "";
        try {
            verdict = database.check();
        } finally {
            if (!verdict.equals("ok")) {
                LOG.debug("{}: {}", file, verdict);
                database.close();
            }
        }
        return verdict.equals("ok");
    }

    private static Database replace(Path file, UnaryOperator<Connection> between) throws SQLException {
        Path aside = setAside(file);
        Salvage.Saved saved;
        Database fresh;
        try {
            fresh = Database.open(file, between);
        } catch (SQLException | RuntimeException e) {
            putBack(aside, file);
            throw e;
        }
        try {
            saved = Salvage.into(fresh, aside);
        } catch (SQLException | RuntimeException e) {
            fresh.close();
            putBack(aside, file);
            throw e;
        }
        LOG.warn(
                "{} was damaged. It was set aside as {}; {} cooks with {} of their parts were read from it and saved.",
                file,
                aside.getFileName(),
                saved.cooks(),
                saved.parts());
        return fresh;
    }

    /** What it holds cannot be saved now; it is tried again. */
    private static void putBack(Path aside, Path file) {
        try {
            for (String part : ENDINGS) {
                Files.deleteIfExists(file.resolveSibling(file.getFileName() + part));
                Path from = aside.resolveSibling(aside.getFileName() + part);
                if (Files.exists(from)) {
                    Files.move(from, file.resolveSibling(file.getFileName() + part));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(aside + " cannot be put back: " + e.getMessage(), e);
        }
    }

    private static Path setAside(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot < 0 ? name : name.substring(0, dot);
        String ending = dot < 0 ? "" : name.substring(dot);
        String stamp = STAMP.format(Instant.now());
        Path aside = file.resolveSibling(stem + "-damaged-" + stamp + ending);
        for (int i = 2; Files.exists(aside); i++) {
            aside = file.resolveSibling(stem + "-damaged-" + stamp + "-" + i + ending);
        }
        try {
            for (String part : ENDINGS) {
                Path from = file.resolveSibling(name + part);
                if (Files.exists(from)) {
                    Files.move(from, aside.resolveSibling(aside.getFileName() + part));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(file + " is damaged and cannot be set aside: " + e.getMessage(), e);
        }
        return aside;
    }
}
