package spoonfall.web.book;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.book.BookPhoto;
import spoonfall.photo.Photo;
import spoonfall.photo.PhotoException;
import spoonfall.photo.PhotoMaker;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls by which photos come into the batch book and out of it. A file's name and what it says of itself are never kept. */
public final class PhotoRoutes {
    private static final Pattern TAKES = Pattern.compile("/api/book/\\d{1,18}/photos");

    /** What is too long by less than so many times is taken in to be refused. */
    private static final int HEARD_OUT_TIMES = 4;

    private final Supplier<BatchBook> book;
    private final PhotoMaker maker = new PhotoMaker();

    PhotoRoutes(Supplier<BatchBook> book) {
        this.book = book;
    }

    void add(RoutesConfig routes) {
        routes.post("/api/book/{id}/photos", BookRoutes.known(this::take));
        routes.get("/api/book/{id}/photos/{photo}", BookRoutes.known(this::show));
        routes.delete("/api/book/{id}/photos/{photo}", BookRoutes.known(this::remove));
    }

    /** As many bytes may come with a request: more than a photo's where one is taken in, for who is refused while sending hears no answer. */
    public static int mostBytes(String method, String path) {
        boolean photo = method.equals("POST") && TAKES.matcher(path).matches();
        return photo ? HEARD_OUT_TIMES * PhotoMaker.MOST_BYTES : Asked.LARGEST_BYTES;
    }

    private void take(Context ctx) {
        long id = BookRoutes.number(ctx, "id");
        BatchBook kept = book.get();
        try {
            // one byte more than fits is enough to know that it does not
            byte[] sent = ctx.bodyInputStream().readNBytes(PhotoMaker.MOST_BYTES + 1);
            if (sent.length > PhotoMaker.MOST_BYTES) {
                hearOut(ctx.bodyInputStream());
                throw new ContentTooLargeResponse(PhotoMaker.TOO_LARGE);
            }
            kept.refuseUnknown(id); // who is still sending would hear no answer
            Photo photo = maker.remade(sent);
            BookPhoto added = kept.add(id, photo.digest(), photo.width(), photo.height(), photo.jpeg());
            Answers.json(ctx, 201, view(added));
        } catch (PhotoException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        } catch (IOException e) {
            throw new Refusal("that photo did not arrive; send it again", e);
        }
    }

    private static void hearOut(InputStream rest) throws IOException {
        byte[] part = new byte[64 * 1024];
        for (long left = (HEARD_OUT_TIMES - 1L) * PhotoMaker.MOST_BYTES; left > 0; ) {
            int read = rest.read(part);
            if (read < 0) {
                return;
            }
            left -= read;
        }
    }

    private void show(Context ctx) {
        byte[] jpeg = book.get()
                .photo(BookRoutes.number(ctx, "id"), BookRoutes.number(ctx, "photo"))
                .orElseThrow(() -> new NotFoundResponse("there is no such photo in the book"));
        ctx.header("Cache-Control", "private, no-cache");
        ctx.contentType("image/jpeg").result(jpeg);
    }

    private void remove(Context ctx) {
        if (!book.get().removePhoto(BookRoutes.number(ctx, "id"), BookRoutes.number(ctx, "photo"))) {
            throw new NotFoundResponse("there is no such photo in the book");
        }
        Answers.json(ctx, 200, JsonNodeFactory.instance.objectNode());
    }

    /** A photo for the page. */
    static ObjectNode view(BookPhoto photo) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("id", photo.id())
                .put("width", photo.width())
                .put("height", photo.height());
    }
}
