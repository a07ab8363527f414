package spoonfall.typed;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import spoonfall.probe.line.TemperatureUnit;

/** Asks back when what was typed can hardly be so. It never changes anything by itself. */
public final class SenseCheck {
    /** Further above the water boil than that nothing is a preserve, and nobody can mean it. */
    private static final double NO_PRESERVE_RISE_C = 40;

    private static final double NO_PAN_C = -10;

    private SenseCheck() {}

    private record Guess(Question.About about, Typed typed) {}

    /** The question to ask about {@code typed}; empty when it can be so. */
    public static Optional<Question> ask(Typed typed, Known known) {
        double temperatureC = typed.temperatureC();
        if (known.allows(temperatureC)) {
            return Optional.empty();
        }
        Optional<Guess> guess = guess(typed, known);
        List<Question.Choice> choices = new ArrayList<>();
        guess.ifPresent(one -> choices.add(choice("Yes, " + one.typed().text(), one.typed())));
        if (temperatureC >= NO_PAN_C && temperatureC <= known.waterBoilC() + NO_PRESERVE_RISE_C) {
            choices.add(choice((guess.isPresent() ? "No, it is " : "Yes, ") + typed.text(), typed));
        }
        choices.add(new Question.Choice(guess.isPresent() ? "Neither" : "No, type it again", Optional.empty()));
        Question.About about = guess.map(Guess::about).orElse(Question.About.JUMP);
        return Optional.of(new Question(about, text(about, guess), detail(typed, guess, known), choices));
    }

    private static Question.Choice choice(String label, Typed typed) {
        return new Question.Choice(label, Optional.of(typed));
    }

    private static String text(Question.About about, Optional<Guess> guess) {
        return switch (about) {
            case POINT -> "Did you mean " + guess.orElseThrow().typed().text() + "?";
            case UNIT -> "Is that " + guess.orElseThrow().typed().unit().sign() + "?";
            case JUMP -> "Is that right?";
        };
    }

    private static String detail(Typed typed, Optional<Guess> guess, Known known) {
        if (guess.isPresent() && guess.get().about() == Question.About.UNIT) {
            Typed other = guess.get().typed();
            TemperatureUnit unit = typed.unit();
            return other.text() + " is " + in(other.temperatureC(), unit) + ".";
        }
        if (known.lastC().isPresent()) {
            return "You typed " + typed.text() + "; it was " + in(known.lastC().getAsDouble(), typed.unit())
                    + " the time before.";
        }
        return "You typed " + typed.text() + "; no preserve is that "
                + (typed.temperatureC() > known.waterBoilC() ? "hot." : "cold.");
    }

    private static String in(double temperatureC, TemperatureUnit unit) {
        double value = unit == TemperatureUnit.F ? temperatureC * 1.8 + 32 : temperatureC;
        return String.format(Locale.ROOT, "%.1f %s", value, unit.sign());
    }

    /** What was meant, if something like it can be so: the nearest to what was typed before, else the first. */
    private static Optional<Guess> guess(Typed typed, Known known) {
        TemperatureUnit other = typed.unit() == TemperatureUnit.C ? TemperatureUnit.F : TemperatureUnit.C;
        Stream<Guess> guesses = Stream.of(
                        new Guess(Question.About.UNIT, new Typed(typed.value(), other)),
                        new Guess(Question.About.POINT, typed.shifted(-1)),
                        new Guess(Question.About.POINT, typed.shifted(1)),
                        new Guess(Question.About.POINT, typed.shifted(-2)))
                .filter(one -> known.allows(one.typed().temperatureC()));
        if (known.lastC().isEmpty()) {
            return guesses.findFirst();
        }
        double lastC = known.lastC().getAsDouble();
        return guesses.min(
                Comparator.comparingDouble(one -> Math.abs(one.typed().temperatureC() - lastC)));
    }
}
