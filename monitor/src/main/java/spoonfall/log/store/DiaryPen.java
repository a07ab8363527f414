package spoonfall.log.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.UUID;
import spoonfall.log.Diary;
import spoonfall.log.Recalled;
import spoonfall.log.store.diary.DiaryStore;
import spoonfall.log.store.diary.DiaryWriter;

/** The diary of one subject: hands over to the recorder. */
final class DiaryPen extends Pen implements Diary {
    private final String subject;

    DiaryPen(String subject, Recorder recorder) {
        super(recorder);
        this.subject = subject;
    }

    @Override
    public Recalled<Left> left() {
        return asked(store -> new DiaryStore(store.handle()).newest(subject))
                .flatMap(found -> Optional.of(found.left(recorder().now())));
    }

    @Override
    public void began(ObjectNode header) {
        alive(0);
        String key = UUID.randomUUID().toString();
        recorder().offer((handle, writers) -> {
            DiaryWriter writer = new DiaryWriter(key, subject, header, 0);
            writer.begin(handle, marked());
            writers.put(this, writer);
        });
    }

    @Override
    public void resumed(Left left) {
        alive(left.aliveMillis());
        recorder().offer((handle, writers) -> {
            String key = new DiaryStore(handle).key(left.id());
            DiaryWriter writer =
                    new DiaryWriter(key, subject, left.header(), left.lines().size());
            writer.begin(handle, marked());
            writers.put(this, writer);
        });
    }

    @Override
    public void line(Line line) {
        recorder().offer((handle, writers) -> {
            if (writers.get(this) instanceof DiaryWriter writer) {
                writer.line(handle, line);
            }
        });
    }
}
