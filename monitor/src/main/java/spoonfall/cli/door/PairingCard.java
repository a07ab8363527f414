package spoonfall.cli.door;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.Console;
import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import spoonfall.door.QrPicture;

/** A code as the terminal shows it. */
final class PairingCard {
    private PairingCard() {}

    /** Prints the code of a door, with a picture for a phone's camera where people look. */
    static void print(PrintWriter out, JsonNode door) {
        JsonNode code = door.path("code");
        String url = code.path("url").asText();
        String address = door.path("network").path("addresses").path(0).asText();
        if (!url.isEmpty() && isTerminal()) {
            out.print(QrPicture.of(url).halfBlocks());
        }
        out.println("Code for a " + code.path("role").asText() + ": "
                + code.path("code").asText() + " (once, within "
                + Math.max(1, Math.round(code.path("leftS").asDouble() / 60)) + " minutes)");
        if (!address.isEmpty()) {
            out.println("On the device, open " + address + " and enter it.");
        }
        String fingerprint = door.path("network").path("fingerprint").asText("");
        if (!fingerprint.isEmpty() && !fingerprint.equals("null")) {
            out.println("The browser will warn that it does not know this machine. Its certificate's SHA-256 must be");
            out.println("  " + fingerprint);
        }
        out.flush();
    }

    /** Whether people look at what is printed. What goes into a file or a journal is kept, and a code must not be. */
    @SuppressWarnings("SystemConsoleNull") // what newer ones say is asked below
    static boolean isTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            // Since Java 22 there is a console without a terminal, too.
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (NoSuchMethodException e) {
            return true;
        } catch (IllegalAccessException | InvocationTargetException e) {
            return false;
        }
    }
}
