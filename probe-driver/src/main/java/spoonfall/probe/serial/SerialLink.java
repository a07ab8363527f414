package spoonfall.probe.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.IOException;
import java.io.UncheckedIOException;

/** One opening of a serial port: from the plug to the unplug. */
public final class SerialLink implements AutoCloseable {
    private static final int DISCARD_MOST = 65_536;

    private final String path;
    private final SerialPort port;

    private SerialLink(String path, SerialPort port) {
        this.path = path;
        this.port = port;
    }

    /**
     * Opens a port.
     *
     * @param readMillis how long {@link #read} waits; the system counts in tenths of a second
     * @throws IOException with one line that names the port, what is wrong and the way out
     */
    public static SerialLink open(SerialSettings settings, int readMillis) throws IOException {
        SerialPort port;
        try {
            NativeLibrary.prepare();
            // Anew on every attempt: a link is resolved here, once.
            port = SerialPort.getCommPort(settings.path());
        } catch (UncheckedIOException e) {
            throw new IOException(settings.path() + ": " + e.getMessage(), e);
        } catch (SerialPortInvalidPortException e) {
            throw new IOException(Trouble.notOpened(settings.path(), 0), e);
        }
        port.setComPortParameters(
                settings.baud(), settings.dataBits(), stopBits(settings.stopBits()), parity(settings.parity()));
        port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, readMillis, 0);
        if (!port.openPort()) {
            throw new IOException(Trouble.notOpened(settings.path(), port.getLastErrorCode()));
        }
        return new SerialLink(settings.path(), port);
    }

    /**
     * Waits for bytes, as long as was said when it was opened.
     *
     * @return how many came, 0 if none did
     * @throws IOException if the device is gone
     */
    public int read(byte[] buffer) throws IOException {
        int count = port.readBytes(buffer, buffer.length);
        if (count < 0) {
            throw new IOException(Trouble.unplugged(path));
        }
        return count;
    }

    /**
     * Sends bytes.
     *
     * @throws IOException if the device is gone
     */
    public void write(byte[] bytes) throws IOException {
        if (port.writeBytes(bytes, bytes.length) < bytes.length) {
            throw new IOException(Trouble.unplugged(path));
        }
    }

    /**
     * Throws away what came unasked. Reads it: emptying the system's buffers could take what is still to be sent.
     *
     * @return how many bytes there were; a line that never stops is left after 64 KiB
     * @throws IOException if the device is gone
     */
    public int discardInput() throws IOException {
        byte[] thrown = new byte[512];
        int count = 0;
        int waiting = port.bytesAvailable();
        while (waiting > 0 && count < DISCARD_MOST) {
            count += read(thrown);
            waiting = port.bytesAvailable();
        }
        if (waiting < 0) {
            throw new IOException(Trouble.unplugged(path));
        }
        return count;
    }

    /** Frees the port; a read that waits returns at once. */
    @Override
    public void close() {
        port.closePort();
    }

    private static int stopBits(SerialSettings.StopBits stopBits) {
        return switch (stopBits) {
            case ONE -> SerialPort.ONE_STOP_BIT;
            case ONE_AND_A_HALF -> SerialPort.ONE_POINT_FIVE_STOP_BITS;
            case TWO -> SerialPort.TWO_STOP_BITS;
        };
    }

    private static int parity(SerialSettings.Parity parity) {
        return switch (parity) {
            case NONE -> SerialPort.NO_PARITY;
            case ODD -> SerialPort.ODD_PARITY;
            case EVEN -> SerialPort.EVEN_PARITY;
            case MARK -> SerialPort.MARK_PARITY;
            case SPACE -> SerialPort.SPACE_PARITY;
        };
    }
}
