package spoonfall.door;

/**
 * A code that lets one device in.
 *
 * @param text its letters and digits, without a hyphen
 * @param role what the device may do then
 * @param untilMillis when it stops working, on the clock of {@link PairingDesk}
 */
public record PairingCode(String text, Role role, long untilMillis) {
    /** As people read it: in two halves. */
    public String shown() {
        int half = text.length() / 2;
        return text.substring(0, half) + "-" + text.substring(half);
    }

    /** How many seconds it still works. */
    public long leftS(long nowMillis) {
        return Math.max(0, (untilMillis - nowMillis + 999) / 1000);
    }

    /** Without its letters, which must not get into a log. */
    @Override
    public String toString() {
        return "a code for a " + role.wireName();
    }
}
