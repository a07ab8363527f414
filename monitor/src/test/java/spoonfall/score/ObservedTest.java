package spoonfall.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoonfall.cook.CookSettings;

final class ObservedTest {
    @Test
    void whatWasObserved_staysAsItWas_whateverBecomesOfTheListsItCameIn() {
        List<Observed.Call> raised = new ArrayList<>(List.of(new Observed.Call(60, "stalled")));

        Observed observed = new Observed(CookSettings.defaults(), List.of(), raised, List.of());
        raised.clear();

        assertThat(observed.onAt(61, "stalled")).isTrue();
    }
}
