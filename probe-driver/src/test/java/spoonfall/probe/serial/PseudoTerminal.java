package spoonfall.probe.serial;

import com.sun.jna.Library;
import com.sun.jna.Native;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * A serial line without a cable: what is written to it arrives at the port {@link #path()}. Closing it is an
 * unplug.
 */
public final class PseudoTerminal implements AutoCloseable {
    private static final int O_RDWR = 2;
    private static final int O_NOCTTY = 0x100;
    private static final LibC C = Native.load("c", LibC.class);

    private final int master;
    private final String path;
    private boolean open = true;

    private PseudoTerminal(int master, String path) {
        this.master = master;
        this.path = path;
    }

    /** The few functions of the C library that make a pseudo-terminal. */
    interface LibC extends Library {
        int posix_openpt(int flags);

        int grantpt(int fd);

        int unlockpt(int fd);

        int ptsname_r(int fd, byte[] name, long size);

        long read(int fd, byte[] bytes, long count);

        long write(int fd, byte[] bytes, long count);

        int close(int fd);

        int tcgetattr(int fd, byte[] termios);

        int tcsetattr(int fd, int when, byte[] termios);

        void cfmakeraw(byte[] termios);
    }

    /** Plugs one in. */
    public static PseudoTerminal open() {
        int master = C.posix_openpt(O_RDWR | O_NOCTTY);
        byte[] name = new byte[128];
        if (master < 0 || C.grantpt(master) != 0 || C.unlockpt(master) != 0 || C.ptsname_r(master, name, 128) != 0) {
            throw new IllegalStateException("no pseudo-terminal to be had");
        }
        byte[] termios = new byte[256];
        if (C.tcgetattr(master, termios) == 0) {
            C.cfmakeraw(termios);
            C.tcsetattr(master, 0, termios);
        }
        return new PseudoTerminal(master, Native.toString(name, StandardCharsets.US_ASCII));
    }

    /** The port at which it is found. */
    public Path path() {
        return Path.of(path);
    }

    /** Sends text as it is. */
    public void send(String text) {
        send(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Sends bytes; waits while the line is full. */
    public synchronized void send(byte[] bytes) {
        byte[] rest = bytes;
        while (open && rest.length > 0) {
            long sent = C.write(master, rest, rest.length);
            if (sent < 0) {
                throw new IllegalStateException("the line broke");
            }
            rest = Arrays.copyOfRange(rest, (int) sent, rest.length);
        }
    }

    /** Waits for what the other side sends; empty when the line is gone. */
    public byte[] receive() {
        byte[] bytes = new byte[1024];
        long count = open ? C.read(master, bytes, bytes.length) : 0;
        return Arrays.copyOf(bytes, (int) Math.max(0, count));
    }

    /** Pulls the plug. */
    @Override
    public void close() {
        if (open) {
            open = false;
            C.close(master);
        }
    }
}
