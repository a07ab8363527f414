package spoonfall.log;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import spoonfall.cook.Unrecorded;

/**
 * Where the cooks of one pan are written down. Called by the pan's thread; nothing here waits for a disk but {@link
 * #settle} and {@link #unfinished}, which wait for a while only.
 */
public interface CookJournal {
    /** A journal that keeps nothing and is never in trouble. */
    static CookJournal none() {
        return new NoJournal();
    }

    /** The pan that this is the journal of; empty where there is one only. */
    String pan();

    /** The cook that an earlier run left before it was over; nothing if there is none or it cannot be read. */
    Recalled<UnfinishedCook> unfinished();

    /** The number of the last cook of this pan; 0 if there was none. */
    Recalled<Integer> lastNumber();

    /** A cook begins. What follows belongs to it. */
    void began(CookHeader header);

    /** The cook that an earlier run left goes on. What follows belongs to it. */
    void resumed(UnfinishedCook cook);

    /** Something went into the cook. */
    void input(CookInput input);

    /**
     * Something came out of it.
     *
     * @param atMillis milliseconds of the cook
     * @param kind such as {@code alarm}
     * @param detail what is needed to list it
     */
    void event(long atMillis, String kind, ObjectNode detail);

    /** Somebody wrote a line of the cook. */
    void note(CookNote note);

    /** The cook has been watched up to that millisecond. */
    void alive(long atMillis);

    /** The cook is over. */
    void ended(long atMillis);

    /** Where the afternoon of this pan is written down, which may outlast a cook. */
    default Diary afternoon() {
        return Diary.none();
    }

    /** Where the plan of the next cook of this pan is written down until that cook begins. */
    default Diary plan() {
        return Diary.none();
    }

    /**
     * Waits until everything said so far is on the disk, half a second at most, and not at all while the disk is in
     * trouble: an alarm reaches the cook whatever the disk does.
     *
     * @return whether it is
     */
    boolean settle();

    /** Why nothing can be written just now, and what to do; empty if all is well. */
    Optional<Unrecorded> trouble();

    /** Whether what writes it is at work. A disk in trouble does not end that. */
    default boolean healthy() {
        return true;
    }
}
