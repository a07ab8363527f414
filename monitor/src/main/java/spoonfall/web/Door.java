package spoonfall.web;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.net.URI;
import java.util.Locale;
import java.util.Set;

/**
 * Who may come in. A page from elsewhere must not read or change anything: the Host must be one we serve (no DNS
 * rebinding), and whatever changes something must come from our own page (its Origin equals the Host).
 */
final class Door {
    private static final Set<String> LOCAL = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
                    + "connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private final boolean localOnly;

    /** A door that lets in this machine only, or whoever names any host. */
    Door(boolean localOnly) {
        this.localOnly = localOnly;
    }

    /** Checks a request and puts the usual headers on its answer. */
    void check(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "no-referrer");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        String host = ctx.header("Host");
        if (host == null || (localOnly && !LOCAL.contains(name(host)))) {
            throw new ForbiddenResponse("this page is served to this machine only; open it as http://localhost");
        }
        String origin = ctx.header("Origin");
        boolean reads = ctx.method().name().equals("GET") && ctx.header("Upgrade") == null;
        if (!reads && origin != null && !sameHost(origin, host)) {
            throw new ForbiddenResponse("only Spoonfall's own page may do this");
        }
    }

    private static boolean sameHost(String origin, String host) {
        try {
            return host.equalsIgnoreCase(URI.create(origin).getRawAuthority());
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static String name(String host) {
        int colon = host.lastIndexOf(':');
        boolean hasPort = colon > host.lastIndexOf(']');
        return (hasPort ? host.substring(0, colon) : host).toLowerCase(Locale.ROOT);
    }
}
