package spoonfall.canner;

import java.util.Locale;

/** What a tap makes of a batch. A tap that says what is so already changes nothing. */
final class CannerTaps {
    private CannerTaps() {}

    /**
     * How the batch stands after a tap.
     *
     * @throws NotNow if that cannot be so now
     */
    static CannerBatch after(CannerBatch batch, CannerTap tap, double now, BoilSense sense) {
        return switch (tap) {
            case BOILS -> boils(batch, now, sense);
            case BOIL_LOST -> boilLost(batch, now);
            case BOILED -> boiled(batch, now);
            case BY_TAPS -> byTaps(batch, now);
            case BY_PROBE ->
                batch.byTaps() ? batch.with(batch.run().vouched(now)).byTaps(false) : batch;
            case AGAIN -> again(batch, now);
            case HEAT_OFF -> heatOff(batch, now);
            case LIFTED -> throw tooEarlyToLift(batch, now);
            case CLEAR -> throw new IllegalArgumentException("a batch that is cleared is none");
        };
    }

    private static CannerBatch boils(CannerBatch batch, double now, BoilSense sense) {
        boolean believed = !batch.byTaps() && sense.speaks(now);
        return switch (batch.phase()) {
            case WAITING, BOIL_LOST -> {
                if (believed && sense.contradicts(batch.load().waterBoilC())) {
                    throw new NotNow(contradiction(batch, sense));
                }
                yield batch.started(now);
            }
            case PROCESSING -> believed ? batch : batch.with(batch.run().vouched(now));
            case UNSURE -> throw new NotNow("say whether it boiled all the while, or start again");
            case STEAM_SPENT -> throw new NotNow("the steam canner needs fresh water first");
            default -> throw new NotNow("these jars are processed already");
        };
    }

    private static String contradiction(CannerBatch batch, BoilSense sense) {
        return String.format(
                Locale.ROOT,
                "the thermometer in the canner shows %s, and water boils at %s here. If it does boil, say that you go by"
                        + " what you see",
                both(sense.latestC().orElseThrow()),
                both(batch.load().waterBoilC()));
    }

    private static String both(double celsius) {
        return String.format(Locale.ROOT, "%.1f °C (%.1f °F)", celsius, celsius * 1.8 + 32);
    }

    private static CannerBatch boilLost(CannerBatch batch, double now) {
        return switch (batch.phase()) {
            case PROCESSING, UNSURE -> batch.in(CannerPhase.BOIL_LOST, now);
            case BOIL_LOST, STEAM_SPENT, WAITING -> batch;
            default -> throw new NotNow("these jars are processed already");
        };
    }

    private static CannerBatch boiled(CannerBatch batch, double now) {
        return switch (batch.phase()) {
            case UNSURE -> batch.processed(now);
            case HEAT_OFF, RESTING, LIFT_OUT -> batch;
            default -> throw new NotNow("the time is not up yet");
        };
    }

    private static CannerBatch byTaps(CannerBatch batch, double now) {
        if (batch.byTaps()) {
            return batch;
        }
        CannerBatch next = batch.byTaps(true);
        return batch.phase() == CannerPhase.PROCESSING ? next.with(next.run().vouched(now)) : next;
    }

    private static CannerBatch again(CannerBatch batch, double now) {
        return switch (batch.phase()) {
            case STEAM_SPENT -> batch.freshWater(now);
            case WAITING -> batch;
            default -> throw new NotNow("the steam canner stays shut until the time is up");
        };
    }

    private static CannerBatch heatOff(CannerBatch batch, double now) {
        return switch (batch.phase()) {
            case HEAT_OFF -> batch.in(CannerPhase.RESTING, now);
            case RESTING, LIFT_OUT -> batch;
            case PROCESSING ->
                throw new NotNow("the time is not up: " + CannerWords.minutes(batch.dueT() - now)
                        + " are left, and a tested time is never shortened");
            default -> throw new NotNow("the whole time has not passed at the boil; clear the jars to give up");
        };
    }

    private static NotNow tooEarlyToLift(CannerBatch batch, double now) {
        if (batch.phase() == CannerPhase.RESTING) {
            return new NotNow("leave the jars in for " + CannerWords.minutes(batch.sinceT() + CannerWatch.REST_S - now)
                    + " more");
        }
        return new NotNow("the jars stay in until their time is up and they have rested");
    }
}
