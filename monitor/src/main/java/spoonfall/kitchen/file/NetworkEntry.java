package spoonfall.kitchen.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a kitchen file says of the network.
 *
 * @param lan whether paired devices are let in
 * @param port the network's port
 * @param names the names by which the network knows this machine
 * @param plain whether the network is served without TLS
 * @param certificate a certificate (PEM)
 * @param key its private key (PEM); given if the certificate is
 */
public record NetworkEntry(
        boolean lan,
        Optional<Integer> port,
        List<String> names,
        boolean plain,
        Optional<Path> certificate,
        Optional<Path> key) {
    /** Keeps a copy of the names. */
    public NetworkEntry {
        names = List.copyOf(names);
    }
}
