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
import java.util.TreeMap;
import spoonfall.probe.Reading;

/**
 * The nearest rules to four alarms that Esper's language (8.9) allows, on one thread with the readings' own time. It
 * knows no curve, so its stall is one of the thermometer: the line through two minutes has less than 38 % of the slope
 * of two minutes ago.
 */
final class EsperKitchen {
    private static final String RULES = """
            @name('slope') @public insert into Slope
              select slope as perS from Degrees#time(120 sec)#linest(t, c);
            @name('stall') select perS from Slope#length(121)
              where prev(120, perS) > 0.001 and perS < 0.38 * prev(120, perS);
            @name('silent') select * from pattern [every Degrees -> (timer:interval(5 sec) and not Degrees)];
            @name('fall') select max(c) - last(c) as fellC from Degrees#time(20 sec) having max(c) - last(c) > 15;
            @name('gel') select avg(c) as levelC from Degrees#time(8 sec) having avg(c) >= GEL_POINT;
            """;

    private final EPCompiled compiled;
    private final Configuration configuration;
    private int runs;

    EsperKitchen(double gelPointC) throws EPCompileException {
        configuration = new Configuration();
        configuration.getCommon().addEventType("Degrees", Degrees.class);
        configuration.getRuntime().getThreading().setInternalTimerEnabled(false);
        configuration.getRuntime().getThreading().setListenerDispatchPreserveOrder(false);
        configuration.getRuntime().getThreading().setInsertIntoDispatchPreserveOrder(false);
        compiled = EPCompilerProvider.getCompiler()
                .compile(RULES.replace("GEL_POINT", Double.toString(gelPointC)), new CompilerArguments(configuration));
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
            if (!statement.getName().equals("slope")) {
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
