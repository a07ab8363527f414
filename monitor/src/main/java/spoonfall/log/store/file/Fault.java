package spoonfall.log.store.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Set;
import org.sqlite.SQLiteErrorCode;
import spoonfall.cook.Unrecorded;

/** Why a file cannot be read or written, as far as that makes a difference. */
public enum Fault {
    /** No room is left. */
    FULL,
    /** The file or its folder may not be written. */
    NOT_WRITABLE,
    /** What is in the file cannot be. */
    DAMAGED,
    /** A newer program made the file. */
    NEWER,
    /** Another program holds it. */
    BUSY,
    /** The library that reads it could be put nowhere. */
    NO_LIBRARY,
    /** The disk fails in another way. */
    FAILED;

    private static final int PRIMARY = 0xFF;

    /** What SQLite says of values that it never takes. */
    private static final Set<Integer> REFUSED = Set.of(
            SQLiteErrorCode.SQLITE_CONSTRAINT.code,
            SQLiteErrorCode.SQLITE_MISMATCH.code,
            SQLiteErrorCode.SQLITE_TOOBIG.code,
            SQLiteErrorCode.SQLITE_RANGE.code);

    /** The fault behind an exception. */
    public static Fault of(Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql && sql.getErrorCode() != 0) {
                return of(sql.getErrorCode() & PRIMARY);
            }
            if (cause instanceof Database.NewerException) {
                return NEWER;
            }
            if (cause instanceof NativeSqlite.NotUnpackedException) {
                return NO_LIBRARY;
            }
            if (cause instanceof java.nio.file.AccessDeniedException
                    || cause instanceof java.nio.file.FileSystemException) {
                return NOT_WRITABLE;
            }
        }
        return FAILED;
    }

    /**
     * Whether an exception is the file's, which may take later what it does not take now. If not, what was to be written is wrong in
     * itself, and always will be.
     */
    public static boolean isOfTheFile(Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql) {
                return !REFUSED.contains(sql.getErrorCode() & PRIMARY);
            }
            if (cause instanceof IOException || cause instanceof UncheckedIOException) {
                return true;
            }
        }
        return false;
    }

    private static Fault of(int code) {
        if (code == SQLiteErrorCode.SQLITE_FULL.code) {
            return FULL;
        }
        if (code == SQLiteErrorCode.SQLITE_CORRUPT.code || code == SQLiteErrorCode.SQLITE_NOTADB.code) {
            return DAMAGED;
        }
        if (code == SQLiteErrorCode.SQLITE_BUSY.code || code == SQLiteErrorCode.SQLITE_LOCKED.code) {
            return BUSY;
        }
        boolean closed = code == SQLiteErrorCode.SQLITE_READONLY.code
                || code == SQLiteErrorCode.SQLITE_CANTOPEN.code
                || code == SQLiteErrorCode.SQLITE_PERM.code;
        return closed ? NOT_WRITABLE : FAILED;
    }

    /** What the cook is told. */
    public Unrecorded words(Path file) {
        String later = " What memory holds is written then; the pan is watched as before.";
        return switch (this) {
            case FULL -> new Unrecorded("the disk is full", "Make room on it." + later);
            case NOT_WRITABLE ->
                new Unrecorded(file + " cannot be written", "Let this user write the file and its folder." + later);
            case DAMAGED -> new Unrecorded(file + " is damaged", "Move it away." + later);
            case NEWER -> new Unrecorded(file + " was written by a newer Spoonfall", "Use that one, or give --data.");
            case BUSY -> new Unrecorded("another program holds " + file, "Close that program." + later);
            case NO_LIBRARY ->
                new Unrecorded(
                        "the database's library can be put nowhere",
                        "Set XDG_CACHE_HOME to a folder that this user can write, and start Spoonfall again when the pan"
                                + " allows it.");
            case FAILED -> new Unrecorded("the disk does not take it", "Look at the disk of " + file + "." + later);
        };
    }
}
