package spoonfall.cli.probe;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spoonfall.cli.option.Output;
import spoonfall.probe.serial.SerialPorts;
import spoonfall.web.wire.WireJson;

/** {@code spoonfall ports}: the serial ports of this machine. */
@Command(name = "ports", description = "List the serial ports, and say which can be used.")
public final class PortsCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--json", description = "One JSON object a line.")
    private boolean json;

    @Option(
            names = "--watch",
            paramLabel = "PROBE",
            description = "Show what comes from a port, such as /dev/ttyUSB0 or text:/dev/ttyUSB0,baud=115200, "
                    + "and count it by what it is.")
    private @Nullable String watch;

    @Option(names = "--seconds", paramLabel = "N", description = "How long to watch; until Ctrl-C unless given.")
    private double seconds = Double.POSITIVE_INFINITY;

    @Override
    public Integer call() throws InterruptedException {
        PrintWriter out = Output.of(spec);
        if (watch != null) {
            PortWatch.watch(watch, seconds, out);
            return 0;
        }
        List<SerialPorts.Port> ports = SerialPorts.list();
        if (json) {
            ports.forEach(port -> out.println(WireJson.text(object(port))));
            return 0;
        }
        if (ports.isEmpty()) {
            out.println("No serial port is here. Plug the thermometer in and look again.");
        }
        for (SerialPorts.Port port : ports) {
            out.println(port.path());
            line(out, "maker", port.maker());
            line(out, "product", port.product());
            line(out, "serial number", port.serialNumber());
            line(out, "stable name", port.stablePath());
            line(out, "trouble", port.trouble());
        }
        return 0;
    }

    private static void line(PrintWriter out, String what, Optional<String> value) {
        value.ifPresent(text -> out.printf(Locale.ROOT, "  %-14s %s%n", what, text));
    }

    private static ObjectNode object(SerialPorts.Port port) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("path", port.path());
        node.put("stablePath", port.stablePath().orElse(null));
        node.put("maker", port.maker().orElse(null));
        node.put("product", port.product().orElse(null));
        node.put("serialNumber", port.serialNumber().orElse(null));
        return node.put("trouble", port.trouble().orElse(null));
    }
}
