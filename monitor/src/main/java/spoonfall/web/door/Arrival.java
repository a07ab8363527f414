package spoonfall.web.door;

import io.javalin.http.Context;
import java.net.URI;
import java.util.Locale;
import java.util.Optional;

/**
 * By which address a request came.
 *
 * @param scheme http or https
 * @param host the host it asked for, in small letters, without its port
 * @param port the port it asked for
 */
record Arrival(String scheme, String host, int port) {
    /** That of a request; empty if it names no host that can be understood. */
    static Optional<Arrival> of(Context ctx, boolean secure) {
        String scheme = secure ? "https" : "http";
        String host = ctx.header("Host");
        if (host == null && "HTTP/2.0".equals(ctx.protocol())) {
            host = ctx.req().getServerName() + ":" + ctx.req().getServerPort(); // HTTP/2 has :authority instead
        }
        return host == null ? Optional.empty() : parsed(scheme + "://" + host).filter(it -> it.scheme.equals(scheme));
    }

    /** Whether a page of that origin came by the same address; {@code null} for a page that has none is no origin. */
    boolean isOrigin(String origin) {
        return parsed(origin).filter(this::equals).isPresent();
    }

    private static Optional<Arrival> parsed(String address) {
        try {
            URI uri = URI.create(address);
            boolean bare = uri.getRawUserInfo() == null
                    && (uri.getRawPath() == null || uri.getRawPath().isEmpty())
                    && uri.getRawQuery() == null
                    && uri.getRawFragment() == null;
            if (!bare || uri.getHost() == null || uri.getScheme() == null) {
                return Optional.empty();
            }
            String scheme = uri.getScheme().toLowerCase(Locale.ROOT);
            int port = uri.getPort() >= 0 ? uri.getPort() : "https".equals(scheme) ? 443 : 80;
            return Optional.of(new Arrival(scheme, uri.getHost().toLowerCase(Locale.ROOT), port));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
