package spoonfall.afternoon;

/** Something that moves an afternoon on. An afternoon is what its marks make of its notes, one after the other. */
sealed interface Mark {
    /** Seconds of the afternoon. */
    double t();

    /** What takes it back, such as "the jars are full". */
    String words();

    /** The probe saw something. */
    record Seen(double t, Sight sight) implements Mark {
        @Override
        public String words() {
            return sight.words();
        }
    }

    /** A step was begun, and all before it are over. */
    record Begun(double t, String step, By by, String words) implements Mark {}

    /** A step was ended, and all before it are over. */
    record Ended(double t, String step, By by, String words) implements Mark {}

    /** A step is left out this time. */
    record Skipped(double t, String step, String words) implements Mark {}

    /** A preparation was done. */
    record Prepared(double t, String preparation, String words) implements Mark {}

    /** The notes are others from now on. */
    record Edited(double t, BatchNotes notes, String words) implements Mark {}
}
