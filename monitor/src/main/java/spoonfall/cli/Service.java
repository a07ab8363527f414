package spoonfall.cli;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import java.util.function.LongSupplier;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.KitchenPlan;
import spoonfall.probe.Probe;
import spoonfall.web.PortTakenException;
import spoonfall.web.WebServer;

/** A kitchen with its page: wired, started, and stopped in order. */
final class Service implements AutoCloseable {
    private static final String HOST = "127.0.0.1";

    private final Kitchen kitchen;
    private final WebServer web;

    private Service(Kitchen kitchen, WebServer web) {
        this.kitchen = kitchen;
        this.web = web;
    }

    /**
     * Starts a kitchen and its page.
     *
     * @param port where the page is to be, 0 for any free port
     * @throws CommandException if the port is taken
     */
    static Service start(KitchenPlan plan, Function<LongSupplier, Probe> probes, int port) {
        Kitchen kitchen = new Kitchen(plan, probes, System::nanoTime);
        WebServer web = new WebServer(kitchen, plan, HOST, port);
        kitchen.start();
        try {
            web.start();
        } catch (PortTakenException e) {
            kitchen.close();
            throw new CommandException(
                    "port " + port + " is taken by another program; give another one, such as --port " + (port + 1), e);
        }
        return new Service(kitchen, web);
    }

    /** Starts a kitchen, says where its page is, and goes on until the process is told to stop. */
    static int runUntilStopped(
            KitchenPlan plan, Function<LongSupplier, Probe> probes, int port, String what, PrintWriter out) {
        Service service = start(plan, probes, port);
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime()
                .addShutdownHook(new Thread(
                        () -> {
                            service.close();
                            stopped.countDown();
                        },
                        "stop"));
        out.println("Spoonfall " + what + ": http://localhost:" + service.port() + " (Ctrl-C stops it)");
        try {
            stopped.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return 0;
    }

    /** The page's port. */
    int port() {
        return web.port();
    }

    @Override
    public void close() {
        web.close();
        kitchen.close();
    }
}
