package spoonfall.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import spoonfall.probe.serial.PseudoTerminal;

/** The real service in a process of its own, with a thermometer on a pseudo-terminal. */
final class ServedKitchen implements AutoCloseable {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final double TICKS_PER_S = 100;

    private final PseudoTerminal line;
    private final Process process;
    private final int port;
    private final double firstPageS;
    private final HttpClient client = HttpClient.newHttpClient();

    private ServedKitchen(PseudoTerminal line, Process process, int port, double firstPageS) {
        this.line = line;
        this.process = process;
        this.port = port;
        this.firstPageS = firstPageS;
    }

    static ServedKitchen start(Path launcher) throws IOException, InterruptedException {
        PseudoTerminal line = PseudoTerminal.open();
        int port;
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = socket.getLocalPort();
        }
        HttpClient client = HttpClient.newHttpClient();
        HttpRequest page = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/"))
                .build();
        long begun = System.nanoTime();
        Process process = new ProcessBuilder(
                        launcher.toString(),
                        "serve",
                        "--probe",
                        "text:" + line.path(),
                        "--elevation",
                        "1240m",
                        "--data",
                        Files.createTempDirectory("spoonfall-bench").toString(),
                        "--port",
                        "" + port)
                .inheritIO()
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        while (true) {
            try {
                if (client.send(page, HttpResponse.BodyHandlers.ofString()).statusCode() == 200) {
                    break;
                }
            } catch (IOException e) {
                TimeUnit.MILLISECONDS.sleep(4); // not there yet
            }
        }
        return new ServedKitchen(line, process, port, (System.nanoTime() - begun) / 1e9);
    }

    double firstPageS() {
        return firstPageS;
    }

    double residentMb() throws IOException {
        return residentMb(process.pid());
    }

    /** What a process holds in memory now, in MB. */
    static double residentMb(long pid) throws IOException {
        String line = Files.readAllLines(Path.of("/proc/" + pid + "/status")).stream()
                .filter(status -> status.startsWith("VmRSS"))
                .findFirst()
                .orElseThrow();
        return Double.parseDouble(line.replaceAll("\\D", "")) / 1024;
    }

    /** Sends readings at a steady pace and returns when each reached every page, in milliseconds. */
    double[] latenciesMillis(int readings, double perSecond, int pages) throws InterruptedException {
        Map<Integer, Long> sentNanos = new ConcurrentHashMap<>();
        List<Double> millis = Collections.synchronizedList(new ArrayList<>());
        List<WebSocket> sockets = new ArrayList<>();
        for (int i = 0; i < pages; i++) {
            sockets.add(client.newWebSocketBuilder()
                    .buildAsync(URI.create("ws://127.0.0.1:" + port + "/live"), new Stopwatch(sentNanos, millis))
                    .join());
        }
        line.send("x\n");
        TimeUnit.MILLISECONDS.sleep(1500);
        for (int i = 0; i < readings; i++) {
            int thousandths = 60_000 + i;
            sentNanos.put(thousandths, System.nanoTime());
            line.send(thousandths / 1000.0 + "\n");
            TimeUnit.NANOSECONDS.sleep((long) (1e9 / perSecond));
        }
        TimeUnit.MILLISECONDS.sleep(500);
        sockets.forEach(WebSocket::abort);
        if (millis.size() < readings * pages) {
            System.out.println("  (" + (readings * pages - millis.size()) + " readings were replaced by newer ones)");
        }
        return millis.stream().mapToDouble(d -> d).toArray();
    }

    /** The share of one processor that the service uses with a reading a second and a page. */
    double cpuShare(double seconds) throws IOException, InterruptedException {
        WebSocket socket = client.newWebSocketBuilder()
                .buildAsync(URI.create("ws://127.0.0.1:" + port + "/live"), new Stopwatch(Map.of(), new ArrayList<>()))
                .join();
        double before = cpuS(process.pid());
        for (int i = 0; i < seconds; i++) {
            line.send("9" + (i % 10) + ".5\n");
            TimeUnit.SECONDS.sleep(1);
        }
        double used = cpuS(process.pid()) - before;
        socket.abort();
        return used / seconds;
    }

    /** What a process has used of the processor so far, in seconds. */
    static double cpuS(long pid) throws IOException {
        String stat = Files.readString(Path.of("/proc/" + pid + "/stat"));
        String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ", -1);
        return (Long.parseLong(fields[11]) + Long.parseLong(fields[12])) / TICKS_PER_S;
    }

    @Override
    public void close() {
        end(process);
        line.close();
    }

    /** Stops a service and waits for its end, five seconds at most. */
    static void end(Process process) {
        process.destroy();
        try {
            process.waitFor(5, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** A page that notes when each reading reaches it. */
    private static final class Stopwatch implements WebSocket.Listener {
        private final Map<Integer, Long> sentNanos;
        private final List<Double> millis;
        private final StringBuilder part = new StringBuilder();
        private int last;

        private Stopwatch(Map<Integer, Long> sentNanos, List<Double> millis) {
            this.sentNanos = sentNanos;
            this.millis = millis;
        }

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean whole) {
            part.append(data);
            if (whole) {
                long now = System.nanoTime();
                note(part.toString(), now);
                part.setLength(0);
            }
            socket.request(1);
            return null;
        }

        private void note(String text, long now) {
            try {
                JsonNode seen = MAPPER.readTree(text).path("seenC");
                int thousandths = (int) Math.round(seen.asDouble() * 1000);
                Long sent = sentNanos.get(thousandths);
                if (sent != null && thousandths != last) {
                    last = thousandths;
                    millis.add((now - sent) / 1e6);
                }
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
