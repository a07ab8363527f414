package spoonfall.log.store.write;

import org.jdbi.v3.core.Handle;

/**
 * Writes one thing that lasts, step by step, into a transaction of somebody else's. Whatever it writes may be written again:
 * it says where each thing goes. A copy of it goes on from where it stood, when a transaction came to nothing.
 */
public interface Writer {
    /** Another one at the same place. */
    Writer copy();

    /** The file is another one, perhaps without what it wrote: it is begun in it again where it must be. */
    void fileChanged();

    /** Sees to it that its thing is in the file. */
    void begin(Handle handle, Marked marked);

    /** Writes what it still holds. */
    void flush(Handle handle);

    /** Notes how far its thing was watched. */
    void mark(Handle handle, Marked marked);
}
