package spoonfall.probe;

import java.util.Locale;

/**
 * How far a {@link Reading} can be trusted. Only {@link #GOOD} readings carry a temperature. The last five are told
 * by what came before, so only who watches the pan can give them: a driver never does.
 */
public enum Quality {
    /** A number in the range a pan thermometer can show. */
    GOOD,
    /** Bytes that are no text: usually a wrong baud rate. */
    NOT_TEXT,
    /** Text in which no temperature was found where one was expected. */
    NO_NUMBER,
    /** A number that is not finite, such as NaN, or that overflows. */
    NOT_FINITE,
    /** A finite number that no working pan thermometer shows. */
    OUT_OF_RANGE,
    /** A value that the sensor itself never has: it is open, shorted or wrongly wired. */
    SENSOR_FAULT,
    /** An instrument that was asked and did not answer. */
    NO_ANSWER,
    /** An answer that is broken, cut off, or somebody else's. */
    BAD_FRAME,
    /** An instrument that says that it cannot do what it was asked. */
    REFUSED,
    /** A line too long to be a reading. */
    TOO_LONG,
    /** A single wild value, gone with the next reading. */
    SPIKE,
    /** A jump that no pan can make, or a temperature that no preserve has. */
    IMPLAUSIBLE,
    /** The same value again and again where the pan must be moving. */
    STUCK,
    /** The temperature of something other than the pan: it fell as no pan can cool. */
    OUT_OF_PAN,
    /** Nothing readable for longer than the probe usually takes. */
    SILENT;

    /** The name on the wire, such as {@code out-of-range}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
