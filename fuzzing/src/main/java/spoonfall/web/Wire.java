package spoonfall.web;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** One connection to the service, byte by byte, so that nothing sent is made better on the way. */
final class Wire implements AutoCloseable {
    private static final int ANSWER_MILLIS = 20_000;
    private static final int LONGEST_ANSWER = 4_000_000;

    private final Socket socket;
    private final InputStream in;

    /** An answer to a request. */
    record Answer(int status, String body, boolean closes) {}

    Wire(int port) {
        try {
            socket = new Socket(InetAddress.getLoopbackAddress(), port);
            socket.setSoTimeout(ANSWER_MILLIS);
            socket.setTcpNoDelay(true);
            // Gone at once, as a laptop that is shut: thousands a minute would use up the ports else.
            socket.setSoLinger(true, 0);
            in = new BufferedInputStream(socket.getInputStream());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Sends bytes as they are. */
    void send(byte[] bytes) throws IOException {
        socket.getOutputStream().write(bytes);
    }

    /** The next answer. */
    Answer answer() throws IOException {
        List<String> head = new ArrayList<>();
        for (String line = line(); !line.isEmpty(); line = line()) {
            head.add(line);
        }
        if (head.isEmpty()) {
            throw new IOException("the service closed the connection");
        }
        int status = Integer.parseInt(head.get(0).split(" ", 3)[1]);
        int length = Integer.parseInt(header(head, "content-length", "0"));
        if (length > LONGEST_ANSWER) {
            throw new AssertionError("an answer of " + length + " bytes");
        }
        String body = new String(in.readNBytes(length), StandardCharsets.UTF_8);
        StringBuilder chunks = new StringBuilder(body);
        if (header(head, "transfer-encoding", "").equals("chunked")) {
            for (int size = Integer.parseInt(line(), 16); size > 0; size = Integer.parseInt(line(), 16)) {
                chunks.append(new String(in.readNBytes(size), StandardCharsets.UTF_8));
                line();
            }
            line();
        }
        boolean closes = header(head, "connection", "").equals("close");
        return new Answer(status, chunks.toString(), closes);
    }

    /** Reads what else comes, until the service is silent for that long or closes the connection. */
    void drain(int silentMillis) throws IOException {
        socket.setSoTimeout(silentMillis);
        byte[] part = new byte[8192];
        int left = LONGEST_ANSWER;
        try {
            for (int count = in.read(part); count >= 0; count = in.read(part)) {
                left -= count;
                if (left < 0) {
                    throw new AssertionError("the service does not stop talking");
                }
            }
        } catch (java.net.SocketTimeoutException e) {
            return; // it is silent
        }
    }

    private static String header(List<String> head, String name, String otherwise) {
        return head.stream()
                .filter(line -> line.toLowerCase(Locale.ROOT).startsWith(name + ":"))
                .map(line -> line.substring(name.length() + 1).strip().toLowerCase(Locale.ROOT))
                .findFirst()
                .orElse(otherwise);
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int b = in.read(); b >= 0 && b != '\n'; b = in.read()) {
            if (b != '\r') {
                line.append((char) b);
            }
        }
        return line.toString();
    }

    @Override
    public void close() {
        try {
            socket.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
