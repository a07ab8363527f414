package spoonfall.paper;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import spoonfall.book.CookMarks;
import spoonfall.log.store.book.BookPage;

/**
 * What a picture of one cook, or of two, spans: minutes from the first one's beginning, or from a mark that both have.
 *
 * @param page the cook
 * @param beside another one
 * @param mark by what they are lined up; empty for a cook by itself
 */
record Lineup(BookPage page, Optional<BookPage> beside, Optional<Mark> mark) {
    private static final double ABOVE_AIM_C = 1.2;
    private static final double ABOVE_CLIMB_C = 0.4;
    private static final double BEFORE_BOIL_S = 300;
    private static final double LEAST_MIN = 10;

    /** By what two cooks can be lined up, the best first. */
    enum Mark {
        /** When it reached its target. */
        GEL {
            @Override
            OptionalDouble of(CookMarks marks) {
                return marks.gelS();
            }
        },
        /** When the sugar went in. */
        SUGAR {
            @Override
            OptionalDouble of(CookMarks marks) {
                return OptionalDouble.of(marks.sugarS());
            }
        };

        /** When that was, in seconds of the cook. */
        abstract OptionalDouble of(CookMarks marks);
    }

    /** Lines two cooks up by the best mark that both have. */
    static Lineup of(BookPage page, Optional<BookPage> beside) {
        Optional<Mark> mark = beside.flatMap(other -> Stream.of(Mark.values())
                .filter(one -> one.of(page.marks()).isPresent())
                .filter(one -> one.of(other.marks()).isPresent())
                .findFirst());
        return new Lineup(page, beside, mark);
    }

    /** A second of a cook in the picture's minutes. */
    double minutes(BookPage one, double t) {
        double zeroS = mark.isPresent() ? mark.get().of(one.marks()).orElse(0) : 0;
        return (t - zeroS) / 60;
    }

    /** Where the picture begins: a little before the first boil, or with the sugar. */
    double fromMin() {
        return pages().mapToDouble(this::firstMin).min().orElseThrow();
    }

    /** Where it ends. */
    double toMin() {
        double lastMin = pages().mapToDouble(one -> minutes(one, one.line().lastT()))
                .max()
                .orElseThrow();
        return Math.max(fromMin() + LEAST_MIN, lastMin);
    }

    /** How high it is, in °C above the water boil: room above where each was to set, and above where it went. */
    double topC() {
        return pages().mapToDouble(Lineup::topC).max().orElseThrow();
    }

    private Stream<BookPage> pages() {
        return Stream.concat(Stream.of(page), beside.stream());
    }

    private double firstMin(BookPage one) {
        if (mark.equals(Optional.of(Mark.SUGAR))) {
            return minutes(one, one.marks().sugarS());
        }
        OptionalDouble boilS = one.marks().boilS();
        double[] times = one.line().times();
        double beginS = times.length == 0 ? 0 : times[0];
        return minutes(one, boilS.isPresent() ? Math.max(0, boilS.getAsDouble() - BEFORE_BOIL_S) : beginS);
    }

    private static double topC(BookPage one) {
        double highestC = 0;
        for (double riseC : one.line().risesC()) {
            highestC = Math.max(highestC, riseC);
        }
        return Math.max(one.settings().riseC() + ABOVE_AIM_C, highestC + ABOVE_CLIMB_C);
    }
}
