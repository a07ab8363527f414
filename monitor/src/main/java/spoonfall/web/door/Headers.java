package spoonfall.web.door;

import io.javalin.http.Context;

/** What every answer tells browsers not to do. */
final class Headers {
    private static final String CONTENT =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; "
                    + "manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private static final String ABILITIES =
            "camera=(), microphone=(), geolocation=(), payment=(), usb=(), serial=(), midi=(), display-capture=()";

    private Headers() {}

    /** Puts them on. */
    static void put(Context ctx) {
        ctx.header("Content-Security-Policy", CONTENT);
        ctx.header("Permissions-Policy", ABILITIES);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("X-Frame-Options", "DENY");
        ctx.header("Referrer-Policy", "no-referrer");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
    }
}
