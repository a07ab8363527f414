package spoonfall.announce;

import static java.nio.file.attribute.PosixFilePermission.OWNER_EXECUTE;
import static java.nio.file.attribute.PosixFilePermission.OWNER_READ;
import static java.nio.file.attribute.PosixFilePermission.OWNER_WRITE;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** A real program that writes down what it is given, an argument a line, and then does what the test wants. */
final class Script {
    private final Path file;
    private final Path heard;

    Script(Path folder, String then) throws IOException {
        file = folder.resolve("say aloud");
        heard = folder.resolve("heard.txt");
        Files.writeString(heard, "");
        Files.writeString(
                file,
                "#!/bin/sh\nfor each in \"$@\"; do printf '%s\\n' \"$each\" >> '" + heard + "'; done\n" + then + "\n");
        Files.setPosixFilePermissions(file, Set.of(OWNER_READ, OWNER_WRITE, OWNER_EXECUTE));
    }

    /** The program by its path, which has a space in it, before some fixed arguments. */
    LocalProgram program(String arguments, long longestMillis) {
        return LocalProgram.of("'" + file + "' " + arguments, "", longestMillis);
    }

    List<String> heard() {
        try {
            return Files.readAllLines(heard);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
