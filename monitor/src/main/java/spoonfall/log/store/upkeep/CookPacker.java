package spoonfall.log.store.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import spoonfall.log.CookInput;
import spoonfall.log.store.chunk.ChunkReader;
import spoonfall.log.store.chunk.ChunkWriter;
import spoonfall.log.store.chunk.PackedChunk;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.StoredCook;

/** Packs the readings of cooks that are over into little room, without loss: one cook at a time, and only what reads back the same. */
public final class CookPacker {
    /** Some hours of a reading a second. */
    private static final int READINGS_A_CHUNK = 20_000;

    private CookPacker() {}

    /** Packs one cook; says whether there may be another one. */
    public static boolean next(Handle handle) {
        Optional<Long> due = handle.createQuery(
                        "SELECT id FROM cook WHERE packed = 0 AND ended_ms IS NOT NULL ORDER BY id LIMIT 1")
                .mapTo(Long.class)
                .findOne();
        due.ifPresent(id -> handle.useTransaction(writing -> {
            new CookStore(writing).read(id).filter(cook -> whole(writing, cook)).ifPresent(cook -> pack(writing, cook));
            writing.execute("UPDATE cook SET packed = 1 WHERE id = ?", id);
        }));
        return due.isPresent();
    }

    /** Of a damaged cook nothing is moved; one with little in it is left. */
    private static boolean whole(Handle handle, StoredCook cook) {
        long last = handle.createQuery("SELECT coalesce(max(first + count), 0) FROM chunk WHERE cook = :cook")
                .bind("cook", cook.id())
                .mapTo(Long.class)
                .one();
        return cook.damaged() == 0 && last == readings(cook).size() && last > 0;
    }

    private static List<CookInput.Heard> readings(StoredCook cook) {
        List<CookInput.Heard> readings = new ArrayList<>();
        for (CookInput input : cook.inputs()) {
            if (input instanceof CookInput.Heard heard) {
                readings.add(heard);
            }
        }
        return readings;
    }

    private static void pack(Handle handle, StoredCook cook) {
        List<String> probes = cook.header().basis().probes();
        List<CookInput.Heard> readings = readings(cook);
        handle.execute("DELETE FROM chunk WHERE cook = ?", cook.id());
        for (int first = 0; first < readings.size(); first += READINGS_A_CHUNK) {
            List<CookInput.Heard> some = readings.subList(first, Math.min(readings.size(), first + READINGS_A_CHUNK));
            ChunkWriter writer = new ChunkWriter(probes.size());
            some.forEach(heard -> writer.add(probes.indexOf(heard.probe()), heard));
            byte[] packed = PackedChunk.of(writer.toBytes());
            if (!ChunkReader.read(packed, probes).equals(some)) {
                throw new IllegalStateException("packed readings do not read back the same");
            }
            handle.createUpdate(
                            "INSERT INTO chunk (cook, first, count, readings) VALUES (:cook, :first, :count, :readings)")
                    .bind("cook", cook.id())
                    .bind("first", first)
                    .bind("count", some.size())
                    .bind("readings", packed)
                    .execute();
        }
    }
}
