package spoonfall.kitchen.pan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.kitchen.told.KitchenListener;
import spoonfall.kitchen.told.KitchenState;

/** Who hears what is new in a kitchen. Used by the kitchen's thread alone. */
final class Audience {
    private static final Logger LOG = LoggerFactory.getLogger(Audience.class);

    private final List<KitchenListener> listeners = new ArrayList<>();

    /** Somebody listens from now on, and first hears where everything stands. */
    void join(KitchenListener listener, KitchenState state) {
        listener.begin(state);
        listeners.add(listener);
    }

    /** Tells everybody. A listener that fails is said to, and neither the pan nor the others hear of it. */
    void tell(Consumer<KitchenListener> news) {
        for (KitchenListener listener : listeners) {
            try {
                news.accept(listener);
            } catch (RuntimeException e) {
                LOG.error("{} could not take the news", listener.getClass().getSimpleName(), e);
            }
        }
    }
}
