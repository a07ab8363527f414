package spoonfall.cli.serve;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import java.util.function.LongSupplier;
import spoonfall.announce.Announcer;
import spoonfall.cli.door.NetworkNotice;
import spoonfall.cli.option.CommandException;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.log.store.Recorder;
import spoonfall.probe.Probe;
import spoonfall.web.PortTakenException;
import spoonfall.web.WebServer;
import spoonfall.web.door.NetworkDoor;
import spoonfall.words.Plain;

/** A kitchen with its pans and its page: wired, started, and stopped in order. */
final class Service implements AutoCloseable {
    private static final String HOST = "127.0.0.1";

    private final Kitchens kitchens;
    private final WebServer web;
    private final Optional<Recorder> recorder;

    private Service(Kitchens kitchens, WebServer web, Optional<Recorder> recorder) {
        this.kitchens = kitchens;
        this.web = web;
        this.recorder = recorder;
    }

    /**
     * Starts the pans and their page, for this machine only.
     *
     * @param recorder writes their cooks down; closed with the service; empty if nobody does
     * @param port where the page is to be, 0 for any free port
     * @throws CommandException if the port is taken
     */
    static Service start(Kitchens kitchens, Optional<Recorder> recorder, int port) {
        return start(kitchens, recorder, port, Optional.empty());
    }

    private static Service start(
            Kitchens kitchens, Optional<Recorder> recorder, int port, Optional<NetworkDoor> network) {
        WebServer web = new WebServer(kitchens, HOST, port, network);
        kitchens.start();
        try {
            web.start();
        } catch (PortTakenException e) {
            kitchens.close();
            recorder.ifPresent(Recorder::close);
            String which = port + network.map(door -> " or " + door.port()).orElse("");
            throw new CommandException(
                    "port " + which + " is taken by another program; give another one, such as --port "
                            + (port + (network.isPresent() ? 2 : 1)),
                    e);
        }
        return new Service(kitchens, web, recorder);
    }

    /** A kitchen with one pan, whose thermometers are taken at their word. */
    static Kitchens onePan(KitchenPlan plan, Function<LongSupplier, List<Probe>> probes) {
        return Kitchens.one(new Kitchen(plan, probes, System::nanoTime));
    }

    /**
     * Starts the pans, says where its page is, and goes on until the process is told to stop.
     *
     * @param announcer says aloud what matters, if anybody is to
     */
    static int runUntilStopped(
            Kitchens kitchens,
            Optional<Recorder> recorder,
            int port,
            Optional<Announcer> announcer,
            String what,
            PrintWriter out) {
        return runUntilStopped(kitchens, recorder, port, Optional.empty(), announcer, what, out);
    }

    /** The same, with a door to the network if there is to be one. */
    static int runUntilStopped(
            Kitchens kitchens,
            Optional<Recorder> recorder,
            int port,
            Optional<NetworkDoor> network,
            Optional<Announcer> announcer,
            String what,
            PrintWriter out) {
        Service service = start(kitchens, recorder, port, network);
        announcer.ifPresent(speaks -> speaks.announce(kitchens));
        service.calibrationsDue().forEach(out::println);
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime()
                .addShutdownHook(new Thread(
                        () -> {
                            service.close();
                            announcer.ifPresent(Announcer::close);
                            stopped.countDown();
                        },
                        "stop"));
        out.println("Spoonfall " + what + ": http://localhost:" + service.port() + " (Ctrl-C stops it)");
        network.ifPresent(door -> new NetworkNotice(door, service.web).print(out));
        try {
            stopped.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return 0;
    }

    /** Why thermometers ought to be checked, a line each. */
    private List<String> calibrationsDue() {
        return kitchens.all().stream()
                .flatMap(kitchen -> kitchen.state().join().probes().stream())
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
        kitchens.close();
        recorder.ifPresent(Recorder::close);
    }
}
