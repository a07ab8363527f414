package spoonfall.log.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.cook.Unrecorded;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJournal;
import spoonfall.log.UnfinishedCook;

/** The journal of one pan: hands over to the recorder. */
final class PanJournal implements CookJournal {
    private static final Logger LOG = LoggerFactory.getLogger(PanJournal.class);
    private static final Duration SETTLES_WITHIN = Duration.ofMillis(500);
    private static final long ANSWERS_WITHIN_S = 20;

    private final String pan;
    private final Recorder recorder;
    private volatile Alive alive = new Alive(0, System.nanoTime());

    PanJournal(String pan, Recorder recorder) {
        this.pan = pan;
        this.recorder = recorder;
    }

    /** How far the cook was watched, and when by our own monotonic clock. */
    private record Alive(long millis, long atNanos) {}

    @Override
    public String pan() {
        return pan;
    }

    @Override
    public Optional<UnfinishedCook> unfinished() {
        return asked(store -> store.latest(pan).flatMap(store::read))
                .flatMap(found -> found)
                .filter(cook -> cook.endedMillis().isEmpty())
                .map(cook -> new UnfinishedCook(
                        cook.id(),
                        cook.header(),
                        cook.inputs(),
                        cook.events().size(),
                        Math.max(cook.aliveMillis(), cook.latestMillis()),
                        recorder.now().since(cook.aliveAt())));
    }

    @Override
    public int lastNumber() {
        return asked(store -> store.lastNumber(pan)).orElse(0);
    }

    private <T> Optional<T> asked(Function<CookStore, T> question) {
        try {
            return Optional.of(recorder.ask(question).get(ANSWERS_WITHIN_S, TimeUnit.SECONDS));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException e) {
            LOG.debug("the record did not answer", e);
        }
        return Optional.empty();
    }

    @Override
    public void began(CookHeader header) {
        alive(0);
        String key = UUID.randomUUID().toString();
        recorder.offer((handle, writers) -> {
            PanWriter writer = new PanWriter(key, header);
            writer.begin(handle, marked());
            writers.put(this, writer);
        });
    }

    @Override
    public void resumed(UnfinishedCook cook) {
        alive(cook.aliveMillis());
        recorder.offer((handle, writers) -> {
            PanWriter writer = PanWriter.resuming(new CookStore(handle).whereabouts(cook.id()), cook.header());
            writer.begin(handle, marked());
            writers.put(this, writer);
        });
    }

    @Override
    public void input(CookInput input) {
        Recorder.Step step = (handle, writers) -> {
            PanWriter writer = writers.get(this);
            if (writer != null) {
                writer.input(handle, input);
            }
        };
        if (input instanceof CookInput.Heard) {
            recorder.offerReading(step);
        } else {
            recorder.offer(step);
        }
    }

    @Override
    public void event(long atMillis, String kind, ObjectNode detail) {
        recorder.offer((handle, writers) -> {
            PanWriter writer = writers.get(this);
            if (writer != null) {
                writer.event(handle, atMillis, kind, detail);
            }
        });
    }

    @Override
    public void alive(long atMillis) {
        alive = new Alive(atMillis, System.nanoTime());
    }

    /** How far the cook was watched, by clocks that outlast this run. */
    Marked marked() {
        Alive latest = alive;
        long agoMillis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - latest.atNanos());
        return new Marked(latest.millis(), recorder.now().minusMillis(agoMillis));
    }

    @Override
    public void ended(long atMillis) {
        recorder.offer((handle, writers) -> {
            PanWriter writer = writers.remove(this);
            if (writer != null) {
                writer.flush(handle);
                writer.mark(handle, new Marked(atMillis, recorder.now()));
                writer.end(handle, atMillis);
            }
        });
    }

    @Override
    public boolean settle() {
        return recorder.settle(SETTLES_WITHIN);
    }

    @Override
    public Optional<Unrecorded> trouble() {
        return recorder.trouble();
    }
}
