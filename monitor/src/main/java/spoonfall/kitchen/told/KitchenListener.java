package spoonfall.kitchen.told;

/**
 * Hears what happens in a kitchen. Called on the kitchen's thread, in order; implementations hand over and
 * return at once.
 */
public interface KitchenListener {
    /** Where everything stands; first of all, and again when a new cook begins. */
    void begin(KitchenState state);

    /** Something changed. */
    void changed(KitchenChange change);

    /** How the pan is now: with every reading, and at least once a second. */
    void pan(PanView view);
}
