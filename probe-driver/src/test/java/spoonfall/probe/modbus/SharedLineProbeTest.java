package spoonfall.probe.modbus;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoonfall.probe.Hearing;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeContract;
import spoonfall.probe.serial.SharedLine;

/** A probe that shares its line does what every probe does. */
final class SharedLineProbeTest extends ProbeContract {
    @Override
    protected Rig rig(List<Double> temperaturesC) {
        Map<String, String> specs = new LinkedHashMap<>();
        specs.put("jam", "modbus:%s,register=7,id=9,scale=0.01");
        specs.put("pan", "modbus:%s,register=0,id=1,scale=0.01");
        specs.put("jelly", "modbus:%s,register=0,id=2,scale=0.01");
        SharedLine line = new SharedLine(specs, (n, request, to) -> {
            double celsius = request[0] == 1 ? temperaturesC.get(Math.min(n, temperaturesC.size() - 1)) : 20;
            to.send(Registers.answer(request, Registers.hundredths(celsius)));
        });
        return new Rig() {
            @Override
            public Probe probe() {
                return line.probe("pan");
            }

            /** It is asked; the others on the line are, too, from now on. */
            @Override
            public void play(List<Double> played) {
                line.probe("jam").start(new Hearing());
                line.probe("jelly").start(new Hearing());
            }

            @Override
            public void close() {
                line.close();
            }
        };
    }
}
