package spoonfall.door;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Makes codes and takes them. There is one code at a time; it works once, for ten minutes, and dies of too many wrong tries. Times are
 * milliseconds of a clock that never jumps.
 */
public final class PairingDesk {
    /** How long a code works. */
    public static final Duration LIFE = Duration.ofMinutes(10);

    private static final int LENGTH = 8;
    private static final int DIES_AFTER_WRONG = 10;

    private final Secrets secrets = new Secrets();
    private final Guesses guesses = new Guesses();
    private @Nullable PairingCode code;
    private String hash = "";
    private int wrong;
    private State state = State.NONE;

    /** How the latest code stands. */
    public enum State {
        /** Nobody asked for one, or it was taken back. */
        NONE,
        /** It works. */
        OPEN,
        /** It let a device in. */
        USED,
        /** Its time was up. */
        EXPIRED,
        /** It was tried wrongly too often. */
        GUESSED;

        /** What it is called on the wire. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What came of a try. */
    public sealed interface Outcome {
        /** The code was right, and is used up. */
        record Opened(Role role) implements Outcome {}

        /** It was not, or there is none. */
        record Wrong() implements Outcome {}

        /** It was not looked at: too many wrong ones came before. */
        record Wait(Duration left) implements Outcome {}
    }

    /** A new code; the one before no longer works. */
    public synchronized PairingCode open(Role role, long nowMillis) {
        PairingCode fresh = new PairingCode(secrets.code(LENGTH), role, nowMillis + LIFE.toMillis());
        code = fresh;
        hash = Secrets.hash(fresh.text());
        wrong = 0;
        state = State.OPEN;
        return fresh;
    }

    /** The code that works now. */
    public synchronized Optional<PairingCode> current(long nowMillis) {
        if (code != null && nowMillis >= code.untilMillis()) {
            end(State.EXPIRED);
        }
        return Optional.ofNullable(code);
    }

    /** How the latest code stands. */
    public synchronized State state(long nowMillis) {
        current(nowMillis);
        return state;
    }

    /** Takes the code back. */
    public synchronized void forget() {
        end(State.NONE);
    }

    /**
     * Somebody enters a code. It is used up by letting a device in: if that cannot be, the code still works.
     *
     * @param typed as it was typed: small letters, blanks and hyphens do no harm
     * @param client who tries, as {@link Clients} names it
     * @param letIn lets a device of that role in, or throws what the one who tries is told
     */
    public synchronized Outcome enter(String typed, String client, long nowMillis, Consumer<Role> letIn) {
        Optional<Duration> left = guesses.wait(client, nowMillis);
        if (left.isPresent()) {
            return new Outcome.Wait(left.get());
        }
        Optional<PairingCode> open = current(nowMillis);
        boolean right = Secrets.same(Secrets.hash(plain(typed)), open.isPresent() ? hash : Secrets.hash(""));
        if (open.isPresent() && right) {
            letIn.accept(open.get().role());
            guesses.forget(client);
            end(State.USED);
            return new Outcome.Opened(open.get().role());
        }
        guesses.wrong(client, nowMillis);
        if (open.isPresent() && ++wrong >= DIES_AFTER_WRONG) {
            end(State.GUESSED);
        }
        return new Outcome.Wrong();
    }

    private void end(State how) {
        code = null;
        hash = "";
        state = how;
    }

    private static String plain(String typed) {
        return typed.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    }
}
