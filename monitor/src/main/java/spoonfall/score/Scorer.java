package spoonfall.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import spoonfall.cook.AlarmName;
import spoonfall.cook.Forecast;
import spoonfall.probe.trace.Trace;

/** Holds what the monitor said of one cook against what truly happened. */
public final class Scorer {
    /** Minutes before the gel point at which forecasts are judged. */
    public static final List<Integer> HORIZONS = List.of(20, 15, 10, 5, 2);

    /** A fault's alarm may still come that long after its end without being false. */
    static final double AFTERWARDS_S = 120;

    /** A fault that is over sooner, or with which the cook ends sooner, need not be found. */
    private static final double LEAST_FAULT_S = 40;

    private static final double FLOOD_S = 600;
    private static final Set<String> JUDGED =
            Set.of("stalled", "scorch-risk", "probe-silent", "probe-out-of-pan", "probe-stuck", "probe-implausible");
    private static final Set<String> PROMPTS = Arrays.stream(AlarmName.values())
            .filter(AlarmName::isPrompt)
            .map(AlarmName::wireName)
            .collect(Collectors.toUnmodifiableSet());
    private static final Set<String> GEL_CALLS = Set.of("gel-point", "past-gel-point");

    private final String name;
    private final Trace trace;
    private final Truth truth;
    private final Observed observed;

    private Scorer(String name, Trace trace, Observed observed) {
        this.name = name;
        this.trace = trace;
        this.observed = observed;
        truth = new Truth(trace.info(), trace.lastS());
    }

    /** The score of the cook {@code name}, in which the monitor told what {@code observed} holds. */
    public static CookScore score(String name, Trace trace, Observed observed) {
        return new Scorer(name, trace, observed).score();
    }

    private CookScore score() {
        OptionalDouble called = firstRaised(Set.of("start-set-tests"));
        OptionalDouble windowT = truth.windowT();
        OptionalDouble gelCall = firstRaised(GEL_CALLS);
        return new CookScore(
                name,
                trace.info().title(),
                truth.clean(),
                forecasts(),
                detections(),
                falseAlarms(),
                truth.endT(),
                windowT.isPresent(),
                windowT.isPresent() && truth.readAt(windowT.getAsDouble()),
                difference(called, windowT),
                early(gelCall),
                gelCall.isPresent() && truth.readingWrongAt(gelCall.getAsDouble()),
                mostInTenMinutes(call -> true),
                mostInTenMinutes(call -> !PROMPTS.contains(call.alarm())));
    }

    private List<CookScore.ForecastScore> forecasts() {
        List<CookScore.ForecastScore> scores = new ArrayList<>();
        if (truth.gelT().isEmpty() || truth.boilT().isEmpty()) {
            return scores;
        }
        double gelT = truth.gelT().getAsDouble();
        for (int minutes : HORIZONS) {
            double t = gelT - 60 * minutes;
            if (t >= truth.boilT().getAsDouble()) {
                observed.lookAt(t)
                        .filter(look -> truth.foreseeableAt(look.t()))
                        .ifPresent(look -> scores.add(forecast(minutes, gelT, look)));
            }
        }
        return scores;
    }

    private CookScore.ForecastScore forecast(int minutes, double gelT, Observed.Look look) {
        Optional<Forecast> said = look.forecast();
        double leftS = gelT - look.t();
        double gelPointC = observed.settings().gelPointC();
        double boilT = truth.boilT().orElseThrow();
        return new CookScore.ForecastScore(
                minutes,
                less(said.map(forecast -> OptionalDouble.of(forecast.etaS())).orElse(OptionalDouble.empty()), leftS),
                less(Extrapolation.LINE.etaS(trace, boilT, look.t(), gelPointC), leftS),
                less(Extrapolation.PARABOLA.etaS(trace, boilT, look.t(), gelPointC), leftS),
                said.filter(forecast -> forecast.lowS() <= leftS && leftS <= forecast.highS())
                        .isPresent(),
                said.map(forecast -> OptionalDouble.of(forecast.highS() - forecast.lowS()))
                        .orElse(OptionalDouble.empty()));
    }

    private List<CookScore.Detection> detections() {
        List<CookScore.Detection> detections = new ArrayList<>();
        for (String alarm : Truth.faults()) {
            for (Span fault : truth.faults(alarm)) {
                if (Math.min(fault.toT(), truth.endT()) - fault.fromT() >= LEAST_FAULT_S) {
                    detections.add(new CookScore.Detection(alarm, fault.fromT(), delayS(alarm, fault)));
                }
            }
        }
        return detections;
    }

    private OptionalDouble delayS(String alarm, Span fault) {
        if (observed.onAt(fault.fromT(), alarm)) {
            return OptionalDouble.of(0);
        }
        return observed.raised().stream()
                .filter(call -> call.alarm().equals(alarm) && fault.holds(call.t()))
                .mapToDouble(call -> call.t() - fault.fromT())
                .findFirst();
    }

    private List<CookScore.FalseAlarm> falseAlarms() {
        List<CookScore.FalseAlarm> alarms = new ArrayList<>();
        for (Observed.Call call : observed.raised()) {
            boolean due = truth.faults(call.alarm()).stream()
                    .anyMatch(span -> span.longerBy(AFTERWARDS_S).holds(call.t()));
            if (JUDGED.contains(call.alarm()) && !due && call.t() <= truth.endT()) {
                boolean beside = truth.faultAt(call.t(), AFTERWARDS_S);
                alarms.add(new CookScore.FalseAlarm(call.alarm(), call.t(), beside));
            }
        }
        return alarms;
    }

    private OptionalDouble early(OptionalDouble gelCall) {
        OptionalDouble late = difference(gelCall, truth.gelT());
        boolean early = late.isPresent() && late.getAsDouble() < 0;
        return early ? OptionalDouble.of(-late.getAsDouble()) : OptionalDouble.empty();
    }

    private int mostInTenMinutes(Predicate<Observed.Call> which) {
        int most = 0;
        List<Observed.Call> calls = observed.raised().stream().filter(which).toList();
        int from = 0;
        for (int i = 0; i < calls.size(); i++) {
            while (calls.get(i).t() - calls.get(from).t() > FLOOD_S) {
                from++;
            }
            most = Math.max(most, i - from + 1);
        }
        return most;
    }

    private OptionalDouble firstRaised(Set<String> alarms) {
        return observed.raised().stream()
                .filter(call -> alarms.contains(call.alarm()))
                .mapToDouble(Observed.Call::t)
                .findFirst();
    }

    private static OptionalDouble difference(OptionalDouble said, OptionalDouble truly) {
        return truly.isPresent() ? less(said, truly.getAsDouble()) : OptionalDouble.empty();
    }

    private static OptionalDouble less(OptionalDouble value, double by) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() - by) : value;
    }
}
