package spoonfall.door;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Collection;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * The names by which this machine is asked from the network. A page of another site that had its name changed to our address (DNS rebinding)
 * asks by its own name and is known by that.
 *
 * @param names in small letters, without a port
 */
public record HostNames(Set<String> names) {
    /** Keeps a copy. */
    public HostNames {
        names = Set.copyOf(names);
        for (String name : names) {
            if (!name.matches("[a-z0-9._:-]{1,253}")) {
                throw new IllegalArgumentException(
                        "a host name has letters, digits, dots and hyphens, without a port or a path, such as kitchen.home; not \""
                                + name + "\"");
            }
        }
    }

    /** The machine's own name, alone and in the local network's domain, and those given. */
    public static HostNames ofThisMachine(Collection<String> given) {
        Set<String> names = new TreeSet<>();
        for (String name : given) {
            names.add(plain(name));
        }
        try {
            String own = plain(InetAddress.getLocalHost().getHostName());
            if (own.matches("[a-z0-9.-]+")) {
                names.add(own);
                names.add(own.split("\\.", -1)[0] + ".local");
            }
        } catch (UnknownHostException e) {
            // a machine without a name is asked by its address
        }
        names.removeIf(String::isEmpty);
        return new HostNames(names);
    }

    /**
     * Whether a request by that name is meant for this machine.
     *
     * @param name the host asked for, without a port; an IPv6 address may be in brackets
     * @param local the address at which the request arrived
     */
    public boolean known(String name, String local) {
        String asked = plain(name);
        return names.contains(asked) || asked.equals(plain(local)) || asked.equals("localhost");
    }

    private static String plain(String name) {
        String bare = name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\[\\]]|%.*", "");
        return bare.endsWith(".") ? bare.substring(0, bare.length() - 1) : bare;
    }
}
