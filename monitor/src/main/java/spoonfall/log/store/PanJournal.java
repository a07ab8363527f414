package spoonfall.log.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.UUID;
import spoonfall.cook.Unrecorded;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJournal;
import spoonfall.log.CookNote;
import spoonfall.log.Diary;
import spoonfall.log.Recalled;
import spoonfall.log.UnfinishedCook;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.write.Marked;
import spoonfall.log.store.write.PanWriter;

/** The journal of one pan: hands over to the recorder. */
final class PanJournal extends Pen implements CookJournal {
    private static final Unrecorded NOT_OPEN = new Unrecorded(
            "the record takes long to open, and what was in the pan or the canner before is not known yet",
            "Wait, or say again what is in the canner; what happens is written once it is open.");

    private final String pan;

    PanJournal(String pan, Recorder recorder) {
        super(recorder);
        this.pan = pan;
    }

    @Override
    public String pan() {
        return pan;
    }

    @Override
    public Recalled<UnfinishedCook> unfinished() {
        return asked(store -> store.latest(pan).flatMap(store::read))
                .flatMap(found -> Optional.of(found)
                        .filter(cook -> cook.endedMillis().isEmpty())
                        .map(cook -> new UnfinishedCook(
                                cook.id(),
                                cook.header(),
                                cook.inputs(),
                                cook.notes(),
                                cook.events().size(),
                                Math.max(cook.aliveMillis(), cook.latestMillis()),
                                recorder().now().since(cook.aliveAt()))));
    }

    @Override
    public Recalled<Integer> lastNumber() {
        return asked(store -> Optional.of(store.lastNumber(pan)));
    }

    @Override
    public void began(CookHeader header) {
        alive(0);
        String key = UUID.randomUUID().toString();
        recorder().offer((handle, writers) -> {
            PanWriter writer = new PanWriter(key, header);
            writer.begin(handle, marked());
            writers.put(this, writer);
        });
    }

    @Override
    public void resumed(UnfinishedCook cook) {
        alive(cook.aliveMillis());
        recorder().offer((handle, writers) -> {
            PanWriter writer = PanWriter.resuming(new CookStore(handle).whereabouts(cook.id()), cook.header());
            writer.begin(handle, marked());
            writers.put(this, writer);
        });
    }

    @Override
    public void input(CookInput input) {
        Recorder.Step step = (handle, writers) -> {
            if (writers.get(this) instanceof PanWriter writer) {
                writer.input(handle, input);
            }
        };
        if (input instanceof CookInput.Heard) {
            recorder().offerReading(step);
        } else {
            recorder().offer(step);
        }
    }

    @Override
    public void event(long atMillis, String kind, ObjectNode detail) {
        recorder().offer((handle, writers) -> {
            if (writers.get(this) instanceof PanWriter writer) {
                writer.event(handle, atMillis, kind, detail);
            }
        });
    }

    @Override
    public void note(CookNote note) {
        recorder().offer((handle, writers) -> {
            if (writers.get(this) instanceof PanWriter writer) {
                writer.note(handle, note);
            }
        });
    }

    @Override
    public void ended(long atMillis) {
        recorder().offer((handle, writers) -> {
            if (writers.remove(this) instanceof PanWriter writer) {
                writer.flush(handle);
                writer.mark(handle, new Marked(atMillis, recorder().now()));
                writer.end(handle, atMillis);
            }
        });
    }

    private static Unrecorded losing(Unrecorded words) {
        return new Unrecorded(
                words.why() + ", memory is full as well, and readings are lost to the record", words.act());
    }

    @Override
    public Diary afternoon() {
        return recorder().diary("afternoon " + pan);
    }

    @Override
    public Diary plan() {
        return recorder().diary("plan " + pan);
    }

    @Override
    public Optional<Unrecorded> trouble() {
        return recorder()
                .trouble()
                .map(words -> recorder().losing() ? losing(words) : words)
                .or(this::notOpen);
    }

    private Optional<Unrecorded> notOpen() {
        return recorder().opened() ? Optional.empty() : Optional.of(NOT_OPEN);
    }

    @Override
    public boolean healthy() {
        return recorder().healthy();
    }
}
