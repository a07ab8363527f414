package spoonfall.web.door;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import io.javalin.http.TooManyRequestsResponse;
import io.javalin.http.UnauthorizedResponse;
import jakarta.servlet.http.Cookie;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.IntSupplier;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import spoonfall.door.Allowance;
import spoonfall.door.Clients;
import spoonfall.door.Device;
import spoonfall.web.book.PhotoRoutes;
import spoonfall.web.plan.PlanRoutes;

/**
 * Who may come in. A page from elsewhere must not read or change anything: the host asked for must be one we serve (no DNS rebinding), and
 * whatever changes something must come from our own page (its Origin is the address it asks). A request from the network needs a paired
 * device besides; one from this machine does not.
 */
public final class Door {
    /** Where a request keeps the {@link Device} it came from, if it came from the network. */
    static final String DEVICE = "device";

    private static final Set<String> LOCAL = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final String PAIR_PAGE = "/pair.html";

    /** What a device sees before it is paired: the page on which it pairs, and what is the same for everybody. */
    private static final Set<String> SEEN_BY_ALL = Set.of(
            PAIR_PAGE,
            "/pair.js",
            "/pair.css",
            "/pair-words.js",
            "/style.css",
            "/mark.svg",
            "/manifest.webmanifest",
            "/icons/icon-192.png",
            "/icons/icon-512.png",
            "/icons/maskable-512.png");

    /** By this Javalin would take a GET for a POST, behind every check that goes by the method. */
    private static final String OVERRIDE = "X-HTTP-Method-Override";

    /** What tells that a request was passed on from another machine. */
    private static final List<String> PASSED_ON = List.of("Forwarded", "X-Forwarded-For", "X-Forwarded-Host");

    private final Optional<NetworkDoor> network;
    private final IntSupplier localPort;
    private final LongSupplier clockMillis;

    /** A page has about sixty parts, all asked for at once. */
    private final Allowance allowance = new Allowance(240, 20);

    /**
     * A door.
     *
     * @param network how pages from the network are let in; empty if none are
     * @param localPort the port at which this machine's own pages are served
     * @param clockMillis milliseconds of a clock that never jumps
     */
    public Door(Optional<NetworkDoor> network, IntSupplier localPort, LongSupplier clockMillis) {
        this.network = network;
        this.localPort = localPort;
        this.clockMillis = clockMillis;
    }

    /** Checks a request and puts the usual headers on its answer. */
    public void check(Context ctx) {
        Headers.put(ctx);
        refuseOdd(ctx);
        if (isHere(ctx)) {
            checkHere(ctx);
        } else {
            network.ifPresent(door -> checkOutside(ctx, door));
        }
    }

    /** Whether a request comes from this machine, by the port that listens to no other. */
    boolean isHere(Context ctx) {
        return network.isEmpty() || ctx.req().getLocalPort() == localPort.getAsInt();
    }

    /** The device a request comes from; empty if it comes from this machine. */
    static Optional<Device> device(Context ctx) {
        return Optional.ofNullable(ctx.attribute(DEVICE));
    }

    /** What no page of ours sends. */
    private static void refuseOdd(Context ctx) {
        if (ctx.header(OVERRIDE) != null) {
            throw new BadRequestResponse("a method is what it says it is; leave " + OVERRIDE + " out");
        }
        int most = PhotoRoutes.mostBytes(ctx.method().name(), ctx.path());
        if (ctx.req().getContentLengthLong() > most) {
            throw new ContentTooLargeResponse("that is too long; nothing here takes more than " + most + " bytes");
        }
    }

    private static void checkHere(Context ctx) {
        Arrival arrival = Arrival.of(ctx, false)
                .filter(it -> LOCAL.contains(it.host()))
                .orElseThrow(() -> new ForbiddenResponse(
                        "this page is served to this machine only; open it as http://localhost, or start with --lan"));
        if (PASSED_ON.stream().anyMatch(name -> ctx.header(name) != null)) {
            throw new ForbiddenResponse(
                    "this page is for this machine, and a proxy passed the request on; let devices in with --lan");
        }
        checkOrigin(ctx, arrival, false);
    }

    private void checkOutside(Context ctx, NetworkDoor door) {
        OptionalLong waitS = allowance.take(Clients.named(ctx.req().getRemoteAddr()), clockMillis.getAsLong());
        if (waitS.isPresent()) {
            throw tooMany(ctx, waitS.getAsLong(), "this device asks too often");
        }
        Arrival arrival = Arrival.of(ctx, door.tls().isPresent())
                .filter(it -> door.names().known(it.host(), ctx.req().getLocalAddr()))
                .orElseThrow(() -> new ForbiddenResponse("this machine is not known by that name here; open it by its "
                        + "address, or start Spoonfall with --host-name and the name"));
        checkOrigin(ctx, arrival, true);
        Optional<Device> device = token(ctx, cookieName(door)).flatMap(door.devices()::withToken);
        if (device.isPresent()) {
            ctx.attribute(DEVICE, device.get());
            checkRole(ctx, device.get());
        } else {
            checkStranger(ctx);
        }
    }

    /** A device's token; browsers hold a cookie to its prefix only if it is spelled exactly so. */
    private static Optional<String> token(Context ctx, String name) {
        Cookie[] cookies = ctx.req().getCookies();
        return Stream.of(cookies == null ? new Cookie[0] : cookies)
                .filter(cookie -> cookie.getName().equals(name))
                .map(Cookie::getValue)
                .findFirst();
    }

    private static void checkRole(Context ctx, Device device) {
        boolean harmless = looks(ctx) || PlanRoutes.onlyPlans(ctx.req().getMethod(), ctx.path());
        if (!device.role().mayAct() && !harmless && !pairs(ctx)) {
            throw new ForbiddenResponse(
                    "this device may look, not act; pair it again with a cook's code, or do it where the pan is");
        }
    }

    private static void checkStranger(Context ctx) {
        boolean page = SEEN_BY_ALL.contains(ctx.path()) && reads(ctx);
        if (page || pairs(ctx)) {
            return;
        }
        String accepts = ctx.header("Accept");
        if (reads(ctx) && accepts != null && accepts.contains("text/html")) {
            ctx.redirect(PAIR_PAGE, HttpStatus.SEE_OTHER);
            ctx.skipRemainingHandlers();
            return;
        }
        throw new UnauthorizedResponse("this device is not paired; open " + PAIR_PAGE + " on it");
    }

    /**
     * Whatever changes something, and the live channel, comes from our own page. Programs have no origin; from the network they must name one.
     */
    private static void checkOrigin(Context ctx, Arrival arrival, boolean needed) {
        String origin = ctx.header("Origin");
        boolean own = origin == null ? !needed : arrival.isOrigin(origin);
        String site = ctx.header("Sec-Fetch-Site");
        boolean elsewhere = site != null && !site.equals("same-origin") && !site.equals("none");
        if (!reads(ctx) && (!own || elsewhere)) {
            throw new ForbiddenResponse("only Spoonfall's own page may do this");
        }
    }

    /** Whether it changes nothing. */
    private static boolean looks(Context ctx) {
        String method = ctx.req().getMethod();
        return method.equals("GET") || method.equals("HEAD");
    }

    /** Whether it looks once; what is told on the live channel can be read by the page that opened it, wherever that is from. */
    private static boolean reads(Context ctx) {
        String upgrade = ctx.header("Upgrade");
        boolean staysHttp = upgrade == null || upgrade.equalsIgnoreCase("h2c"); // programs offer HTTP/2 so
        return looks(ctx) && staysHttp;
    }

    private static boolean pairs(Context ctx) {
        return ctx.req().getMethod().equals("POST") && ctx.path().equals(DoorRoutes.PAIR);
    }

    /** Says when a client may ask again. */
    static HttpResponseException tooMany(Context ctx, long waitS, String why) {
        ctx.header("Retry-After", Long.toString(waitS));
        return new TooManyRequestsResponse(why + "; try again in " + waitS + (waitS == 1 ? " second" : " seconds"));
    }

    /** The name of the cookie with a device's token; browsers keep one of that prefix to this host and to TLS. */
    static String cookieName(NetworkDoor door) {
        return door.tls().isPresent() ? "__Host-spoonfall" : "spoonfall";
    }
}
