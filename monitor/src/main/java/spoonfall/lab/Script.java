package spoonfall.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import spoonfall.probe.trace.TraceInfo;

/** What a scenario does to the pan as it climbs, and what truly happens, with its time. */
final class Script {
    private static final double STALL_S = 360;
    private static final double OUT_S = 90;
    private static final double GAP_S = 150;
    private static final double LOW_S = 420;
    private static final double TEST_S = 75;
    private static final double COLD_KG = 0.24;
    private static final double COLD_C = 12;
    private static final double SCORCH_PER_S_C = 1.5 / 60;
    private static final double SCORCH_MOST_C = 9;

    private final Scenario scenario;
    private final PanSettings settings;
    private final List<TraceInfo.Label> labels = new ArrayList<>();
    private OptionalDouble beganT = OptionalDouble.empty();
    private int tests;
    private double testFromT = Double.NEGATIVE_INFINITY;
    private double scorchedC;

    Script(Scenario scenario, PanSettings settings) {
        this.scenario = scenario;
        this.settings = settings;
    }

    /** What holds for one step: the heat, and what the probe meets. */
    record Moment(double powerKw, boolean probeOut, boolean silent, double extraC, double noisy) {}

    Moment at(double t, Pan pan) {
        if (beganT.isEmpty() && pan.boiling() && pan.riseC() >= beginsAtC()) {
            beganT = OptionalDouble.of(t);
            begin(t, pan);
        }
        double sinceS = beganT.isEmpty() ? -1 : t - beganT.getAsDouble();
        double power = settings.netPowerKw();
        boolean boiling = pan.boiling();
        double noisy = boiling ? 1 : 0.3;
        return switch (scenario) {
            case STALL -> new Moment(during(t, sinceS, STALL_S, "heat-on") ? 0 : power, false, false, 0, noisy);
            case HEAT_CHANGE ->
                new Moment(during(t, sinceS, LOW_S, "heat-up") ? 0.67 * power : power, false, false, 0, noisy);
            case PROBE_OUT -> new Moment(power, during(t, sinceS, OUT_S, "probe-out-ends"), false, 0, noisy);
            case GAP -> new Moment(power, false, during(t, sinceS, GAP_S, "gap-ends"), 0, noisy);
            case SCORCH -> {
                if (sinceS >= 0) {
                    scorchedC = Math.min(SCORCH_MOST_C, sinceS * SCORCH_PER_S_C);
                }
                yield new Moment(power, false, false, scorchedC, sinceS >= 0 ? 2.5 : noisy);
            }
            case SET_TESTS -> new Moment(testing(t, pan) ? 0 : power, false, false, 0, noisy);
            default -> new Moment(power, false, false, 0, noisy);
        };
    }

    void label(double t, String what) {
        labels.add(new TraceInfo.Label(Math.round(t * 10) / 10.0, what));
    }

    List<TraceInfo.Label> labels() {
        return labels;
    }

    /** The rise in °C, as a part of the way to the gel point, at which the scenario's trouble begins. */
    private double beginsAtC() {
        double part = scenario == Scenario.SCORCH ? 0.66 : 0.5;
        return part * settings.riseC();
    }

    private void begin(double t, Pan pan) {
        switch (scenario) {
            case STALL -> label(t, "heat-off");
            case HEAT_CHANGE -> label(t, "heat-down");
            case PROBE_OUT -> label(t, "probe-out-begins");
            case GAP -> label(t, "gap-begins");
            case SCORCH -> label(t, "scorch-begins");
            case COLD_WATER -> {
                label(t, "water-added");
                pan.addWater(COLD_KG, COLD_C);
            }
            default -> {}
        }
    }

    /** Whether the trouble still lasts; its end is labelled once. */
    private boolean during(double t, double sinceS, double lastsS, String end) {
        if (sinceS < 0) {
            return false;
        }
        if (sinceS >= lastsS && labels.stream().noneMatch(label -> label.what().equals(end))) {
            label(t, end);
        }
        return sinceS < lastsS;
    }

    private boolean testing(double t, Pan pan) {
        boolean due = pan.boiling() && pan.riseC() >= settings.riseC() - (tests == 0 ? 0.9 : 0.2);
        if (due && tests < 2 && t - testFromT > 2 * TEST_S) {
            tests++;
            testFromT = t;
            label(t, "test-begins");
        }
        boolean testing = t - testFromT < TEST_S;
        if (!testing && count("test-begins") > count("test-ends")) {
            label(t, "test-ends");
        }
        return testing;
    }

    private long count(String what) {
        return labels.stream().filter(label -> label.what().equals(what)).count();
    }
}
