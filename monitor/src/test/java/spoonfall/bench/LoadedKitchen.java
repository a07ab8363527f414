package spoonfall.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import spoonfall.probe.serial.PseudoTerminal;

/** The real service in a process of its own, with a thermometer on a pseudo-terminal in each of many pans. */
final class LoadedKitchen implements AutoCloseable {
    private final Path launcher;
    private final Path folder;
    private final List<PseudoTerminal> lines;
    private final int port;
    private final HttpClient client = HttpClient.newHttpClient();
    private Process process;

    private LoadedKitchen(Path launcher, Path folder, List<PseudoTerminal> lines, int port) throws IOException {
        this.launcher = launcher;
        this.folder = folder;
        this.lines = lines;
        this.port = port;
        process = launch();
    }

    static LoadedKitchen start(Path launcher, int pans) throws IOException, InterruptedException {
        List<PseudoTerminal> lines = new ArrayList<>();
        StringBuilder file = new StringBuilder("name = \"Hollin Bank\"\nelevation = \"1240m\"\n");
        for (int i = 0; i < pans; i++) {
            PseudoTerminal line = PseudoTerminal.open();
            lines.add(line);
            file.append("[[pan]]\nname = \"").append(name(i)).append("\"\n");
            file.append("[[probe]]\nkind = \"text\"\npan = \"").append(name(i));
            file.append("\"\nplace = \"").append(line.path()).append("\"\n");
        }
        Path folder = Files.createTempDirectory("spoonfall-load");
        Files.writeString(folder.resolve("kitchen.toml"), file);
        int port;
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = socket.getLocalPort();
        }
        LoadedKitchen kitchen = new LoadedKitchen(launcher, folder, lines, port);
        kitchen.awaitPage();
        return kitchen;
    }

    /** What the pan of that number is called. */
    static String name(int pan) {
        return "pan " + pan;
    }

    private Process launch() throws IOException {
        return new ProcessBuilder(
                        launcher.toString(),
                        "serve",
                        folder.resolve("kitchen.toml").toString(),
                        "--data",
                        folder.resolve("data").toString(),
                        "--port",
                        "" + port)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("output.txt").toFile())
                .start();
    }

    private void awaitPage() throws InterruptedException, IOException {
        while (true) {
            if (!process.isAlive()) {
                throw new IOException("the service ended: " + Files.readString(folder.resolve("output.txt")));
            }
            try {
                get("/");
                return;
            } catch (UncheckedIOException e) {
                TimeUnit.MILLISECONDS.sleep(4); // not there yet
            }
        }
    }

    /** The body of what stands at {@code path}. */
    String get(String path) throws InterruptedException {
        try {
            HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                    .build();
            return client.send(request, HttpResponse.BodyHandlers.ofString()).body();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Kills the service and starts it again on what it had written; returns when it serves its page. */
    void restart() throws IOException, InterruptedException {
        process.destroyForcibly().waitFor();
        process = launch();
        awaitPage();
    }

    /** The thermometer of the pan of that number. */
    PseudoTerminal line(int pan) {
        return lines.get(pan);
    }

    int pans() {
        return lines.size();
    }

    int port() {
        return port;
    }

    /** What it holds in memory now, in MB. */
    double residentMb() throws IOException {
        return ServedKitchen.residentMb(process.pid());
    }

    /** What the service has used of the processor so far, in seconds. */
    double cpuS() throws IOException {
        return ServedKitchen.cpuS(process.pid());
    }

    /** The value of a counter in {@code /metrics}, summed over its labels. */
    double metric(String name) throws InterruptedException {
        return get("/metrics")
                .lines()
                .filter(line -> line.startsWith(name + " ") || line.startsWith(name + "{"))
                .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
                .sum();
    }

    /** What the service said in its terminal that looks like trouble. */
    List<String> complaints() throws IOException {
        try (var lines = Files.lines(folder.resolve("output.txt"))) {
            return lines.filter(line -> line.contains("ERROR") || line.contains("Exception"))
                    .limit(5)
                    .toList();
        }
    }

    @Override
    public void close() {
        ServedKitchen.end(process);
        lines.forEach(PseudoTerminal::close);
    }
}
