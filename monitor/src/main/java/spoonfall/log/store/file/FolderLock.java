package spoonfall.log.store.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** Says that one running program writes cooks into a folder: two would go on with each other's. */
public final class FolderLock implements AutoCloseable {
    private final @Nullable FileChannel channel;

    private FolderLock(@Nullable FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Takes the folder of {@code file}. The operating system gives it back when the program ends, however that comes. A
     * folder that cannot be written is nobody's.
     *
     * @throws IllegalArgumentException if another program has it
     */
    public static FolderLock take(Path file) {
        Path lock = file.resolveSibling(file.getFileName() + ".lock");
        try {
            FileChannel channel = FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock held = held(channel);
            if (held == null) {
                channel.close();
                throw new IllegalArgumentException("another Spoonfall records into " + file
                        + "; stop that one, or give this one a folder of its own, such as --data ./second-kitchen");
            }
            return new FolderLock(channel);
        } catch (IOException e) {
            return new FolderLock(null);
        }
    }

    private static @Nullable FileLock held(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    /** Whether it could be taken at all: a folder that cannot be written is nobody's. */
    public boolean held() {
        return channel != null;
    }

    @Override
    public void close() {
        if (channel != null) {
            try {
                channel.close();
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }
    }
}
