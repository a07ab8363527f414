package spoonfall.cli.log;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import spoonfall.cli.option.NewFile;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.book.BookPhoto;

/** {@code spoonfall log photos}: the photos of a cook as files. */
@Command(name = "photos", description = "Write the photos of a cook into a folder that is there, as JPEG files.")
final class PhotosCommand extends CookCommand {
    @Parameters(index = "1", paramLabel = "FOLDER", description = "Where to.")
    private Path folder = Path.of("");

    @Override
    public Integer call() {
        BatchBook book = log().book();
        List<BookPhoto> photos = book.page(id()).photos();
        for (BookPhoto photo : photos) {
            Path file = folder.resolve("cook-" + id() + "-photo-" + photo.id() + ".jpg");
            book.photo(id(), photo.id()).ifPresent(jpeg -> NewFile.write(file, jpeg));
        }
        out().println("Wrote " + photos.size() + (photos.size() == 1 ? " photo" : " photos") + " of cook " + id()
                + " into " + folder + ".");
        return 0;
    }
}
