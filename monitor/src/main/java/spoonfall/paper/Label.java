package spoonfall.paper;

import java.util.List;
import java.util.stream.Stream;
import spoonfall.book.Wording;

/**
 * What stands on the label of a jar. What is empty is left out.
 *
 * @param contents what is in it, the largest line
 * @param batch which batch
 * @param made when, such as {@code 25 November 2026}
 * @param kitchen who made it
 */
public record Label(String contents, String batch, String made, String kitchen) {
    /** As many characters fit into a line of a label. */
    public static final int LONGEST = 80;

    /** Validates the lines. */
    public Label {
        contents = Wording.checked("a line of a label", contents, LONGEST);
        batch = Wording.checked("a line of a label", batch, LONGEST);
        made = Wording.checked("a line of a label", made, LONGEST);
        kitchen = Wording.checked("a line of a label", kitchen, LONGEST);
        if (contents.isEmpty() && batch.isEmpty()) {
            throw new IllegalArgumentException(
                    "nothing says what is in the jar; say so with --contents, such as \"Seville orange marmalade\"");
        }
    }

    /** The lines from the top, the first of them in larger letters. */
    List<String> lines() {
        return Stream.of(contents, batch, made.isEmpty() ? "" : "Made " + made, kitchen)
                .filter(line -> !line.isEmpty())
                .distinct()
                .toList();
    }
}
