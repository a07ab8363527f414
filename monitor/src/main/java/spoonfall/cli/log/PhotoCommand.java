package spoonfall.cli.log;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import spoonfall.cli.option.CommandException;
import spoonfall.log.store.book.BookPhoto;
import spoonfall.photo.Photo;
import spoonfall.photo.PhotoException;
import spoonfall.photo.PhotoMaker;

/** {@code spoonfall log photo}: takes a photo into the book. */
@Command(
        name = "photo",
        description = "Keep a photo with a cook: a JPEG or PNG, made anew without its place and other data.")
final class PhotoCommand extends CookCommand {
    @Parameters(index = "1", paramLabel = "FILE", description = "The photo.")
    private Path file = Path.of("");

    @Override
    public Integer call() {
        try (InputStream in = Files.newInputStream(file)) {
            Photo photo = new PhotoMaker().remade(in.readNBytes(PhotoMaker.MOST_BYTES + 1));
            BookPhoto kept = log().book().add(id(), photo.digest(), photo.width(), photo.height(), photo.jpeg());
            out().println("Cook " + id() + ": photo " + kept.id() + ", " + kept.width() + " by " + kept.height()
                    + " pixels.");
            return 0;
        } catch (PhotoException e) {
            throw new CommandException(file + ": " + e.getMessage(), e);
        } catch (IOException e) {
            throw new CommandException(file + " cannot be read; name a photo that is there", e);
        }
    }
}
