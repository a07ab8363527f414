package spoonfall.lab.varied;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** The episodes of one cook, drawn by its kind. */
final class Episodes {
    private static final double FOREVER_S = 1e9;
    private static final double DECAY_S = 40;
    private static final double COARSE_C = 0.25;
    private static final double COARSE_TIMES = 2.5;

    private final Draw draw;
    private final SplittableRandom random;
    private final List<Episode> episodes = new ArrayList<>();
    private OptionalDouble scorchBoiledS = OptionalDouble.empty();

    private Episodes(Draw draw, SplittableRandom random) {
        this.draw = draw;
        this.random = random;
    }

    static List<Episode> of(CookKind kind, Draw draw, SplittableRandom random) {
        Episodes all = new Episodes(draw, random);
        switch (kind) {
            case STALL -> all.stall();
            case SCORCH -> all.scorch();
            case PROBE_OUT -> all.probeOut();
            case STUCK ->
                all.add(all.late(), all.seenS(all.between(120, 360)), "stuck", (moment, pan, s) -> moment.stuck = true);
            case SILENT ->
                all.add(all.anyTime(), all.between(60, 240), "gap", (moment, pan, s) -> moment.silent = true);
            case JUMP -> all.jump();
            case HEAT -> all.heat();
            case SET_TESTS -> all.tests(1 + random.nextInt(3), random.nextDouble() < 0.4);
            case WATER -> all.water();
            case CLEAN, SPIKES, LATE_SUGAR -> {}
        }
        boolean mayTest = kind != CookKind.CLEAN && kind != CookKind.SET_TESTS && kind != CookKind.SCORCH;
        if (mayTest && random.nextDouble() < 0.3) {
            all.tests(1, false);
        }
        return all.episodes;
    }

    private void stall() {
        double dice = random.nextDouble();
        if (dice < 0.45) {
            double knob = random.nextBoolean() ? 0 : between(0.02, 0.1);
            stall(between(0.3, 0.9), between(240, 600), "heat-off", "heat-on", (moment, pan, s) -> moment.knob = knob);
        } else if (dice < 0.75) {
            double lossPart = 1 - draw.netKw() / draw.grossKw();
            double knob = lossPart + between(0.03, 0.1) * (1 - lossPart);
            stall(between(0.45, 0.9), flatS(), "heat-down", "heat-up", (moment, pan, s) -> moment.knob = knob);
        } else {
            double returns = between(0.88, 0.97);
            stall(between(0.45, 0.9), flatS(), "lid-on", "lid-off", (moment, pan, s) -> moment.lidReturns = returns);
        }
    }

    /** Long enough that so slow a pan would have been seen to move by so coarse a thermometer. */
    private double flatS() {
        return seenS(Math.max(between(240, 600), between(0.1, 0.2) * draw.climbS()));
    }

    private double seenS(double fineS) {
        return draw.sensor().stepC() >= COARSE_C ? COARSE_TIMES * fineS : fineS;
    }

    private void stall(double part, double lastsS, String cause, String cure, Episode.Effect effect) {
        add(part, lastsS, List.of("stall-begins", cause), List.of("stall-ends", cure), effect);
    }

    private void scorch() {
        double perS = between(0.8, 2.5) / 60;
        double most = between(3, 10);
        double lasts = between(150, 360);
        double noisy = between(1.8, 3.5);
        double part = between(0.4, 0.92);
        add(part, lasts, List.of("scorch-begins"), List.of("scorch-ends"), (moment, pan, s) -> {
            moment.hotterC += Math.min(most, perS * s);
            moment.noisy *= noisy;
        });
        // The cook has stirred down to the base: what was too hot there cools away.
        double left = Math.min(most, perS * lasts);
        episodes.add(new Episode(
                (boiledS, nowPart) -> scorchedAt(boiledS, nowPart, part, lasts),
                5 * DECAY_S,
                List.of(),
                List.of(),
                (moment, pan, s) -> moment.hotterC += left * Math.exp(-s / DECAY_S)));
    }

    private boolean scorchedAt(double boiledS, double nowPart, double part, double lasts) {
        if (scorchBoiledS.isEmpty() && boiledS > 0 && nowPart >= part) {
            scorchBoiledS = OptionalDouble.of(boiledS);
        }
        return scorchBoiledS.isPresent() && boiledS >= scorchBoiledS.getAsDouble() + lasts;
    }

    private void probeOut() {
        double lasts = between(40, 200);
        if (random.nextDouble() < 0.65) {
            double airC = between(25, 60);
            double lagTimes = between(1.5, 5);
            add(anyTime(), lasts, "probe-out", (moment, pan, s) -> {
                moment.aroundC = OptionalDouble.of(airC);
                moment.lagTimes = lagTimes;
                moment.noisy = 0.1;
            });
            return;
        }
        double steamC = between(70, 90);
        double swayC = between(1, 5);
        double swayS = between(8, 30);
        add(anyTime(), lasts, "probe-out", (moment, pan, s) -> {
            moment.aroundC = OptionalDouble.of(steamC + swayC * Math.sin(2 * Math.PI * s / swayS));
            moment.lagTimes = 4;
            moment.noisy = 0.5;
        });
    }

    private void jump() {
        double shiftC = (random.nextBoolean() ? 1 : -1) * between(0.8, 4);
        add(anyTime(), between(60, 300), "jump", (moment, pan, s) -> moment.shiftC = shiftC);
    }

    private void heat() {
        double change = between(0.2, 0.5);
        boolean down = random.nextDouble() < 0.65;
        double knob = down ? 1 - change : 1 + change;
        boolean comesBack = random.nextBoolean();
        add(
                between(0.25, 0.85),
                comesBack ? between(240, 900) : FOREVER_S,
                List.of(down ? "heat-down" : "heat-up"),
                List.of(down ? "heat-up" : "heat-down"),
                (moment, pan, s) -> moment.knob = knob);
    }

    private void tests(int inTheWindow, boolean oneBefore) {
        double windowPart = 1 - 2 / 1.8 / draw.riseC();
        if (oneBefore) {
            test(between(0.45, windowPart - 0.05));
        }
        double step = (1 - windowPart) / inTheWindow;
        for (int i = 0; i < inTheWindow; i++) {
            test(windowPart + step * (i + between(0.05, 0.6)));
        }
    }

    private void test(double part) {
        add(
                part,
                between(40, 90),
                List.of("test-begins"),
                List.of("test-ends"),
                (moment, pan, s) -> moment.besideTheHob = true);
    }

    private void water() {
        double kg = draw.massKg() * between(0.04, 0.15);
        double sugarKg = random.nextBoolean() ? 0 : 0.12 * kg;
        double ofC = between(5, 20);
        boolean[] in = {false};
        add(between(0.25, 0.9), 1, List.of("water-added"), List.of(), (moment, pan, s) -> {
            if (!in[0]) {
                pan.add(kg - sugarKg, sugarKg, ofC);
                in[0] = true;
            }
        });
    }

    /** Any time from just after the boil to nearly the end, as that would be if nothing happened. */
    private Episode.Trigger anyTime() {
        return Episode.Trigger.afterBoil(draw.climbS() * between(0.08, 0.9));
    }

    /** A time at which the reading moves. */
    private Episode.Trigger late() {
        return Episode.Trigger.atPart(between(0.4, 0.85));
    }

    private void add(Episode.Trigger trigger, double lastsS, String name, Episode.Effect effect) {
        episodes.add(new Episode(trigger, lastsS, List.of(name + "-begins"), List.of(name + "-ends"), effect));
    }

    private void add(double part, double lastsS, List<String> begins, List<String> ends, Episode.Effect effect) {
        episodes.add(new Episode(Episode.Trigger.atPart(part), lastsS, begins, ends, effect));
    }

    private double between(double least, double most) {
        return random.nextDouble(least, most);
    }
}
