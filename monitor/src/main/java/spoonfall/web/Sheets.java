package spoonfall.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.zip.CRC32;

/** The style sheets of the page as one: a page that asks for one thing is there sooner than a page that asks for a dozen. */
final class Sheets {
    /** In the order in which they win over each other. */
    private static final List<String> NAMES = List.of(
            "style",
            "hands",
            "afternoon",
            "pans",
            "tests",
            "jars",
            "plan",
            "hand",
            "learn",
            "notes",
            "book",
            "lesson",
            "door");

    private final byte[] all;
    private final String tag;

    /** Reads all of them. */
    Sheets() {
        ByteArrayOutputStream together = new ByteArrayOutputStream();
        NAMES.forEach(name -> together.writeBytes(Shell.read(name + ".css")));
        all = together.toByteArray();
        CRC32 sum = new CRC32();
        sum.update(all);
        tag = "\"" + Long.toHexString(sum.getValue()) + "\"";
    }

    /** Answers with all of them, or that they are still the same. */
    void all(Context ctx) {
        ctx.header("Cache-Control", "no-cache").header("ETag", tag);
        if (tag.equals(ctx.header("If-None-Match"))) {
            ctx.status(HttpStatus.NOT_MODIFIED);
        } else {
            ctx.contentType("text/css; charset=utf-8").result(all);
        }
    }
}
