package spoonfall.log.memory;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Stage;
import spoonfall.cook.TestChange;
import spoonfall.cook.WaterBoil;
import spoonfall.learn.CookFacts;
import spoonfall.learn.CookFacts.Base;
import spoonfall.learn.CookFacts.From;
import spoonfall.learn.CookFacts.Tested;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.store.StoredCook;
import spoonfall.log.store.StoredTrace;
import spoonfall.settest.TestAnswer;

/** Facts to learn from, out of a cook as the record keeps it. */
final class StoredFacts {
    /** Sugar goes in before the pan is at that share of its target. */
    private static final double SUGAR_BY = 0.4;

    private final StoredCook cook;
    private final CookSettings settings;
    private final Climb climb;

    StoredFacts(StoredCook cook) {
        this.cook = cook;
        settings = settings(cook);
        climb = new Climb(StoredTrace.of(cook), settings.waterBoil().temperatureC());
    }

    /** What the cook was measured against last. */
    static CookSettings settings(StoredCook cook) {
        CookSettings settings = cook.header().basis().settings();
        for (CookInput input : cook.inputs()) {
            if (input instanceof CookInput.Word word && word.kind().equals("basis")) {
                settings = CookJson.basis(word.detail()).settings();
            }
        }
        return settings;
    }

    /** The facts, but for what other books than the record know. */
    CookFacts facts(double earlierMinutes, OptionalDouble probeHighC) {
        OptionalDouble finalRiseC = finalRiseC();
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
                Optional.empty());
    }

    /** The highest rise that lasted until the pan came off the heat, in °C; empty if it never boiled. */
    OptionalDouble finalRiseC() {
        return stages().stream().anyMatch(entry -> entry.stage().boiling())
                ? climb.highest(offS())
                : OptionalDouble.empty();
    }

    /** How long it boiled with its sugar in, in minutes; empty if it never did. */
    OptionalDouble boilMinutes() {
        double minutes = minutesIn(false, climb.sugarS(SUGAR_BY * settings.riseC()));
        return minutes == 0 ? OptionalDouble.empty() : OptionalDouble.of(minutes);
    }

    private static Base base(WaterBoil boil) {
        From from =
                switch (boil.from()) {
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
        for (StoredCook.Event event : cook.events()) {
            if (event.kind().equals("stage")) {
                String name = event.detail().path("stage").asText();
                Stream.of(Stage.values())
                        .filter(stage -> stage.wireName().equals(name))
                        .forEach(stage -> stages.add(new Entry(event.atMillis() / 1000.0, stage)));
            }
        }
        return stages;
    }

    /** The second at which it came off the heat for good. */
    private double offS() {
        List<Entry> stages = stages();
        Optional<Entry> last = stages.isEmpty() ? Optional.empty() : Optional.of(stages.get(stages.size() - 1));
        return last.filter(entry -> entry.stage() == Stage.OFF_THE_HEAT)
                .map(Entry::t)
                .orElse(climb.lastS());
    }

    private double minutesIn(boolean pastOnly, double fromS) {
        List<Entry> stages = stages();
        double seconds = 0;
        for (int i = 0; i < stages.size(); i++) {
            Stage stage = stages.get(i).stage();
            if (pastOnly ? stage.atOrPastGelPoint() : stage.boiling()) {
                double untilS = i + 1 < stages.size() ? stages.get(i + 1).t() : Math.max(offS(), stages.get(i).t());
                seconds += Math.max(0, untilS - Math.max(fromS, stages.get(i).t()));
            }
        }
        return seconds / 60;
    }

    private List<Tested> tests() {
        Map<String, Tested> tests = new LinkedHashMap<>();
        for (StoredCook.Event event : cook.events()) {
            if (!event.kind().equals("set-test")) {
                continue;
            }
            String id = event.detail().path("id").asText();
            String change = event.detail().path("change").asText();
            Tested known = tests.getOrDefault(id, new Tested(OptionalDouble.empty(), Optional.empty()));
            if (change.equals(TestChange.BEGUN.wireName())) {
                double t = event.atMillis() / 1000.0;
                tests.put(id, new Tested(climb.level(t, t), Optional.empty()));
            } else if (change.equals(TestChange.SEEN.wireName())) {
                tests.put(id, new Tested(known.riseC(), set(event.detail().path("answer").asText())));
            } else if (change.equals(TestChange.UNSEEN.wireName())) {
                tests.put(id, new Tested(known.riseC(), Optional.empty()));
            } else {
                tests.remove(id);
            }
        }
        return List.copyOf(tests.values());
    }

    private static Optional<Boolean> set(String answer) {
        return Stream.of(TestAnswer.values())
                .filter(one -> one.wireName().equals(answer))
                .map(TestAnswer::set)
                .findFirst();
    }

    private boolean raised(String alarm) {
        return cook.events().stream()
                .anyMatch(event -> event.kind().equals("alarm")
                        && event.detail().path("alarm").asText().equals(alarm)
                        && event.detail().path("change").asText().equals("raised"));
    }
}
