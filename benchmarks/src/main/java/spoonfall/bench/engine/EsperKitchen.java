package spoonfall.bench.engine;

import com.espertech.esper.common.client.EPCompiled;
import com.espertech.esper.common.client.configuration.Configuration;
import com.espertech.esper.compiler.client.CompilerArguments;
import com.espertech.esper.compiler.client.EPCompileException;
import com.espertech.esper.compiler.client.EPCompilerProvider;
import com.espertech.esper.runtime.client.EPDeployException;
import com.espertech.esper.runtime.client.EPEventService;
import com.espertech.esper.runtime.client.EPRuntime;
import com.espertech.esper.runtime.client.EPRuntimeProvider;
import com.espertech.esper.runtime.client.EPStatement;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import spoonfall.cook.CookSettings;
import spoonfall.probe.Reading;

/**
 * The nearest rules to the eight alarms of a pan and its probe that Esper's language (8.9) allows, on one thread with the readings' own time;
 * what several of them need is worked out once. It knows no curve, no stages and no boil, so that the climb which its stall and its scorch
 * compare with is the thermometer's own two minutes before; its rows have no deadband and no life cycle.
 */
final class EsperKitchen {
    private static final String RULES = """
            @name('steady') @public insert into Steady
              select slope as perS from Degrees#time(120 sec)#linest(t, c);
            @name('quick') @public insert into Quick
              select slope as perS from Degrees#time(45 sec)#linest(t, c);
            @name('before') @public insert into Before
              select prev(120, perS) as perS, perS as nowPerS from Steady#length(121);
            @name('level') @public insert into Level
              select avg(c) as levelC from Degrees#time(8 sec);
            @name('start-set-tests') select levelC from Level(levelC >= WINDOW);
            @name('gel-point') select levelC from Level(levelC >= GEL_POINT);
            @name('past-gel-point') select levelC from Level(levelC >= PAST);
            @name('stalled') select nowPerS from Before(perS > 0.001 and nowPerS < 0.38 * perS);
            @name('scorch-risk') select q.perS from Quick(perS > 0.01) as q unidirectional, Before#lastevent as b
              where q.perS > 3 * b.perS;
            @name('probe-silent') select * from pattern [every Degrees -> (timer:interval(5 sec) and not Degrees)];
            @name('probe-out-of-pan') select max(c) - last(c) as fellC from Degrees#time(20 sec) having max(c) - last(c) > 15;
            @name('probe-stuck') select count(*) as same from Degrees#time(60 sec) having count(*) >= 7 and max(c) = min(c);
            @name('probe-implausible') select c from Degrees#length(2)
              where c > HOTTEST or c < -10 or Math.abs(c - prev(1, c)) > 8;
            """;
    private static final Set<String> WORKED_OUT = Set.of("steady", "quick", "before", "level");
    private static final double HOTTEST_RISE_C = 40;
    private static final double PAST_C = 1;

    private final EPCompiled compiled;
    private final Configuration configuration;
    private int runs;

    EsperKitchen(CookSettings settings) throws EPCompileException {
        configuration = new Configuration();
        configuration.getCommon().addEventType("Degrees", Degrees.class);
        configuration.getRuntime().getThreading().setInternalTimerEnabled(false);
        configuration.getRuntime().getThreading().setListenerDispatchPreserveOrder(false);
        configuration.getRuntime().getThreading().setInsertIntoDispatchPreserveOrder(false);
        compiled = EPCompilerProvider.getCompiler().compile(rules(settings), new CompilerArguments(configuration));
    }

    private static String rules(CookSettings settings) {
        double waterBoilC = settings.waterBoil().temperatureC();
        return RULES.replace("WINDOW", Double.toString(settings.windowFromC()))
                .replace("GEL_POINT", Double.toString(settings.gelPointC()))
                .replace("PAST", Double.toString(settings.gelPointC() + PAST_C))
                .replace("HOTTEST", Double.toString(waterBoilC + HOTTEST_RISE_C));
    }

    /** Sends a cook through a runtime of its own; returns how long the readings took and what the rules said. */
    Run run(List<Reading> readings) throws EPDeployException {
        EPRuntime runtime = EPRuntimeProvider.getRuntime("pan " + runs++, configuration);
        runtime.initialize();
        EPEventService service = runtime.getEventService();
        service.clockExternal();
        service.advanceTime(0);
        Map<String, Integer> said = new TreeMap<>();
        for (EPStatement statement :
                runtime.getDeploymentService().deploy(compiled).getStatements()) {
            if (!WORKED_OUT.contains(statement.getName())) {
                said.put(statement.getName(), 0);
                statement.addListener((news, olds, source, of) ->
                        said.merge(source.getName(), news == null ? 0 : news.length, Integer::sum));
            }
        }
        long begun = System.nanoTime();
        for (Reading reading : readings) {
            service.advanceTime(reading.atNanos() / 1_000_000);
            double c = reading.temperatureC().orElseThrow();
            service.sendEventBean(new Degrees(reading.atNanos() / 1e9, c), "Degrees");
        }
        long nanos = System.nanoTime() - begun;
        runtime.destroy();
        return new Run(nanos, said);
    }

    /**
     * One cook through the rules.
     *
     * @param nanos that the readings took
     * @param said rows that each rule gave
     */
    record Run(long nanos, Map<String, Integer> said) {}
}
