package spoonfall.kitchen.canner;

import spoonfall.probe.Reading;

/** Hears the thermometer in the canner. Called on the probe's thread; implementations hand over and return at once. */
public interface CannerListener {
    /** It was read; the reading is corrected by what is known of the thermometer. */
    void reading(Reading reading);

    /** It cannot be read any more, with the reason in one sentence for people. */
    void lost(String trouble);
}
