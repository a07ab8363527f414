package spoonfall.log.store;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import spoonfall.book.Made;
import spoonfall.book.Outcome;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookNote;
import spoonfall.log.store.book.OutcomeRows;
import spoonfall.log.store.book.PhotoRows;
import spoonfall.log.store.book.WholePhoto;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.Moment;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.write.Marked;
import spoonfall.log.store.write.PanWriter;

/**
 * A whole cook outside the record: what went into it, what came out, what was said of it and its photos. As JSON it follows {@code
 * docs/cook.schema.json}; {@link WholeCookJson} says how.
 *
 * @param header what was known at its first reading
 * @param inputs what went into it, in order
 * @param events what came out of it, in order
 * @param notes what somebody wrote of it
 * @param aliveMillis milliseconds of the cook up to which it was watched
 * @param endedMillis milliseconds of the cook at which it was over
 * @param made what was made, as far as somebody said
 * @param outcomes how it came out, as far as somebody said
 * @param photos its photos, in order
 */
public record WholeCook(
        CookHeader header,
        List<CookInput> inputs,
        List<StoredCook.Event> events,
        List<CookNote> notes,
        long aliveMillis,
        long endedMillis,
        Made made,
        List<Outcome> outcomes,
        List<WholePhoto> photos) {
    private static final long LARGEST_BYTES = 128L * 1024 * 1024;
    private static final int DEEPEST = 40;
    /** A photo of twelve megabytes, in base64. */
    private static final int LONGEST_TEXT = 17_000_000;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxStringLength(LONGEST_TEXT)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /** Keeps copies of the lists. */
    public WholeCook {
        inputs = List.copyOf(inputs);
        events = List.copyOf(events);
        notes = List.copyOf(notes);
        outcomes = List.copyOf(outcomes);
        photos = List.copyOf(photos);
    }

    /** A cook of the record; one that nobody ended is over where it was last watched. */
    static WholeCook of(StoredCook cook, Made made, List<Outcome> outcomes, List<WholePhoto> photos) {
        return new WholeCook(
                cook.header(),
                cook.inputs(),
                cook.events(),
                cook.notes(),
                cook.aliveMillis(),
                cook.endedMillis().orElse(cook.aliveMillis()),
                made,
                outcomes,
                photos);
    }

    /**
     * Reads a file.
     *
     * @param photos looks into each photo that is in it
     * @throws IllegalArgumentException with one line that says what is wrong with it
     */
    public static WholeCook read(Path file, WholePhoto.Check photos) {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new IllegalArgumentException(file + " is larger than 128 MiB, which no cook is");
            }
            JsonNode root = MAPPER.readTree(Files.readAllBytes(file));
            if (root instanceof ObjectNode cook) {
                return WholeCookJson.read(cook, photos);
            }
            throw new IllegalArgumentException("it is not a JSON object");
        } catch (JacksonException e) {
            throw new IllegalArgumentException(file + " is not JSON: " + e.getOriginalMessage(), e);
        } catch (IOException e) {
            throw new IllegalArgumentException(file + " cannot be read; name a file that is there", e);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(file + " is no cook: " + e.getMessage(), e);
        }
    }

    /** All of it as JSON. */
    public String json() {
        try {
            return MAPPER.writeValueAsString(WholeCookJson.write(this));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Writes it as a cook apart from those of a pan, in a transaction of somebody else's; returns where it is kept. */
    long write(Handle handle, int number) {
        CookHeader apart = new CookHeader(
                number,
                CookStore.IMPORTED,
                header.kitchen(),
                header.batch(),
                header.source(),
                header.speed(),
                header.startedAt(),
                header.asked(),
                header.basis(),
                header.corrections());
        PanWriter writer = new PanWriter(UUID.randomUUID().toString(), apart);
        writer.begin(handle, new Marked(aliveMillis, Moment.now()));
        inputs.forEach(input -> writer.input(handle, input));
        events.forEach(event -> writer.event(handle, event.atMillis(), event.kind(), event.detail()));
        notes.forEach(note -> writer.note(handle, note));
        writer.flush(handle);
        writer.end(handle, endedMillis);
        OutcomeRows.write(handle, writer.id(), made);
        outcomes.forEach(outcome -> OutcomeRows.write(handle, writer.id(), outcome, Instant.now()));
        photos.forEach(photo -> PhotoRows.add(handle, writer.id(), photo));
        return writer.id();
    }
}
