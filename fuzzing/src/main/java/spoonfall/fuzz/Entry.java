package spoonfall.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where Jazzer comes in, with the target by the system property {@code spoonfall.fuzz}. {@code every} takes all of them in one
 * run: the first byte of the input says which.
 */
public final class Entry {
    private static final String WANTED = System.getProperty("spoonfall.fuzz", "every");
    private static final Target[] ALL = Target.values();
    private static final Optional<Target> ONE = Arrays.stream(ALL)
            .filter(target -> target.wireName().equals(WANTED))
            .findFirst();

    private Entry() {}

    /** Tries one input. */
    public static void fuzzerTestOneInput(byte[] input) {
        if (ONE.isPresent()) {
            ONE.get().hold(input);
        } else if (input.length > 0) {
            ALL[(input[0] & 0xff) % ALL.length].hold(Arrays.copyOfRange(input, 1, input.length));
        }
    }

    /**
     * Prints the names of all targets; with two folders, a corpus and another one, writes that corpus into the other as {@code
     * every} takes it.
     */
    public static void main(String[] args) throws IOException {
        for (int i = 0; i < ALL.length; i++) {
            String name = ALL[i].wireName();
            System.out.println(name);
            if (args.length == 2) {
                mark(Path.of(args[0], name), (byte) i, Path.of(args[1], name));
            }
        }
    }

    private static void mark(Path corpus, byte mark, Path as) throws IOException {
        List<Path> inputs;
        try (Stream<Path> files = Files.list(corpus)) {
            inputs = files.toList();
        }
        for (Path input : inputs) {
            byte[] bytes = Files.readAllBytes(input);
            byte[] marked = new byte[bytes.length + 1];
            marked[0] = mark;
            System.arraycopy(bytes, 0, marked, 1, bytes.length);
            Files.write(as.resolveSibling(as.getFileName() + "-" + input.getFileName()), marked);
        }
    }
}
