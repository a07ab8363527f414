package spoonfall.bench;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.http.HttpClient;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * What {@code ./bench load} measures: 64 pans of ten readings a second with 500 pages, then with connections that say nothing and with
 * pages that read a byte a second, and 1,000 pages that come back at once after a kill. Everything, pages and thermometers too, runs on
 * this machine. Prints figures; judges nothing.
 */
public final class LoadBench {
    private static final int PANS = 64;
    private static final int PAGES = 500;
    private static final double PER_SECOND = 10;
    private static final int SETTLE_S = 40;
    private static final int QUIET = 2000;
    private static final int SLOW = 50;
    private static final int BACK = 1000;

    private final LoadedKitchen kitchen;
    private final LoadPace pace;
    private final HttpClient client = HttpClient.newHttpClient();

    private LoadBench(LoadedKitchen kitchen) {
        this.kitchen = kitchen;
        pace = new LoadPace(kitchen, PER_SECOND);
    }

    /** Runs everything; {@code args[0]} is the launcher, {@code args[1]} for how many minutes memory is watched. */
    public static void main(String[] args) throws IOException, InterruptedException, ExecutionException {
        int minutes = Integer.parseInt(args[1]);
        System.out.printf(
                "Java %s, %d cores; %d pans, %.0f readings a second each, %d pages%n",
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                PANS,
                PER_SECOND,
                PAGES);
        try (LoadedKitchen kitchen = LoadedKitchen.start(Path.of(args[0]), PANS)) {
            LoadBench bench = new LoadBench(kitchen);
            try {
                bench.run(minutes);
            } finally {
                bench.pace.close();
            }
            bench.kitchen.complaints().forEach(line -> System.out.println("  said: " + line));
        }
        System.exit(0);
    }

    private void run(int minutes) throws IOException, InterruptedException, ExecutionException {
        List<LoadPage> pages = open(PAGES);
        pace.start();
        TimeUnit.SECONDS.sleep(SETTLE_S);
        steady(minutes);
        alarms(pages);
        quietConnections();
        slowPages();
        System.out.printf(
                "pages cut off meanwhile %d of %d, changes missing on a page %d%n",
                pages.stream().filter(LoadPage::closed).count(),
                PAGES,
                pages.stream().mapToInt(LoadPage::breaks).sum());
        comingBack();
    }

    private List<LoadPage> open(int count) throws InterruptedException, ExecutionException {
        List<CompletableFuture<LoadPage>> opening = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            opening.add(LoadPage.open(client, kitchen.port(), pace, i % PANS));
        }
        List<LoadPage> pages = new ArrayList<>();
        for (CompletableFuture<LoadPage> page : opening) {
            pages.add(page.get());
        }
        return pages;
    }

    /** The latency, and the memory minute by minute. */
    private void steady(int minutes) throws IOException, InterruptedException {
        pace.forget();
        double before = kitchen.cpuS();
        long begun = System.nanoTime();
        StringBuilder resident = new StringBuilder();
        for (int i = 0; i < minutes; i++) {
            TimeUnit.MINUTES.sleep(1);
            resident.append(String.format(Locale.ROOT, " %.0f", kitchen.residentMb()));
        }
        double share = (kitchen.cpuS() - before) / ((System.nanoTime() - begun) / 1e9);
        latency("wire to page, ms");
        System.out.printf(Locale.ROOT, "%-46s %.0f %% of one%n", "processor of the service", 100 * share);
        System.out.printf("%-46s%s%n", "resident minute by minute, MB", resident);
        System.out.printf(
                Locale.ROOT,
                "%-46s %.0f of %d sent%n",
                "readings dropped",
                kitchen.metric("spoonfall_readings_dropped_total"),
                pace.sent());
    }

    private void latency(String what) {
        double[] millis = pace.percentilesMillis(50, 99, 99.9, 100);
        System.out.printf(
                Locale.ROOT,
                "%-46s median %.1f, p99 %.1f, p99.9 %.1f, most %.1f (%d)%n",
                what,
                millis[0],
                millis[1],
                millis[2],
                millis[3],
                pace.seen());
    }

    /** Every other thermometer falls silent: each page of its pan must be called, once. */
    private void alarms(List<LoadPage> pages) throws InterruptedException {
        int[] before = pages.stream().mapToInt(LoadPage::silentCalls).toArray();
        for (int pan = 0; pan < PANS; pan += 2) {
            pace.still(pan, true);
        }
        TimeUnit.SECONDS.sleep(20);
        int called = 0;
        int twice = 0;
        int due = 0;
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i).pan() % 2 == 0) {
                due++;
                int calls = pages.get(i).silentCalls() - before[i];
                called += calls >= 1 ? 1 : 0;
                twice += calls > 1 ? 1 : 0;
            }
        }
        for (int pan = 0; pan < PANS; pan += 2) {
            pace.still(pan, false);
        }
        System.out.printf(
                "%-46s %d of %d pages called, %d more than once%n", "32 thermometers fall silent", called, due, twice);
        TimeUnit.SECONDS.sleep(5);
    }

    /** Connections that say nothing at all. */
    private void quietConnections() throws IOException, InterruptedException {
        List<Socket> sockets = new ArrayList<>();
        pace.forget();
        long begun = System.nanoTime();
        for (int i = 0; i < QUIET; i++) {
            sockets.add(new Socket(InetAddress.getLoopbackAddress(), kitchen.port()));
        }
        long opened = System.nanoTime();
        kitchen.get("/api/state");
        double millis = (System.nanoTime() - opened) / 1e6;
        TimeUnit.SECONDS.sleep(1);
        latency("while " + QUIET + " connections that say nothing come");
        System.out.printf(Locale.ROOT, "%-46s %.0f ms%n", "they are all taken in within", (opened - begun) / 1e6);
        pace.forget();
        TimeUnit.SECONDS.sleep(20);
        latency("the same while they are there");
        System.out.printf(Locale.ROOT, "%-46s %.0f ms%n", "a new page's snapshot among them", millis);
        System.out.printf(Locale.ROOT, "%-46s %.0f MB%n", "resident then", kitchen.residentMb());
        for (Socket socket : sockets) {
            socket.close();
        }
    }

    /** Pages that take a byte a second. */
    private void slowPages() throws IOException, InterruptedException {
        double before = kitchen.metric("spoonfall_live_cut_total");
        List<Socket> sockets = new ArrayList<>();
        pace.forget();
        for (int i = 0; i < SLOW; i++) {
            Socket socket = new Socket();
            socket.setReceiveBufferSize(1024);
            socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), kitchen.port()));
            socket.getOutputStream().write(upgrade(kitchen.port()));
            sockets.add(socket);
        }
        for (int second = 0; second < 60; second++) {
            for (Socket socket : sockets) {
                readOne(socket);
            }
            TimeUnit.SECONDS.sleep(1);
        }
        latency("the same with " + SLOW + " pages of a byte a second");
        System.out.printf(
                Locale.ROOT,
                "%-46s %.0f of %d, resident then %.0f MB%n",
                "of those cut off within a minute",
                kitchen.metric("spoonfall_live_cut_total") - before,
                SLOW,
                kitchen.residentMb());
        for (Socket socket : sockets) {
            socket.close();
        }
    }

    private static void readOne(Socket socket) {
        try {
            socket.setSoTimeout(1);
            int read = socket.getInputStream().read();
            if (read < 0) {
                socket.close();
            }
        } catch (IOException e) {
            // cut off, or nothing to read yet
        }
    }

    private static byte[] upgrade(int port) {
        return ("GET /live HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n"
                        + "Sec-WebSocket-Version: 13\r\nSec-WebSocket-Key: c3Bvb25mYWxsIGxvYWQhIQ==\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
    }

    /** The service is killed; every page comes back the moment it is there again. */
    private void comingBack() throws IOException, InterruptedException, ExecutionException {
        long killed = System.nanoTime();
        kitchen.restart();
        long served = System.nanoTime();
        for (LoadPage page : open(BACK)) {
            untilItHasItsPan(page);
        }
        long now = System.nanoTime();
        System.out.printf(
                Locale.ROOT,
                "%-46s serves after %.1f s, all %d pages have their pan after %.1f s more%n",
                "killed and started again",
                (served - killed) / 1e9,
                BACK,
                (now - served) / 1e9);
        TimeUnit.SECONDS.sleep(10);
        pace.forget();
        TimeUnit.SECONDS.sleep(20);
        latency("wire to page with " + BACK + " pages then, ms");
    }

    /** A page that was let go while its pan was gone through comes again, as real ones do. */
    private void untilItHasItsPan(LoadPage opened) throws InterruptedException, ExecutionException {
        LoadPage page = opened;
        while (true) {
            try {
                page.snapshot().get(1, TimeUnit.SECONDS);
                return;
            } catch (TimeoutException e) {
                if (page.closed()) {
                    page = LoadPage.open(client, kitchen.port(), pace, page.pan())
                            .get();
                }
            }
        }
    }
}
