package spoonfall.cli.door;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.PrintWriter;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.option.DataOption;
import spoonfall.cli.option.Output;
import spoonfall.cli.option.PortOption;
import spoonfall.cli.option.Understood;
import spoonfall.door.Device;
import spoonfall.door.DeviceBook;
import spoonfall.door.Role;

/** {@code spoonfall devices}: who was let in from the network. */
@Command(
        name = "devices",
        description = "List, revoke and let in the phones and tablets that \"serve --lan\" serves.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "For example:",
            "  spoonfall devices code --role viewer",
            "  spoonfall devices list",
            "  spoonfall devices revoke k3f9ab"
        })
public final class DevicesCommand implements Runnable {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT).withZone(ZoneId.systemDefault());

    @Spec
    private @Nullable CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            scope = ScopeType.INHERIT,
            description = "The port of this machine's page; 8460 unless given.")
    private int port = PortOption.DEFAULT;

    @Mixin
    private DataOption data = new DataOption();

    @Override
    public void run() {
        if (spec != null) {
            spec.commandLine().usage(spec.commandLine().getOut());
        }
    }

    @Command(name = "list", description = "Every device that was let in.")
    int list() {
        PrintWriter out = Output.of(spec);
        List<Device> devices = DeviceBook.open(data.folder().devices()).all();
        for (Device device : devices) {
            out.println(device.id() + "  "
                    + String.format(Locale.ROOT, "%-6s", device.role().wireName()) + "  "
                    + TIME.format(device.pairedAt()) + "  " + device.name());
        }
        if (devices.isEmpty()) {
            out.println("No device was let in yet; \"spoonfall devices code\" makes a code for one.");
        }
        return 0;
    }

    @Command(name = "revoke", description = "Shut a device out; what it has open ends at once.")
    int revoke(@Parameters(paramLabel = "ID", description = "Its letters and digits in the list.") String id) {
        DeviceBook book = DeviceBook.open(data.folder().devices());
        Optional<Device> gone = book.revoke(id);
        if (gone.isEmpty()) {
            throw new CommandException("no device has the id \"" + id + "\"; \"spoonfall devices list\" shows them");
        }
        Output.of(spec).println("\"" + gone.get().name() + "\" is shut out.");
        return 0;
    }

    @Command(name = "code", description = "Make a code that lets one device in, once, within ten minutes.")
    int code(
            @Option(
                            names = "--role",
                            paramLabel = "ROLE",
                            defaultValue = "viewer",
                            description = "What it may do: viewer looks, cook acts; viewer unless given.")
                    String role) {
        Role wanted = Understood.value(role, Role::named);
        JsonNode door = new DoorClient(port)
                .code(wanted)
                .orElseThrow(() -> new CommandException("Spoonfall does not run at port " + port
                        + "; start it with \"spoonfall serve --lan\", or name its page's port with --port"));
        PairingCard.print(Output.of(spec), door);
        return 0;
    }
}
