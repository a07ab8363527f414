package spoonfall.bench;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** The real service in a process of its own, with a record that is there already; its thermometer is read by hand. */
final class BookedKitchen implements AutoCloseable {
    private final Process process;
    private final int port;
    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    private BookedKitchen(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    static BookedKitchen start(Path launcher, Path data) throws IOException, InterruptedException {
        int port;
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = socket.getLocalPort();
        }
        Process process = new ProcessBuilder(
                        launcher.toString(),
                        "serve",
                        "--hand",
                        "--elevation",
                        "1240m",
                        "--data",
                        data.toString(),
                        "--port",
                        "" + port)
                .inheritIO()
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        BookedKitchen kitchen = new BookedKitchen(process, port);
        while (true) {
            try {
                kitchen.get("/healthz");
                return kitchen;
            } catch (IOException e) {
                if (!process.isAlive()) {
                    throw e;
                }
                TimeUnit.MILLISECONDS.sleep(20); // not there yet
            }
        }
    }

    /** Where its page is. */
    String address() {
        return "http://127.0.0.1:" + port;
    }

    private void get(String path) throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(address() + path)).build();
        HttpResponse<byte[]> answer = client.send(request, HttpResponse.BodyHandlers.ofByteArray());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(path + " answers " + answer.statusCode());
        }
    }

    /** How long it takes to answer, so many times, in milliseconds. */
    double[] millis(String path, int times) throws IOException, InterruptedException {
        double[] millis = new double[times];
        for (int i = 0; i < times; i++) {
            long begun = System.nanoTime();
            get(path);
            millis[i] = (System.nanoTime() - begun) / 1e6;
        }
        return millis;
    }

    /** What the service has used of the processor so far, in seconds. */
    double cpuS() throws IOException {
        return ServedKitchen.cpuS(process.pid());
    }

    @Override
    public void close() {
        ServedKitchen.end(process);
    }
}
