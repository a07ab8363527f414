package spoonfall.log.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.log.store.file.Fault;
import spoonfall.log.store.write.Writer;

/**
 * What goes into the next commit, in order. A step that is wrong in itself is left out and counted: tried for ever, it would hold up
 * all that comes after it. Used by the recorder's thread; what it counts by any.
 */
final class Batch {
    private static final Logger LOG = LoggerFactory.getLogger(Batch.class);

    private final List<Recorder.Step> steps = new ArrayList<>();
    private final AtomicLong leftOut = new AtomicLong();

    /** The steps, to be filled. */
    List<Recorder.Step> steps() {
        return steps;
    }

    /** How many were left out so far. */
    long leftOut() {
        return leftOut.get();
    }

    /**
     * Writes them in one transaction. If it comes to nothing, the writers that are given still stand where they stood.
     *
     * @return the writers that go on from there
     */
    Map<Pen, Writer> commit(Handle handle, Map<Pen, Writer> writers) {
        while (true) {
            Map<Pen, Writer> next = new LinkedHashMap<>();
            writers.forEach((journal, writer) -> next.put(journal, writer.copy()));
            try {
                handle.useTransaction(open -> write(open, next));
                steps.clear();
                return next;
            } catch (WrongStepException e) {
                leaveOut(e); // and once more without it, for its transaction came to nothing
            }
        }
    }

    private void write(Handle handle, Map<Pen, Writer> writers) {
        writers.forEach((journal, writer) -> writer.begin(handle, journal.marked()));
        writeSteps(handle, writers);
        writers.forEach((journal, writer) -> {
            writer.flush(handle);
            writer.mark(handle, journal.marked());
        });
    }

    private void writeSteps(Handle handle, Map<Pen, Writer> writers) {
        for (Recorder.Step step : steps) {
            try {
                step.write(handle, writers);
            } catch (RuntimeException e) {
                if (Fault.isOfTheFile(e)) {
                    throw e;
                }
                throw new WrongStepException(step, e);
            }
        }
    }

    private void leaveOut(WrongStepException wrong) {
        steps.remove(wrong.step);
        LOG.error(
                "something of a cook could not be written and is not in the record ({} so far); all else is",
                leftOut.incrementAndGet(),
                wrong.getCause());
    }

    /** A step that can never be written. */
    private static final class WrongStepException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient Recorder.Step step;

        WrongStepException(Recorder.Step step, RuntimeException cause) {
            super(cause);
            this.step = step;
        }
    }
}
