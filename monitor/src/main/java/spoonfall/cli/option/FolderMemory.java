package spoonfall.cli.option;

import spoonfall.kitchen.pantry.FoodBook;
import spoonfall.log.DataFolder;
import spoonfall.log.memory.BatchFile;
import spoonfall.log.memory.BatchMemory;
import spoonfall.log.memory.BookOutcomes;

/** The memory of a data folder: what was told of recorded batches, and a notebook. */
public final class FolderMemory {
    private FolderMemory() {}

    /** That of this folder; it may be asked by any thread. */
    public static BatchMemory of(DataFolder folder) {
        return new BatchMemory(
                folder,
                BatchFile.all(new BookOutcomes(folder.cooks()), new BatchFile(folder.notebook())),
                () -> FoodBook.withAny(folder.foods()));
    }
}
