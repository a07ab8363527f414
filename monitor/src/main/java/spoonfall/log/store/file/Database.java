package spoonfall.log.store.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.UnaryOperator;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** One SQLite file with the tables of this version, open. */
public final class Database implements AutoCloseable {
    /** The version of the tables that this program knows. */
    public static final int VERSION = 3;

    private static final int BUSY_MILLIS = 5000;

    private final Connection connection;
    private final Handle handle;

    private Database(Connection connection, Handle handle) {
        this.connection = connection;
        this.handle = handle;
    }

    /**
     * Opens a file, making it and its folder if they are not there, and brings its tables up to this version.
     *
     * @throws SQLException if that cannot be done; its code says why
     * @throws NewerException if a newer program made the tables
     */
    public static Database open(Path file) throws SQLException {
        return open(file, connection -> connection);
    }

    /** The same, with something between the program and the file, so that a disk can be made to fail. */
    static Database open(Path file, UnaryOperator<Connection> between) throws SQLException {
        NativeSqlite.prepare();
        makeFolder(file);
        SQLiteDataSource source = source(file);
        Connection connection = between.apply(source.getConnection());
        try {
            Handle handle = Jdbi.create(connection).open();
            int version = version(handle);
            if (version > VERSION) {
                throw new NewerException(file + " was written by a newer Spoonfall; use that one, or give --data");
            }
            if (version < VERSION) {
                Flyway.configure()
                        .dataSource(source)
                        .locations("classpath:db/cooks")
                        .loggers("slf4j")
                        .load()
                        .migrate();
            }
            return new Database(connection, handle);
        } catch (RuntimeException | SQLException e) {
            connection.close();
            throw e;
        }
    }

    private static SQLiteDataSource source(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(BUSY_MILLIS);
        config.enforceForeignKeys(true);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    /** Asking Flyway takes a third of a second, so it is asked only when there is something to do. */
    private static int version(Handle handle) throws SQLException {
        boolean tables = handle.createQuery(
                                "SELECT count(*) FROM sqlite_master WHERE type = 'table' AND name = 'flyway_schema_history'")
                        .mapTo(Integer.class)
                        .one()
                > 0;
        if (!tables) {
            return 0;
        }
        return handle.createQuery("SELECT coalesce(max(CAST(version AS INTEGER)), 0) FROM flyway_schema_history WHERE"
                        + " success = 1")
                .mapTo(Integer.class)
                .one();
    }

    /** Makes the folder of a file, for this user alone, if it is not there. */
    public static void makeFolder(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || Files.isDirectory(folder)) {
            return;
        }
        try {
            Files.createDirectories(
                    folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        } catch (IOException e) {
            throw new UncheckedIOException(folder + " cannot be made: " + e.getMessage(), e);
        }
    }

    /** What asks it. */
    public Handle handle() {
        return handle;
    }

    /** What is wrong with the file as a whole; {@code ok} if nothing is. */
    String check() {
        return handle.createQuery("PRAGMA quick_check(1)").mapTo(String.class).one();
    }

    @Override
    public void close() {
        handle.close();
        try {
            connection.close(); // the handle leaves that to whoever opened it
        } catch (SQLException e) {
            throw new IllegalStateException("the file could not be closed", e);
        }
    }

    /** The tables were made by a newer program. */
    static final class NewerException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NewerException(String message) {
            super(message);
        }
    }
}
