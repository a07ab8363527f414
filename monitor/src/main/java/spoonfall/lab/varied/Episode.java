package spoonfall.lab.varied;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;

/** Something that happens to a cook once: when it begins, how long it lasts, what it does, and what it is called. */
final class Episode {
    private final Trigger trigger;
    private final double lastsS;
    private final List<String> begins;
    private final List<String> ends;
    private final Effect effect;
    private OptionalDouble beganT = OptionalDouble.empty();
    private boolean over;

    /** When an episode begins. */
    interface Trigger {
        /**
         * Whether it begins now.
         *
         * @param boiledS seconds since it first boiled; negative before
         * @param part how much of the rise is reached, 1 at the gel point
         */
        boolean due(double boiledS, double part);

        /** When so much of the rise is reached. */
        static Trigger atPart(double wanted) {
            return (boiledS, part) -> boiledS > 0 && part >= wanted;
        }

        /** So long after it first boiled. */
        static Trigger afterBoil(double seconds) {
            return (boiledS, part) -> boiledS >= seconds;
        }
    }

    /** What an episode does to a moment, {@code sinceS} after it began. */
    interface Effect {
        /** Changes the moment, or the pan. */
        void apply(Moment moment, SyrupPan pan, double sinceS);
    }

    Episode(Trigger trigger, double lastsS, List<String> begins, List<String> ends, Effect effect) {
        this.trigger = trigger;
        this.lastsS = lastsS;
        this.begins = begins;
        this.ends = ends;
        this.effect = effect;
    }

    /** Takes part in a moment; what begins or ends is told to {@code labels} with its time. */
    void take(double t, double boiledS, double part, Moment moment, SyrupPan pan, BiConsumer<Double, String> labels) {
        if (over) {
            return;
        }
        if (beganT.isEmpty()) {
            if (!trigger.due(boiledS, part)) {
                return;
            }
            beganT = OptionalDouble.of(t);
            begins.forEach(what -> labels.accept(t, what));
        }
        double sinceS = t - beganT.getAsDouble();
        if (sinceS >= lastsS) {
            over = true;
            ends.forEach(what -> labels.accept(t, what));
            return;
        }
        effect.apply(moment, pan, sinceS);
    }
}
