package spoonfall.log;

import java.nio.file.Path;

/**
 * Where Spoonfall keeps what must last: the calibrations, the record of all cooks, the devices that were let in.
 *
 * @param path the folder, which need not be there yet
 */
public record DataFolder(Path path) {
    /** The folder of this user: below XDG_CONFIG_HOME, else below .config in the home folder. */
    public static DataFolder ofUser() {
        String config = System.getenv("XDG_CONFIG_HOME");
        Path home = config == null || config.isBlank()
                ? Path.of(System.getProperty("user.home", "."), ".config")
                : Path.of(config);
        return new DataFolder(home.resolve("spoonfall"));
    }

    /** The calibrations of all thermometers. */
    public CalibrationBook calibrations() {
        return new CalibrationBook(path.resolve("calibrations.json"));
    }

    /** The file with foods of the cook's own, which need not be there. */
    public Path foods() {
        return path.resolve("foods.csv");
    }

    /** The file with what earlier cooks showed of the hobs, which need not be there. */
    public Path hob() {
        return path.resolve("hob.json");
    }

    /** The file with the devices that were let in from the network. */
    public Path devices() {
        return path.resolve("devices.json");
    }

    /** The file with the record of all cooks. */
    public Path cooks() {
        return path.resolve("cooks.db");
    }

    /** The batches of a notebook, which were not recorded; need not be there. */
    public Path notebook() {
        return path.resolve("batches.csv");
    }
}
