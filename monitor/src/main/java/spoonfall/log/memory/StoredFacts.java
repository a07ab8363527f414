package spoonfall.log.memory;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Stage;
import spoonfall.cook.WaterBoil;
import spoonfall.food.Foods;
import spoonfall.learn.CookFacts;
import spoonfall.learn.CookFacts.Base;
import spoonfall.learn.CookFacts.From;
import spoonfall.learn.CookFacts.Tested;
import spoonfall.log.store.book.BookPage;
import spoonfall.log.store.cook.StoredCook;

/** Facts to learn from, out of a cook as the record keeps it. */
final class StoredFacts {
    private final BookPage page;
    private final CookSettings settings;

    StoredFacts(BookPage page) {
        this.page = page;
        settings = page.settings();
    }

    /** The facts, but for what other books than the record know. */
    CookFacts facts(double earlierMinutes, OptionalDouble probeHighC, Foods foods) {
        OptionalDouble finalRiseC = page.marks().finalRiseC();
        return new CookFacts(
                base(settings.waterBoil()),
                settings.riseC(),
                finalRiseC,
                boilMinutes(),
                earlierMinutes,
                finalRiseC.isPresent() ? OptionalDouble.of(minutesIn(true, 0)) : OptionalDouble.empty(),
                tests(),
                raised("scorch-risk"),
                raised("stalled"),
                probeHighC,
                PlanEvidence.of(page.cook(), foods));
    }

    /** How long it boiled with its sugar in, in minutes; empty if it never did. */
    OptionalDouble boilMinutes() {
        double minutes = minutesIn(false, page.marks().sugarS());
        return minutes == 0 ? OptionalDouble.empty() : OptionalDouble.of(minutes);
    }

    private static Base base(WaterBoil boil) {
        From from = switch (boil.from()) {
            case MEASURED -> From.MEASURED;
            case STANDARD -> From.ASSUMED;
            case ELEVATION, PRESSURE, SEA_LEVEL_PRESSURE -> From.GIVEN;
        };
        return new Base(from, boil.pressurePa(), boil.doubtC(), boil.detail());
    }

    /** A stage and the second at which it began. */
    private record Entry(double t, Stage stage) {}

    private List<Entry> stages() {
        List<Entry> stages = new ArrayList<>();
        for (StoredCook.Event event : page.cook().events()) {
            if (event.kind().equals("stage")) {
                String name = event.detail().path("stage").asText();
                Stream.of(Stage.values())
                        .filter(stage -> stage.wireName().equals(name))
                        .forEach(stage -> stages.add(new Entry(event.atMillis() / 1000.0, stage)));
            }
        }
        return stages;
    }

    private double minutesIn(boolean pastOnly, double fromS) {
        List<Entry> stages = stages();
        double seconds = 0;
        for (int i = 0; i < stages.size(); i++) {
            Stage stage = stages.get(i).stage();
            if (pastOnly ? stage.atOrPastGelPoint() : stage.boiling()) {
                double untilS = i + 1 < stages.size()
                        ? stages.get(i + 1).t()
                        : page.marks().offS().orElse(page.line().lastT());
                seconds += Math.max(0, untilS - Math.max(fromS, stages.get(i).t()));
            }
        }
        return seconds / 60;
    }

    private List<Tested> tests() {
        return page.tests().stream()
                .map(test ->
                        new Tested(test.riseC(), test.answer().isEmpty() ? Optional.empty() : Optional.of(test.set())))
                .toList();
    }

    private boolean raised(String alarm) {
        return page.cook().events().stream()
                .anyMatch(event -> event.kind().equals("alarm")
                        && event.detail().path("alarm").asText().equals(alarm)
                        && event.detail().path("change").asText().equals("raised"));
    }
}
