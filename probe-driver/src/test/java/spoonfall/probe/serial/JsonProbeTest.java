package spoonfall.probe.serial;

import java.util.List;
import java.util.Locale;
import spoonfall.probe.ProbeContract;

final class JsonProbeTest extends ProbeContract {
    @Override
    protected Rig rig(List<Double> temperaturesC) {
        return new SerialRig(
                "json:%s,field=probe.temp,unit=F",
                c -> String.format(Locale.ROOT, "{\"id\":7,\"probe\":{\"temp\":%.3f}}\n", c * 1.8 + 32));
    }
}
