package spoonfall.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.staticfiles.Location;
import io.javalin.websocket.WsContext;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.eclipse.jetty.util.thread.Scheduler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.web.book.BookRoutes;
import spoonfall.web.book.LearnRoutes;
import spoonfall.web.door.Door;
import spoonfall.web.door.DoorRoutes;
import spoonfall.web.door.Guests;
import spoonfall.web.door.Listeners;
import spoonfall.web.door.NetworkDoor;
import spoonfall.web.jars.JarRoutes;
import spoonfall.web.live.LiveChannel;
import spoonfall.web.pan.PanRoutes;
import spoonfall.web.plan.PlanRoutes;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;
import spoonfall.web.wire.AskedPan;

/** The service: the page, its data and its live channel. */
public final class WebServer implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(WebServer.class);
    private static final int STOP_MILLIS = 1500;

    private final Kitchens kitchens;
    private final AskedPan asked;
    private final LiveChannel live;
    private final PrometheusMeterRegistry registry = Metrics.registry();
    private final Optional<NetworkDoor> network;
    private final Optional<Guests> guests;
    private final Javalin javalin;

    /**
     * A service of one pan that has not started.
     *
     * @param kitchen what it serves
     * @param host the address to listen on
     * @param port the port, 0 for any free one
     */
    public WebServer(Kitchen kitchen, String host, int port) {
        this(Kitchens.one(kitchen), host, port);
    }

    /**
     * A service that has not started, for this machine only.
     *
     * @param kitchens what it serves
     * @param host the address to listen on
     * @param port the port, 0 for any free one
     */
    public WebServer(Kitchens kitchens, String host, int port) {
        this(kitchens, host, port, Optional.empty());
    }

    /**
     * A service that has not started.
     *
     * @param kitchens what it serves
     * @param host the address at which this machine's own pages are served, one that only this machine reaches
     * @param port the port, 0 for any free one
     * @param network how pages from the network are let in; empty if none are
     */
    public WebServer(Kitchens kitchens, String host, int port, Optional<NetworkDoor> network) {
        if (!List.of("localhost", "127.0.0.1", "::1").contains(host)) {
            throw new IllegalArgumentException("only this machine may be served without a door, not " + host);
        }
        this.kitchens = kitchens;
        this.network = network;
        guests = network.map(door -> new Guests(door.devices()));
        asked = new AskedPan(kitchens);
        Supplier<Scheduler> scheduler = () -> jetty().getScheduler(); // runs once the service has started
        live = new LiveChannel(kitchens, scheduler, registry);
        Metrics.watchPages(registry, live::pages);
        javalin = Javalin.create(config -> configure(config, host, port));
    }

    /**
     * Starts listening.
     *
     * @throws PortTakenException if another program listens there
     */
    public void start() {
        try {
            javalin.start();
        } catch (RuntimeException e) {
            throw PortTakenException.in(e).orElseThrow(() -> e);
        }
        kitchens.all().forEach(kitchen -> kitchen.listen(new Metrics(registry, kitchen)));
        live.listen();
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
    }

    /** The port that the network sees; the page's own without one. */
    public int networkPort() {
        return network.isEmpty() ? port() : Listeners.networkPort(jetty());
    }

    /** Stops listening; pages are told that the service is gone by their connection closing. */
    @Override
    public void close() {
        try {
            javalin.stop();
        } catch (RuntimeException e) {
            LOG.debug("some requests did not end in time", e);
        }
    }

    private Server jetty() {
        return javalin.jettyServer().server();
    }

    private void configure(JavalinConfig config, String host, int port) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        Listeners.add(config.jetty, host, port, network);
        QueuedThreadPool threads = new QueuedThreadPool(24, 2);
        threads.setName("web");
        config.jetty.threadPool = threads;
        config.jetty.modifyServer(server -> server.setStopTimeout(STOP_MILLIS));
        config.jetty.modifyWebSocketServletFactory(factory -> {
            factory.setIdleTimeout(Duration.ofSeconds(30));
            factory.setMaxTextMessageSize(1024);
            factory.setMaxBinaryMessageSize(1024);
        });
        config.http.maxRequestSize = Asked.LARGEST_BYTES;
        config.staticFiles.add(files -> {
            files.directory = "/dashboard";
            files.location = Location.CLASSPATH;
            files.headers = Map.of("Cache-Control", "no-cache");
            files.mimeTypes.add("application/manifest+json", "webmanifest");
        });
        config.staticFiles.enableWebjars();
        config.requestLogger.http((ctx, millis) -> Metrics.countRequest(registry, millis));
        LongSupplier clockMillis = () -> TimeUnit.NANOSECONDS.toMillis(System.nanoTime());
        Door door = new Door(network, this::port, clockMillis);
        config.routes.before(door::check);
        config.routes.wsBeforeUpgrade(door::check);
        AskedPan.BASES.forEach(base -> addPan(config.routes, base));
        new JarRoutes(kitchens.jars()).add(config.routes);
        new BookRoutes(kitchens.book()).add(config.routes);
        new DoorRoutes(network, door, this::networkPort, clockMillis).add(config.routes);
        config.routes.get("/sw.js", new Shell()::worker);
        config.routes.get("/all.css", new Sheets()::all);
        config.routes.get("/healthz", this::health);
        config.routes.get(
                "/metrics",
                ctx -> ctx.contentType("text/plain; version=0.0.4; charset=utf-8")
                        .result(registry.scrape()));
        config.routes.ws("/live", ws -> {
            ws.onConnect(this::join);
            ws.onClose(this::part);
            ws.onMessage(ctx -> ctx.closeSession(1008, "nothing is expected here"));
            ws.onBinaryMessage(ctx -> ctx.closeSession(1008, "nothing is expected here"));
        });
        config.routes.exception(
                HttpResponseException.class,
                (e, ctx) -> Answers.error(ctx, e.getStatus(), String.valueOf(e.getMessage())));
        config.routes.exception(Refusal.class, (e, ctx) -> Answers.error(ctx, 400, String.valueOf(e.getMessage())));
        config.routes.exception(Exception.class, (e, ctx) -> {
            LOG.warn("{} {} failed: {}", ctx.method(), ctx.path(), e.toString(), e);
            Answers.error(ctx, 503, "Spoonfall could not answer just now; try again");
        });
        config.routes.error(404, ctx -> {
            if (ctx.path().startsWith("/api/")
                    && !String.valueOf(ctx.res().getContentType()).contains("json")) {
                Answers.error(ctx, 404, "there is nothing at " + ctx.path());
            }
        });
    }

    /** The calls on a pan, below a path. */
    private void addPan(RoutesConfig routes, String base) {
        new PanRoutes(kitchens, asked, live.snapshots()).add(routes, base);
        new LearnRoutes(kitchens, asked, live.snapshots()).add(routes, base);
        new PlanRoutes(kitchens.pantry(), asked).add(routes, base);
    }

    private void join(WsContext ctx) {
        guests.ifPresent(channels -> channels.joined(ctx));
        live.join(ctx);
    }

    private void part(WsContext ctx) {
        guests.ifPresent(channels -> channels.left(ctx.session));
        live.part(ctx);
    }

    private void health(Context ctx) {
        Optional<String> stopped = stopped();
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("status", stopped.isEmpty() ? "up" : "down");
        stopped.ifPresent(what -> node.put("error", what));
        Answers.json(ctx, stopped.isEmpty() ? 200 : 503, node);
    }

    private Optional<String> stopped() {
        boolean watched = kitchens.all().stream().allMatch(Kitchen::healthy)
                && kitchens.jars().healthy();
        if (!watched) {
            return Optional.of("the kitchen's thread has stopped; restart Spoonfall");
        }
        return kitchens.all().stream().allMatch(Kitchen::recorded)
                ? Optional.empty()
                : Optional.of("the recorder has stopped; restart Spoonfall when the pan allows it");
    }
}
