package spoonfall.cli.option;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes a file that is not there yet: nothing is ever written over. */
public final class NewFile {
    private NewFile() {}

    /** Writes it; a file that is there already is a {@link CommandException}. */
    public static void write(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw new CommandException(file + " is there already; name a file that is not", e);
        } catch (IOException e) {
            throw new CommandException(file + " cannot be written; name one in a folder that is there", e);
        }
    }
}
