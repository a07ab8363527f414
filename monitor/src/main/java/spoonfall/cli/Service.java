package spoonfall.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import java.util.function.LongSupplier;
import spoonfall.announce.Announcer;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.KitchenPlan;
import spoonfall.kitchen.Thermometry;
import spoonfall.probe.Probe;
import spoonfall.web.PortTakenException;
import spoonfall.web.WebServer;
import spoonfall.words.Plain;

/** A kitchen with its page: wired, started, and stopped in order. */
final class Service implements AutoCloseable {
    private static final String HOST = "127.0.0.1";

    private final Kitchen kitchen;
    private final WebServer web;
    private final Optional<Announcer> announcer;

    private Service(Kitchen kitchen, WebServer web, Optional<Announcer> announcer) {
        this.kitchen = kitchen;
        this.web = web;
        this.announcer = announcer;
    }

    /**
     * Starts a kitchen and its page.
     *
     * @param thermometry what is known of its thermometers
     * @param port where the page is to be, 0 for any free port
     * @param announcer says aloud what matters, if anybody is to
     * @throws CommandException if the port is taken
     */
    static Service start(
            KitchenPlan plan,
            Function<LongSupplier, List<Probe>> probes,
            Thermometry thermometry,
            int port,
            Optional<Announcer> announcer) {
        Kitchen kitchen = new Kitchen(plan, probes, System::nanoTime, thermometry);
        WebServer web = new WebServer(kitchen, plan, HOST, port);
        kitchen.start();
        try {
            web.start();
        } catch (PortTakenException e) {
            kitchen.close();
            throw new CommandException(
                    "port " + port + " is taken by another program; give another one, such as --port " + (port + 1), e);
        }
        announcer.ifPresent(speaks -> {
            kitchen.listen(speaks.of(""));
            speaks.start();
        });
        return new Service(kitchen, web, announcer);
    }

    /** Starts a kitchen, says where its page is, and goes on until the process is told to stop. */
    static int runUntilStopped(
            KitchenPlan plan,
            Function<LongSupplier, List<Probe>> probes,
            Thermometry thermometry,
            int port,
            Optional<Announcer> announcer,
            String what,
            PrintWriter out) {
        Service service = start(plan, probes, thermometry, port, announcer);
        service.calibrationsDue().forEach(out::println);
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

    /** Why thermometers ought to be checked, a line each. */
    private List<String> calibrationsDue() {
        return kitchen.state().join().probes().stream()
                .flatMap(probe -> probe.calibrationDue().map(due -> probe.name() + ": " + Plain.text(due)).stream())
                .toList();
    }

    /** The page's port. */
    int port() {
        return web.port();
    }

    @Override
    public void close() {
        web.close();
        kitchen.close();
        announcer.ifPresent(Announcer::close);
    }
}
