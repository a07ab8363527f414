package spoonfall.canning;

import java.util.List;

/** What the published tables say of a batch of jars: a time, or that none is published. */
public sealed interface ProcessingAnswer {
    /**
     * A time.
     *
     * @param minutes whole minutes at the full boil or in steady steam
     * @param steriliseMinutes how long empty jars are boiled to sterilise them here, in minutes
     * @param reasons sentences, with numbers, that say why
     * @param cautions what must be so for the time to hold, in sentences
     * @param sources where each part is published
     */
    record Time(int minutes, int steriliseMinutes, List<String> reasons, List<String> cautions, List<String> sources)
            implements ProcessingAnswer {
        /** Copies the lists. */
        public Time {
            reasons = List.copyOf(reasons);
            cautions = List.copyOf(cautions);
            sources = List.copyOf(sources);
        }
    }

    /**
     * No time: this is outside of what is published.
     *
     * @param why one sentence that says why
     * @param ask one sentence that says whom to ask
     */
    record None(String why, String ask) implements ProcessingAnswer {
        /** Both sentences. */
        public String text() {
            return why + " " + ask;
        }
    }
}
