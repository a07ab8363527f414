package spoonfall.probe.modbus;

/** What came back, judged. */
sealed interface Answer {
    /** Whether it settles the question, whatever follows. */
    default boolean settled() {
        return false;
    }

    /** Whether there is something that is no whole frame, and never will be unless more follows at once. */
    default boolean broken() {
        return false;
    }

    /**
     * Not all of it is there yet.
     *
     * @param begun whether there is more than the echo of the question
     */
    record Incomplete(boolean begun) implements Answer {
        @Override
        public boolean broken() {
            return begun;
        }
    }

    /**
     * The registers' bytes.
     *
     * @param data high byte first
     */
    @SuppressWarnings("ArrayRecordComponent") // read once, at once
    record Data(byte[] data) implements Answer {
        @Override
        public boolean settled() {
            return true;
        }
    }

    /**
     * The instrument says that it cannot.
     *
     * @param code exception code of the protocol
     */
    record Refused(int code) implements Answer {
        @Override
        public boolean settled() {
            return true;
        }
    }

    /**
     * It is no answer to what was asked, which may follow.
     *
     * @param why in a few words that go on from the instrument that was asked
     * @param damaged whether it is broken, rather than a whole frame of somebody else or to another question
     */
    record Wrong(String why, boolean damaged) implements Answer {
        @Override
        public boolean broken() {
            return damaged;
        }
    }
}
