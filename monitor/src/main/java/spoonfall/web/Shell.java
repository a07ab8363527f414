package spoonfall.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * The worker of the installed page. In front of it stands the build, a digest of all that the worker keeps: with a new build browsers take
 * the new worker, which keeps everything afresh.
 */
final class Shell {
    private static final String WORKER = "sw.js";
    private static final List<String> KEPT = List.of(WORKER, "offline.html", "offline.js", "offline.css", "mark.svg");
    private static final int DIGITS = 16;

    private final String worker;

    /** Reads what the worker keeps. */
    Shell() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            KEPT.forEach(name -> digest.update(read(name)));
            String build = HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
            worker = "const BUILD = '" + build + "';\n" + new String(read(WORKER), StandardCharsets.UTF_8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Answers with the worker, which is asked for anew each time. */
    void worker(Context ctx) {
        ctx.header("Cache-Control", "no-cache");
        ctx.contentType("text/javascript; charset=utf-8").result(worker);
    }

    /** A file of the page. */
    static byte[] read(String name) {
        try (InputStream in = Shell.class.getResourceAsStream("/dashboard/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the page's " + name + " is missing; build Spoonfall again");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
