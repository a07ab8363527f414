package spoonfall.canner;

import java.util.Optional;

/** What comes next by time and by what the thermometer sees, without a tap. */
final class CannerSteps {
    private CannerSteps() {}

    /** How the batch stands next, if anything is to change at {@code now}. */
    static Optional<CannerBatch> next(CannerBatch batch, double now, BoilSense sense) {
        boolean believed = !batch.byTaps() && sense.everHeard();
        boolean boils = believed && sense.speaks(now) && sense.boils();
        return switch (batch.phase()) {
            case WAITING -> boils ? Optional.of(batch.started(now)) : Optional.empty();
            case PROCESSING -> processing(batch, now, sense, believed);
            case BOIL_LOST -> {
                if (batch.steamSpent(now)) {
                    yield Optional.of(batch.in(CannerPhase.STEAM_SPENT, now));
                }
                yield boils ? Optional.of(batch.started(now)) : Optional.empty();
            }
            case RESTING ->
                now >= batch.sinceT() + CannerWatch.REST_S
                        ? Optional.of(batch.in(CannerPhase.LIFT_OUT, batch.sinceT() + CannerWatch.REST_S))
                        : Optional.empty();
            default -> Optional.empty();
        };
    }

    private static Optional<CannerBatch> processing(CannerBatch batch, double now, BoilSense sense, boolean believed) {
        if (believed && sense.gone()) {
            return Optional.of(batch.in(CannerPhase.BOIL_LOST, now));
        }
        double untilT = Math.min(now, batch.dueT());
        boolean watched = sense.heardT() >= batch.run().vouchedT() - BoilSense.SILENT_S;
        if (believed && watched && !batch.run().doubted() && untilT - sense.heardT() > BoilSense.SILENT_S) {
            return Optional.of(batch.with(batch.run().afterSilence()));
        }
        boolean falling = believed && sense.speaks(now) && sense.cold();
        if (now < batch.dueT() || falling) {
            return Optional.empty();
        }
        return Optional.of(batch.run().doubted() ? batch.in(CannerPhase.UNSURE, now) : batch.processed(batch.dueT()));
    }
}
