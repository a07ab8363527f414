package spoonfall.log.store.file;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.sqlite.SQLiteErrorCode;

/**
 * A disk that fails now and then: between the recorder and SQLite, any statement or commit may end in an error of the kinds
 * that SQLite reports, before it was done or, as when a disk fails to say that it has synced, after.
 */
public final class FailingDisk {
    private static final List<SQLiteErrorCode> KINDS = List.of(
            SQLiteErrorCode.SQLITE_FULL,
            SQLiteErrorCode.SQLITE_IOERR,
            SQLiteErrorCode.SQLITE_IOERR_FSYNC,
            SQLiteErrorCode.SQLITE_IOERR_WRITE,
            SQLiteErrorCode.SQLITE_IOERR_SHORT_READ,
            SQLiteErrorCode.SQLITE_READONLY,
            SQLiteErrorCode.SQLITE_CANTOPEN,
            SQLiteErrorCode.SQLITE_BUSY,
            SQLiteErrorCode.SQLITE_CORRUPT);

    private final Random random;
    private final Map<String, Integer> failures = new TreeMap<>();
    private volatile double share;

    /** A disk that fails as often as it is told to, by that chance. */
    public FailingDisk(Random random) {
        this.random = random;
    }

    /** From now on that share of all calls fails. */
    public void fails(double ofAll) {
        share = ofAll;
    }

    /** How often it failed, by kind. */
    public synchronized Map<String, Integer> failures() {
        return new TreeMap<>(failures);
    }

    /** Opens the file of all cooks on it. */
    public Database open(Path file) throws SQLException {
        mayFail("open");
        return CookFile.open(file, this::failing);
    }

    private synchronized void mayFail(String what) throws SQLException {
        if (random.nextDouble() < share) {
            SQLiteErrorCode kind = KINDS.get(random.nextInt(KINDS.size()));
            failures.merge(kind.name() + " " + what, 1, Integer::sum);
            throw new SQLException("on purpose", "", kind.code);
        }
    }

    private Connection failing(Connection connection) {
        return (Connection) Proxy.newProxyInstance(
                FailingDisk.class.getClassLoader(), new Class<?>[] {Connection.class}, (proxy, method, arguments) -> {
                    boolean commits = method.getName().equals("commit");
                    if (commits) {
                        mayFail("before a commit");
                    }
                    Object made = call(connection, method, arguments);
                    if (commits) {
                        mayFail("after a commit");
                    }
                    return made instanceof PreparedStatement statement ? failing(statement) : made;
                });
    }

    private PreparedStatement failing(PreparedStatement statement) {
        return (PreparedStatement) Proxy.newProxyInstance(
                FailingDisk.class.getClassLoader(),
                new Class<?>[] {PreparedStatement.class, Statement.class},
                (proxy, method, arguments) -> {
                    if (method.getName().startsWith("execute")) {
                        mayFail("of a statement");
                    }
                    return call(statement, method, arguments);
                });
    }

    private static Object call(Object target, Method method, Object[] arguments) throws Throwable {
        try {
            return method.invoke(target, arguments);
        } catch (InvocationTargetException e) {
            throw e.getTargetException();
        }
    }
}
