package spoonfall.cli.log;

import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import spoonfall.cli.option.CookOptions;
import spoonfall.cli.option.Output;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.WholeCook;
import spoonfall.log.store.book.WholePhoto;
import spoonfall.photo.Photo;
import spoonfall.photo.PhotoException;
import spoonfall.photo.PhotoMaker;
import spoonfall.probe.trace.Trace;

/** {@code spoonfall log import}: takes a cook into the record. */
@Command(name = "import", description = "Take in a trace (CSV), or a whole cook that \"log export\" wrote (JSON).")
final class ImportCommand implements Callable<Integer> {
    private static final PhotoMaker PHOTOS = new PhotoMaker();

    @Spec
    private @Nullable CommandSpec spec;

    @ParentCommand
    private @Nullable LogCommand log;

    @Parameters(paramLabel = "FILE", description = "A trace, or a whole cook.")
    private Path file = Path.of("");

    @Mixin
    private CookOptions cook = new CookOptions();

    @Override
    public Integer call() {
        long id;
        if (ExportCommand.whole(file)) {
            WholeCook whole = WholeCook.read(file, ImportCommand::checked);
            try (CookLog record = LogCommand.of(log).openOrMake()) {
                id = record.take(whole);
            }
        } else {
            Trace trace = Trace.read(file);
            try (CookLog record = LogCommand.of(log).openOrMake()) {
                id = record.take(trace, cook.settings(trace.info()));
            }
        }
        Output.of(spec).println("Took " + file + " in as cook " + id + ".");
        return 0;
    }

    private static WholePhoto checked(String digest, Instant takenInAt, byte[] file) {
        try {
            Photo photo = PHOTOS.kept(file);
            return new WholePhoto(digest, takenInAt, photo.width(), photo.height(), photo.jpeg());
        } catch (PhotoException e) {
            throw new IllegalArgumentException("one of its photos: " + e.getMessage(), e);
        }
    }
}
