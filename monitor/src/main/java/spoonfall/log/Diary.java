package spoonfall.log;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.List;

/**
 * Where something is written down that lies beside the cooks and outlasts them, line by line: the jars, or the afternoon of
 * a pan. Used by one thread; nothing here waits for a disk but {@link #left} and {@link #settle}, for a while only.
 */
public interface Diary {
    /** A diary that keeps nothing. */
    static Diary none() {
        return new NoDiary();
    }

    /**
     * One line.
     *
     * @param atMillis milliseconds of the diary
     * @param kind what it is
     * @param detail all that is needed to go on from it
     */
    record Line(long atMillis, String kind, ObjectNode detail) {}

    /**
     * What an earlier run of the service wrote.
     *
     * @param id where the record keeps it
     * @param header what was known at its beginning
     * @param lines in order
     * @param aliveMillis milliseconds of the diary up to which somebody was there to write
     * @param away how long nobody was since, by our own clocks
     */
    record Left(long id, ObjectNode header, List<Line> lines, long aliveMillis, Duration away) {
        /** Keeps a copy of the list. */
        public Left {
            lines = List.copyOf(lines);
        }
    }

    /** The newest that was written; nothing if nothing was, or if it cannot be read. */
    Recalled<Left> left();

    /** It begins anew. What follows belongs to it. */
    void began(ObjectNode header);

    /** What an earlier run wrote goes on. What follows belongs to it. */
    void resumed(Left left);

    /** A line more. */
    void line(Line line);

    /** Somebody was there to write up to that millisecond of the diary. */
    void alive(long atMillis);

    /** Waits until everything said so far is on the disk, half a second at most; says whether it is. */
    boolean settle();
}
