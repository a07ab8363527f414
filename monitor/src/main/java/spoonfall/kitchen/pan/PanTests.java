package spoonfall.kitchen.pan;

import java.util.List;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Stage;
import spoonfall.cook.TestWord;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.kitchen.afternoon.AfternoonBook;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.cook.Cook;
import spoonfall.kitchen.cook.PanCook;
import spoonfall.kitchen.cook.PanLog;
import spoonfall.kitchen.cook.PanTeller;
import spoonfall.kitchen.cook.Words;

/** The set tests of a pan. Used by the kitchen's thread alone. */
final class PanTests {
    private final PanCook cook;
    private final PanLog log;
    private final PanTeller teller;
    private final AfternoonBook afternoon;

    PanTests(PanCook cook, PanLog log, PanTeller teller, AfternoonBook afternoon) {
        this.cook = cook;
        this.log = log;
        this.teller = teller;
        this.afternoon = afternoon;
    }

    /** Somebody says something about a set test; a {@link Refusal} where there is nothing to test yet. */
    void say(TestWord word, long atNanos) {
        boolean asksForAPan = word.says() == TestWord.Says.BEGUN || word.says() == TestWord.Says.SEEN;
        if (asksForAPan) {
            Cook current = cook.now()
                    .orElseThrow(() -> new Refusal("nothing was read of the pan yet, so there is nothing to test"));
            refuseBeforeTheBoil(current.monitor());
        }
        cook.now().ifPresent(current -> say(word, current, atNanos));
    }

    private static void refuseBeforeTheBoil(CookMonitor monitor) {
        boolean open = monitor.tests().open().isPresent();
        CookStatus pan = monitor.status();
        double waterBoilC = monitor.tests().aim().waterBoil().temperatureC();
        // whoever wants to test knows better than the stage whether the sugar is in
        boolean boils = pan.stage().compareTo(Stage.ROLLING_BOIL) >= 0
                || pan.stage() == Stage.SIMMERING
                || pan.temperatureC().orElse(0) >= waterBoilC;
        if (!open && !boils && monitor.tests().tests().isEmpty()) {
            throw new Refusal("the pan does not boil yet; test when the test window opens");
        }
    }

    private void say(TestWord word, Cook current, long atNanos) {
        CookMonitor monitor = current.monitor();
        boolean wasSet = monitor.tests().set();
        List<CookEvent> events = monitor.say(word, atNanos);
        log.said(current, Words.SET_TEST, Words.detail(word));
        teller.happened(events);
        if (!wasSet && monitor.tests().set()) {
            afternoon.testedAndSet(atNanos);
        }
    }
}
