package spoonfall.cli.sample;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import spoonfall.log.DataFolder;

/** A folder for the demo's record that goes when the program ends. */
public final class SampleFolder {
    private static final List<String> FILES =
            List.of("cooks.db", "cooks.db-wal", "cooks.db-shm", "cooks.db.lock", "batches.csv");

    private SampleFolder() {}

    /** Makes one. */
    public static DataFolder make() {
        try {
            Path folder = Files.createTempDirectory("spoonfall-demo");
            folder.toFile()
                    .deleteOnExit(); // what is asked for last goes first, and all of it when the service has closed
            FILES.forEach(name -> folder.resolve(name).toFile().deleteOnExit());
            return new DataFolder(folder);
        } catch (IOException e) {
            throw new UncheckedIOException("no folder can be made for the demo: " + e.getMessage(), e);
        }
    }
}
