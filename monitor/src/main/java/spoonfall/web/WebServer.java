package spoonfall.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.staticfiles.Location;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.KitchenPlan;
import spoonfall.kitchen.KitchenState;
import spoonfall.kitchen.Refusal;
import spoonfall.log.CookRecord;
import spoonfall.log.RecordedTrace;
import spoonfall.probe.trace.Trace;

/** The service: the page, its data and its live channel. */
public final class WebServer implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(WebServer.class);
    private static final int LARGEST_REQUEST_BYTES = 4096;
    private static final int STOP_MILLIS = 1500;
    private static final long ANSWER_SECONDS = 5;

    private final Kitchen kitchen;
    private final KitchenPlan plan;
    private final Snapshots snapshots = new Snapshots(runName());
    private final Metrics metrics;
    private final LiveHub hub;
    private final Javalin javalin;

    /**
     * A service that has not started.
     *
     * @param kitchen what it serves
     * @param plan what that kitchen watches
     * @param host the address to listen on
     * @param port the port, 0 for any free one
     */
    public WebServer(Kitchen kitchen, KitchenPlan plan, String host, int port) {
        this.kitchen = kitchen;
        this.plan = plan;
        metrics = new Metrics(kitchen.counts());
        hub = new LiveHub(kitchen, snapshots, new LiveCounts(metrics.registry()));
        metrics.watchPages(hub::size);
        boolean local = host.equals("localhost") || host.equals("127.0.0.1") || host.equals("::1");
        Door door = new Door(local);
        javalin = Javalin.create(config -> configure(config, door, host, port));
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
        kitchen.listen(metrics);
        kitchen.listen(hub);
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
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

    private void configure(JavalinConfig config, Door door, String host, int port) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.jetty.host = host;
        config.jetty.port = port;
        QueuedThreadPool threads = new QueuedThreadPool(24, 2);
        threads.setName("web");
        config.jetty.threadPool = threads;
        config.jetty.modifyServer(server -> server.setStopTimeout(STOP_MILLIS));
        config.jetty.modifyWebSocketServletFactory(factory -> {
            factory.setIdleTimeout(Duration.ofSeconds(30));
            factory.setMaxTextMessageSize(1024);
            factory.setMaxBinaryMessageSize(1024);
        });
        config.http.maxRequestSize = LARGEST_REQUEST_BYTES;
        config.staticFiles.add(files -> {
            files.directory = "/dashboard";
            files.location = Location.CLASSPATH;
            files.headers = Map.of("Cache-Control", "no-cache");
        });
        config.staticFiles.enableWebjars();
        config.requestLogger.http((ctx, millis) -> metrics.countRequest(millis));
        config.routes.before(door::check);
        config.routes.wsBeforeUpgrade(door::check);
        config.routes.get("/api/state", ctx -> json(ctx, 200, snapshots.of(answer(kitchen.state()))));
        config.routes.get("/api/trace", this::trace);
        new AlarmRoutes(kitchen).add(config.routes);
        config.routes.post("/api/cook", ctx -> json(ctx, 201, snapshots.of(answer(kitchen.newCook()))));
        new TrustRoutes(kitchen, snapshots).add(config.routes);
        new HandRoutes(kitchen, snapshots).add(config.routes);
        config.routes.get("/healthz", this::health);
        config.routes.get(
                "/metrics",
                ctx -> ctx.contentType("text/plain; version=0.0.4; charset=utf-8")
                        .result(metrics.registry().scrape()));
        config.routes.ws("/live", ws -> {
            ws.onConnect(ctx -> hub.join(ctx.session));
            ws.onClose(ctx -> hub.leave(ctx.session));
            ws.onMessage(ctx -> ctx.closeSession(1008, "nothing is expected here"));
            ws.onBinaryMessage(ctx -> ctx.closeSession(1008, "nothing is expected here"));
        });
        config.routes.exception(
                HttpResponseException.class, (e, ctx) -> error(ctx, e.getStatus(), String.valueOf(e.getMessage())));
        config.routes.exception(Refusal.class, (e, ctx) -> error(ctx, 400, String.valueOf(e.getMessage())));
        config.routes.exception(Exception.class, (e, ctx) -> {
            LOG.warn("{} {} failed: {}", ctx.method(), ctx.path(), e.toString());
            error(ctx, 503, "Spoonfall could not answer just now; try again");
        });
        config.routes.error(404, ctx -> {
            if (ctx.path().startsWith("/api/")
                    && !String.valueOf(ctx.contentType()).contains("json")) {
                error(ctx, 404, "there is nothing at " + ctx.path());
            }
        });
    }

    private void trace(Context ctx) {
        KitchenState state = answer(kitchen.state());
        CookRecord record = answer(kitchen.record());
        Trace trace = RecordedTrace.of(record, state.pan().basis().settings(), plan.batch(), state.startedAt());
        if (ctx.queryParamMap().containsKey("metadata")) {
            ctx.contentType("application/csvm+json").result(trace.metadata("trace"));
        } else {
            ctx.contentType("text/csv; charset=utf-8").result(trace.csv());
        }
    }

    private void health(Context ctx) {
        boolean up = kitchen.healthy();
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("status", up ? "up" : "down");
        if (!up) {
            node.put("error", "the kitchen's thread has stopped; restart Spoonfall");
        }
        json(ctx, up ? 200 : 503, node);
    }

    /** Answers with an error that people can read. */
    static void error(Context ctx, int status, String message) {
        json(ctx, status, JsonNodeFactory.instance.objectNode().put("error", message));
    }

    /** Answers with JSON that must not be kept. */
    static void json(Context ctx, int status, ObjectNode node) {
        ctx.status(status).header("Cache-Control", "no-store");
        ctx.contentType("application/json").result(Views.text(node));
    }

    /** What the kitchen answers; its {@link Refusal} as it is. */
    static <T> T answer(CompletableFuture<T> question) {
        try {
            return question.get(ANSWER_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the kitchen was asked", e);
        } catch (ExecutionException | TimeoutException e) {
            if (e.getCause() instanceof Refusal refusal) {
                throw refusal;
            }
            throw new IllegalStateException("the kitchen did not answer", e);
        }
    }

    private static String runName() {
        return Long.toString(new SecureRandom().nextLong(1L << 40), 36);
    }
}
