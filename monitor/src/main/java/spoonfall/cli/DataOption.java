package spoonfall.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spoonfall.log.DataFolder;

/** The option that says where calibrations and cooks are kept. */
final class DataOption {
    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description =
                    "Where calibrations and the record of all cooks are kept; a folder of this user's unless given.")
    private @Nullable Path data;

    DataFolder folder() {
        return data == null ? DataFolder.ofUser() : new DataFolder(data);
    }
}
