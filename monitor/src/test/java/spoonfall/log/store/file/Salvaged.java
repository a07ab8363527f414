package spoonfall.log.store.file;

import java.nio.file.Path;
import java.sql.SQLException;

/** What is saved of a damaged file, for the tests of those whose rows they are. */
public final class Salvaged {
    private Salvaged() {}

    /** Saves what can be read of a file; says how many cooks that were. */
    public static int cooks(Database fresh, Path damaged) throws SQLException {
        return Salvage.into(fresh, damaged).cooks();
    }
}
