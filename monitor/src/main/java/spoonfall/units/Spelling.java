package spoonfall.units;

import java.util.Arrays;

/** How far two words are apart. */
public final class Spelling {
    private Spelling() {}

    /** How many letters must be put in, taken out or exchanged (Levenshtein 1966) to make one from the other. */
    public static int distance(String one, String other) {
        int[] row = new int[other.length() + 1];
        Arrays.setAll(row, i -> i);
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int exchange = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(exchange, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[other.length()];
    }
}
