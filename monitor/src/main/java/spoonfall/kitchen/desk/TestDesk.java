package spoonfall.kitchen.desk;

import java.util.concurrent.CompletableFuture;
import spoonfall.cook.TestWord;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.pan.PanKeeper;
import spoonfall.kitchen.told.KitchenState;

/** Where somebody says that they test the set, and what they saw. Everything is done by the kitchen's thread. */
public final class TestDesk {
    private final PanKeeper keeper;
    private final Pan pan;

    TestDesk(PanKeeper keeper, Pan pan) {
        this.keeper = keeper;
        this.pan = pan;
    }

    /**
     * Somebody says something about a set test. Saying it again is harmless.
     *
     * @return where everything stands; a {@link Refusal} if there is nothing to test
     */
    public CompletableFuture<KitchenState> say(TestWord word) {
        return keeper.asking(atNanos -> pan.say(word, atNanos));
    }
}
