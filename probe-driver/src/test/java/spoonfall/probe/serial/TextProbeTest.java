package spoonfall.probe.serial;

import java.util.List;
import java.util.Locale;
import spoonfall.probe.ProbeContract;

final class TextProbeTest extends ProbeContract {
    @Override
    protected Rig rig(List<Double> temperaturesC) {
        return new SerialRig(
                "text:%s,baud=115200,parity=even,stopbits=2", c -> String.format(Locale.ROOT, "T1: %.2f C\r\n", c));
    }
}
