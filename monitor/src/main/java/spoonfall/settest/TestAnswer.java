package spoonfall.settest;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What somebody saw in a set test, one of three things in each kind, or only what they made of it. */
public enum TestAnswer {
    /** Syrup falls from the spoon's edge drop by drop. */
    SEPARATE_DROPS(Kind.SHEET, TestStep.FAR),
    /** Two drops run together before they fall. */
    DROPS_JOIN(Kind.SHEET, TestStep.NEAR),
    /** The drops have become one sheet that slides off. */
    SHEETS_OFF(Kind.SHEET, TestStep.SET),
    /** On the cold plate it runs like syrup. */
    RUNS(Kind.PLATE, TestStep.FAR),
    /** It thickens, and closes again behind the finger. */
    THICKENS(Kind.PLATE, TestStep.NEAR),
    /** Its skin wrinkles before the finger. */
    WRINKLES(Kind.PLATE, TestStep.SET),
    /** It is not set, nobody said how far from it. */
    NOT_YET(Kind.VERDICT, TestStep.NOT_YET),
    /** It is set. */
    SET(Kind.VERDICT, TestStep.SET);

    private final Kind kind;
    private final TestStep step;

    TestAnswer(Kind kind, TestStep step) {
        this.kind = kind;
        this.step = step;
    }

    /** How it was tested. */
    public enum Kind {
        /** On a cold spoon. */
        SHEET,
        /** On a cold plate. */
        PLATE,
        /** By whatever means: only the outcome is told. */
        VERDICT;

        /** The name on the wire, such as {@code sheet}. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** How it was tested. */
    public Kind kind() {
        return kind;
    }

    /** How near to its set that is. */
    public TestStep step() {
        return step;
    }

    /** Whether it says that the preserve is set. */
    public boolean set() {
        return step == TestStep.SET;
    }

    /** The name on the wire, such as {@code drops-join}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The answer of that kind and name; empty if there is none. */
    public static Optional<TestAnswer> named(Kind kind, String wireName) {
        return Arrays.stream(values())
                .filter(answer -> answer.kind == kind && answer.wireName().equals(wireName))
                .findFirst();
    }
}
