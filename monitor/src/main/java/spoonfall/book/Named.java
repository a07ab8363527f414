package spoonfall.book;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds one of a few by its name. */
final class Named {
    private Named() {}

    static <T> T in(T[] all, Function<T, String> wireName, String name, String what) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(all)
                .filter(one -> wireName.apply(one).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        what + " is " + Arrays.stream(all).map(wireName).collect(Collectors.joining(", ")) + ", not \""
                                + shortened(name) + "\""));
    }

    private static String shortened(String name) {
        return name.length() > 40 ? name.substring(0, 40) + "…" : name;
    }
}
