package spoonfall.log.store.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The rows of photos. */
public final class PhotoRows {
    /** As many photos fit into a batch. */
    public static final int MOST = 20;

    private static final String WITHOUT_BYTES = "SELECT id, wall_ms, width, height FROM photo";

    private PhotoRows() {}

    static List<BookPhoto> list(Handle handle, long cook) {
        return handle.createQuery(WITHOUT_BYTES + " WHERE cook = :cook ORDER BY id")
                .bind("cook", cook)
                .map((row, context) -> photo(row))
                .list();
    }

    private static BookPhoto photo(ResultSet row) throws SQLException {
        return new BookPhoto(
                row.getLong("id"),
                Instant.ofEpochMilli(row.getLong("wall_ms")),
                row.getInt("width"),
                row.getInt("height"));
    }

    /** The photos of a cook with their bytes. */
    public static List<WholePhoto> whole(Handle handle, long cook) {
        return handle.createQuery(
                        "SELECT digest, wall_ms, width, height, jpeg FROM photo WHERE cook = :cook ORDER BY id")
                .bind("cook", cook)
                .map((row, context) -> new WholePhoto(
                        row.getString("digest"),
                        Instant.ofEpochMilli(row.getLong("wall_ms")),
                        row.getInt("width"),
                        row.getInt("height"),
                        row.getBytes("jpeg")))
                .list();
    }

    /** Takes one in; one that is there already is kept once. */
    public static BookPhoto add(Handle handle, long cook, WholePhoto photo) {
        Optional<BookPhoto> there = find(handle, cook, photo.digest());
        if (there.isPresent()) {
            return there.get();
        }
        if (list(handle, cook).size() >= MOST) {
            throw new IllegalArgumentException(
                    "cook " + cook + " has " + MOST + " photos, and no more fit; take one out first");
        }
        handle.createUpdate("INSERT INTO photo (cook, digest, wall_ms, width, height, jpeg)"
                        + " VALUES (:cook, :digest, :wall, :width, :height, :jpeg)")
                .bind("cook", cook)
                .bind("digest", photo.digest())
                .bind("wall", photo.takenInAt().toEpochMilli())
                .bind("width", photo.width())
                .bind("height", photo.height())
                .bind("jpeg", photo.jpeg())
                .execute();
        return find(handle, cook, photo.digest()).orElseThrow();
    }

    private static Optional<BookPhoto> find(Handle handle, long cook, String digest) {
        return handle.createQuery(WITHOUT_BYTES + " WHERE cook = :cook AND digest = :digest")
                .bind("cook", cook)
                .bind("digest", digest)
                .map((row, context) -> photo(row))
                .findOne();
    }

    static Optional<byte[]> jpeg(Handle handle, long cook, long photo) {
        return handle.createQuery("SELECT jpeg FROM photo WHERE id = :photo AND cook = :cook")
                .bind("photo", photo)
                .bind("cook", cook)
                .mapTo(byte[].class)
                .findOne();
    }

    static boolean remove(Handle handle, long cook, long photo) {
        return handle.execute("DELETE FROM photo WHERE id = ? AND cook = ?", photo, cook) > 0;
    }
}
