package spoonfall.science;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Writes the figures as Markdown tables. */
final class FigureTables {
    private FigureTables() {}

    static String markdown(List<Group> groups) {
        Predicate<Group> isRise = group -> group.rows().get(0).curve().isPresent();
        return "The curve at sea level:\n\n"
                + CurveTable.markdown()
                + "\nEvery source, with its worst difference:\n\n"
                + summary(groups)
                + "\nEvery rise at sea level, °C, with the difference in doubts of the curve as well:\n\n"
                + "| source | sugar | published | ours | difference | in doubts |\n|---|---|---|---|---|---|\n"
                + lines(groups.stream().filter(isRise).toList(), true)
                + "\nEverything else:\n\n"
                + "| source | at | published | ours | difference |\n|---|---|---|---|---|\n"
                + lines(groups.stream().filter(isRise.negate()).toList(), false);
    }

    private static String summary(List<Group> groups) {
        return groups.stream()
                .map(group -> line(
                        group.name(),
                        group.origin().words(),
                        String.valueOf(group.rows().size()),
                        group.worst().differenceText() + " " + group.unit(),
                        group.worst().point()))
                .collect(Collectors.joining(
                        "",
                        "| source | known | values | worst, ours less published | at |\n|---|---|---|---|---|\n",
                        ""));
    }

    private static String lines(List<Group> groups, boolean rises) {
        StringBuilder text = new StringBuilder();
        for (Group group : groups) {
            for (Row row : group.rows()) {
                String unit = rises ? "" : " " + group.unit();
                String start = line(
                        group.name(), row.point(), row.published() + unit, row.oursText() + unit, row.differenceText());
                String doubts =
                        row.doubts().map(number -> Row.fixed(number, 1) + " |").orElse("");
                text.append(start.stripTrailing())
                        .append(doubts.isEmpty() ? "" : " " + doubts)
                        .append('\n');
            }
        }
        return text.toString();
    }

    private static String line(String... cells) {
        return "| " + String.join(" | ", cells) + " |\n";
    }
}
