package spoonfall.cli.sample;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import spoonfall.probe.trace.Trace;

/** The sample cook that comes with the program, a copy of the first one in sample-traces. */
public final class SampleTrace {
    private static final String NAME = "clean.csv";

    private SampleTrace() {}

    /** Reads it from the program's own jar. */
    public static Trace load() {
        try {
            Path folder = Files.createTempDirectory("spoonfall");
            Path csv = folder.resolve(NAME);
            Path metadata = folder.resolve(NAME + "-metadata.json");
            try {
                copy(NAME, csv);
                copy(NAME + "-metadata.json", metadata);
                return Trace.read(csv);
            } finally {
                Files.deleteIfExists(csv);
                Files.deleteIfExists(metadata);
                Files.deleteIfExists(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the sample cook cannot be read: " + e.getMessage(), e);
        }
    }

    private static void copy(String name, Path to) throws IOException {
        try (InputStream in = SampleTrace.class.getResourceAsStream("/sample-traces/" + name)) {
            if (in == null) {
                throw new IOException(name + " is not in the program's jar");
            }
            Files.copy(in, to);
        }
    }
}
