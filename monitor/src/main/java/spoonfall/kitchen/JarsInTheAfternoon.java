package spoonfall.kitchen;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.afternoon.Timeline;
import spoonfall.canner.CannerPhase;
import spoonfall.kitchen.canner.CannerDesk;
import spoonfall.kitchen.desk.AfternoonDesk;
import spoonfall.kitchen.told.AfternoonView;

/**
 * Tells the afternoons how far the jars are: the canner is one for all pans, so it moves those whose preserve is off the
 * heat and not yet processed. Runs on the canner's thread; the pans' own threads do it.
 */
final class JarsInTheAfternoon implements Consumer<CannerDesk.News> {
    private static final Logger LOG = LoggerFactory.getLogger(JarsInTheAfternoon.class);
    private static final String PROCESS = "process";
    private static final String LIFTED = "rest-jars";

    private final Collection<Kitchen> pans;
    private CannerPhase shown = CannerPhase.EMPTY;

    JarsInTheAfternoon(Collection<Kitchen> pans) {
        this.pans = List.copyOf(pans);
    }

    @Override
    public void accept(CannerDesk.News news) {
        CannerPhase phase = news.view().phase();
        if (phase == shown) {
            return;
        }
        CannerPhase before = shown;
        shown = phase;
        switch (phase) {
            case WAITING -> move(PROCESS, desk -> desk.stepStarted(PROCESS));
            case PROCESSING -> {
                if (before == CannerPhase.WAITING) {
                    move(PROCESS, desk -> desk.prepared("canner"));
                }
            }
            case HEAT_OFF -> move(PROCESS, desk -> desk.stepDone(PROCESS));
            case EMPTY -> {
                if (before == CannerPhase.LIFT_OUT) {
                    move(LIFTED, desk -> desk.stepDone(LIFTED));
                }
            }
            case BOIL_LOST, UNSURE, STEAM_SPENT, RESTING, LIFT_OUT -> {}
        }
    }

    @SuppressWarnings("FutureReturnValueIgnored") // nobody waits; what goes wrong is in the log
    private void move(String step, Function<AfternoonDesk, CompletableFuture<AfternoonView>> how) {
        for (Kitchen pan : pans) {
            pan.state()
                    .thenCompose(state -> waitsFor(state.afternoon().timeline(), step)
                            ? how.apply(pan.afternoon())
                            : CompletableFuture.completedFuture(state.afternoon()))
                    .whenComplete((view, trouble) -> LOG.debug("{}: {}", step, view, trouble));
        }
    }

    /** Whether a batch is off the heat and that step is ahead of it, or goes on. */
    private static boolean waitsFor(Timeline timeline, String step) {
        boolean ahead = line(timeline, step)
                .filter(line -> line.state() == Timeline.State.NOW || line.state() == Timeline.State.LATER)
                .isPresent();
        boolean offTheHeat = line(timeline, "test")
                .filter(line -> line.state() == Timeline.State.DONE || line.state() == Timeline.State.SKIPPED)
                .isPresent();
        return ahead && offTheHeat;
    }

    private static Optional<Timeline.StepLine> line(Timeline timeline, String id) {
        return timeline.steps().stream()
                .filter(line -> line.step().id().equals(id))
                .findFirst();
    }
}
