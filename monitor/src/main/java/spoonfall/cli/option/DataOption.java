package spoonfall.cli.option;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import spoonfall.log.DataFolder;

/** The option that says where calibrations and cooks are kept. */
public final class DataOption {
    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            scope = CommandLine.ScopeType.INHERIT,
            description =
                    "Where calibrations and the record of all cooks are kept; a folder of this user's unless given.")
    private @Nullable Path data;

    /** The folder that was named, else that of this user. */
    public DataFolder folder() {
        return data == null ? DataFolder.ofUser() : new DataFolder(data);
    }
}
