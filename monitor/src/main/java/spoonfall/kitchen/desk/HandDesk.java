package spoonfall.kitchen.desk;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import spoonfall.cook.CookStatus;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.pan.PanKeeper;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.kitchen.typed.HandAnswer;
import spoonfall.kitchen.typed.HandEntry;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.hand.HandProbe;
import spoonfall.typed.Known;
import spoonfall.typed.Question;
import spoonfall.typed.SenseCheck;
import spoonfall.typed.Typed;

/**
 * Where somebody types what a thermometer shows. Everything is done by the kitchen's thread; what cannot be done now ends
 * in a {@link Refusal}. A reading that arrives twice, by its id, is taken once.
 */
public final class HandDesk {
    /** The latest reading can be taken back for so long. */
    public static final long TAKE_BACK_S = 60;

    private final PanKeeper keeper;
    private final Thermometers thermometers;
    private final Pan pan;
    private final Function<String, Optional<HandProbe>> byHand;

    HandDesk(PanKeeper keeper, Thermometers thermometers, Pan pan, Function<String, Optional<HandProbe>> byHand) {
        this.keeper = keeper;
        this.thermometers = thermometers;
        this.pan = pan;
        this.byHand = byHand;
    }

    /**
     * Somebody types a reading.
     *
     * @param id tells it from others, so that it is taken once however often it arrives
     * @param typed what the thermometer shows
     * @param sure whether they were asked, or need not be: it is taken as it is
     */
    public CompletableFuture<HandAnswer> type(String id, Typed typed, boolean sure) {
        return keeper.ask(() -> {
            Optional<HandAnswer> before = pan.typed().answered(id);
            if (before.isPresent()) {
                return before.get();
            }
            HandProbe probe = probe();
            if (!sure) {
                Optional<Question> question = SenseCheck.ask(typed, known());
                if (question.isPresent()) {
                    return new HandAnswer.Asked(question.get());
                }
            }
            if (Reading.qualityOf(typed.temperatureC()) != Quality.GOOD) {
                throw new Refusal(typed.text() + " is not what a pan thermometer shows; type it again");
            }
            Reading reading = probe.type(typed.temperatureC(), typed.text())
                    .orElseThrow(() -> new Refusal("the kitchen is not ready yet; try again"));
            HandEntry entry = new HandEntry(id, typed, pan.timeS(reading.atNanos()), reading.atNanos());
            HandAnswer taken = pan.typed(entry);
            keeper.publish();
            return taken;
        });
    }

    /**
     * Takes the latest reading back: the cook is gone through again without it.
     *
     * @return where everything stands; empty if there never was such a reading. Taking back again changes nothing.
     */
    public CompletableFuture<Optional<KitchenState>> takeBack(String id) {
        return keeper.ask(() -> {
            Optional<HandAnswer> before = pan.typed().answered(id);
            if (before.isEmpty()) {
                return Optional.empty();
            }
            if (before.get() instanceof HandAnswer.TakenBack) {
                return Optional.of(keeper.told());
            }
            Optional<HandEntry> last =
                    pan.typed().last().filter(entry -> entry.id().equals(id));
            if (last.isEmpty()) {
                throw new Refusal("only the latest reading can be taken back; type a new one instead");
            }
            long ageNanos = keeper.nowNanos() - last.get().atNanos();
            if (ageNanos > TimeUnit.SECONDS.toNanos(TAKE_BACK_S)) {
                throw new Refusal("it was typed more than a minute ago; type a new one instead");
            }
            if (pan.readings() <= 1) {
                pan.typed().tookBack(id);
                return Optional.of(keeper.afresh());
            }
            pan.takeBackLast(id, keeper.tickNanos());
            keeper.publish();
            return Optional.of(keeper.told());
        });
    }

    private HandProbe probe() {
        String name = thermometers.first().name();
        return byHand.apply(name)
                .orElseThrow(
                        () -> new Refusal(name + " speaks by itself, so nothing is typed for it; start Spoonfall with"
                                + " \"serve --hand\" to type what you read"));
    }

    private Known known() {
        double waterBoilC = thermometers.settings().waterBoil().temperatureC();
        Optional<CookStatus.Seen> seen = pan.seen();
        double sinceS = seen.map(one -> pan.timeS(keeper.nowNanos()) - one.t()).orElse(0.0);
        OptionalDouble lastC =
                seen.map(one -> OptionalDouble.of(one.temperatureC())).orElse(OptionalDouble.empty());
        return new Known(waterBoilC, lastC, sinceS);
    }
}
