package spoonfall.probe;

/**
 * A probe and what the kitchen calls it.
 *
 * @param name its name, not blank
 * @param spec which probe to open and how
 */
public record NamedSpec(String name, ProbeSpec spec) {
    /** Validates the name. */
    public NamedSpec {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a probe needs a name, such as pan, not \"" + name + "\"");
        }
    }
}
