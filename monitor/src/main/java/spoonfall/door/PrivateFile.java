package spoonfall.door;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.util.Set;

/** Writes files that only their owner may read. */
public final class PrivateFile {
    private static final Set<PosixFilePermission> OWNERS = PosixFilePermissions.fromString("rw-------");

    private PrivateFile() {}

    /**
     * Writes a file as a whole: whoever reads it sees the old one or the new one. It is its owner's alone from its first byte, and stays
     * the owner's whose it was.
     */
    public static void write(Path file, byte[] bytes) throws IOException {
        Path folder = folder(file);
        Path fresh = Files.createTempFile(folder, "." + file.getFileName(), ".new", ownersOnly());
        try {
            try (SeekableByteChannel out = Files.newByteChannel(fresh, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    out.write(rest);
                }
            }
            keepOwner(fresh, Files.getOwner(Files.exists(file) ? file : folder));
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /** Opens a file that two programs take turns by; it is made, as the folder's owner's alone, if it is not there. */
    static FileChannel open(Path file) throws IOException {
        Path folder = folder(file);
        boolean fresh = !Files.exists(file);
        FileChannel channel =
                FileChannel.open(file, Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE), ownersOnly());
        if (fresh) {
            keepOwner(file, Files.getOwner(folder));
        }
        return channel;
    }

    private static Path folder(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            throw new IOException(file + " is no file");
        }
        return Files.createDirectories(folder);
    }

    /** A service may be forbidden to give files away, even to itself. */
    private static void keepOwner(Path fresh, UserPrincipal owner) throws IOException {
        if (!Files.getOwner(fresh).equals(owner)) {
            Files.setOwner(fresh, owner);
        }
    }

    private static FileAttribute<?>[] ownersOnly() {
        boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        return posix ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNERS)} : new FileAttribute<?>[0];
    }
}
