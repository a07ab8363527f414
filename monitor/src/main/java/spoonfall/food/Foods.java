package spoonfall.food;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import spoonfall.units.Spelling;

/** The foods that are known, by name. */
public final class Foods {
    private static final int SUGGESTED = 3;
    private static final int LONGEST_SHOWN = 40;

    private final Map<String, Food> byName = new LinkedHashMap<>();
    private final List<Food> all;

    /** Those foods; a later one takes the place of an earlier one of the same name. */
    public Foods(List<Food> foods) {
        Map<String, Food> named = new LinkedHashMap<>();
        foods.forEach(food -> named.put(food.name(), food));
        all = List.copyOf(named.values());
        all.forEach(food -> food.others().forEach(other -> byName.putIfAbsent(key(other), food)));
        all.forEach(food -> byName.put(key(food.name()), food));
    }

    /** All of them, in the order of the table. */
    public List<Food> all() {
        return all;
    }

    /** These foods and others, which win. */
    public Foods and(List<Food> others) {
        List<Food> both = new ArrayList<>(all);
        both.addAll(others);
        return new Foods(both);
    }

    /** The food of that name, whichever case, one or many. */
    public Optional<Food> find(String name) {
        return Optional.ofNullable(byName.get(key(name)));
    }

    /**
     * The food of that name.
     *
     * @throws IllegalArgumentException with the nearest names that are known
     */
    public Food named(String name) {
        return find(name).orElseThrow(() -> {
            String shown = name.length() > LONGEST_SHOWN ? name.substring(0, LONGEST_SHOWN) + "…" : name;
            return new IllegalArgumentException("\"" + shown.strip() + "\" is not in the table of foods; did you mean "
                    + String.join(" or ", nearest(name))
                    + "? Foods of your own go into foods.csv in the data folder, or into a file for \"spoonfall plan --foods FILE\"; "
                    + "the user guide says how");
        });
    }

    /** The names that are nearest to that one: those that share a word with it first, then by spelling. */
    public List<String> nearest(String name) {
        String asked = key(name.substring(0, Math.min(name.length(), LONGEST_SHOWN)));
        return byName.keySet().stream()
                .sorted(Comparator.comparingInt(known -> away(asked, known)))
                .map(known -> byName.getOrDefault(known, all.get(0)).name())
                .distinct()
                .limit(SUGGESTED)
                .toList();
    }

    private static int away(String asked, String known) {
        boolean shared = Stream.of(asked.split(" "))
                .anyMatch(word -> word.length() > 2 && List.of(known.split(" ")).contains(word));
        return Spelling.distance(asked, known) - (shared ? LONGEST_SHOWN : 0);
    }

    /** A name as it is looked up: one of each word, in lower case. */
    private static String key(String name) {
        String bare = name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s,_-]+", " ");
        return Stream.of(bare.split(" "))
                .map(Foods::one)
                .reduce((a, b) -> a + " " + b)
                .orElse("");
    }

    private static String one(String word) {
        if (word.endsWith("ies") && word.length() > 4) {
            return word.substring(0, word.length() - 3) + "y";
        }
        if (word.endsWith("ches") || word.endsWith("shes")) {
            return word.substring(0, word.length() - 2);
        }
        return word.endsWith("s") && !word.endsWith("ss") && word.length() > 3
                ? word.substring(0, word.length() - 1)
                : word;
    }
}
