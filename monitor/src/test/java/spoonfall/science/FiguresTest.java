package spoonfall.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

final class FiguresTest {
    private static final int SUMMARY_CELLS = 5;

    @Test
    void worstDifferencePrinted_isTheOneComputedOverEveryRow() {
        List<String[]> summary = summary();
        List<Group> groups = Figures.all();
        assertThat(summary).hasSameSizeAs(groups);
        for (int i = 0; i < groups.size(); i++) {
            Group group = groups.get(i);
            String[] cells = summary.get(i);
            assertThat(cells[0]).isEqualTo(group.name());
            assertThat(cells[2]).isEqualTo(String.valueOf(group.rows().size()));
            String printed = cells[3].split(" ", -1)[0];
            double largest = 0;
            for (Row row : group.rows()) {
                largest = Math.max(largest, Math.abs(row.ours() - Double.parseDouble(row.published())));
            }
            int decimals = printed.length() - printed.indexOf('.') - 1;
            String rounded = String.format(Locale.ROOT, "%." + decimals + "f", largest);
            assertThat(printed.replace("-", "")).as(group.name()).isEqualTo(rounded);
        }
    }

    @Test
    void everyRow_isInTheTables() {
        String tables = Figures.tables();
        for (Group group : Figures.all()) {
            for (Row row : group.rows()) {
                assertThat(tables).contains("| " + group.name() + " | " + row.point() + " | " + row.published());
            }
        }
    }

    @Test
    void publishedRisesOfThePreservesRange_lieWithinTwoDoubts() {
        List<Row> rows = new ArrayList<>();
        for (Group group : Figures.rises()) {
            for (Row row : group.rows()) {
                if (row.curve().orElseThrow().solids() <= 0.70) {
                    rows.add(row);
                    assertThat(row.doubts().orElseThrow())
                            .as("%s, %s", group.name(), row.point())
                            .isBetween(-2.0, 2.0);
                }
            }
        }
        assertThat(rows).hasSize(20);
    }

    @Test
    void rows_haveAsManyCellsAsTheirHeads() {
        int cells = 0;
        for (String line : Figures.tables().lines().toList()) {
            if (line.startsWith("|")) {
                int its = line.split("\\|", -1).length;
                assertThat(its).as(line).isEqualTo(cells == 0 ? its : cells);
                cells = its;
            } else {
                cells = 0;
            }
        }
    }

    @Test
    void plot_isWellFormedAndReadableInLightAndDark() throws Exception {
        String svg = Figures.syrupPlot();
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        assertThat(document.getDocumentElement().getAttribute("role")).isEqualTo("img");
        assertThat(document.getElementsByTagName("title").getLength()).isEqualTo(1);
        assertThat(document.getElementsByTagName("desc").getLength()).isEqualTo(1);
        assertThat(svg).contains("prefers-color-scheme:dark");
        List<String> sizes = Pattern.compile("([0-9]+)px")
                .matcher(svg)
                .results()
                .map(size -> size.group(1))
                .toList();
        assertThat(sizes)
                .isNotEmpty()
                .allSatisfy(size -> assertThat(Integer.parseInt(size)).isGreaterThanOrEqualTo(14));
    }

    @Test
    void plot_holdsEveryPublishedPointOfItsRangeAndNamesItsSource() {
        String svg = Figures.syrupPlot();
        long points = 0;
        for (Group group : Figures.rises()) {
            assertThat(svg).contains(">" + group.name() + "</text>");
            points += group.rows().stream()
                    .filter(row -> row.curve().orElseThrow().solids() <= 0.80)
                    .count();
        }
        long marks = Pattern.compile("class=\"mark\"").matcher(svg).results().count();
        assertThat(marks).isEqualTo(points + Figures.rises().size());
    }

    @Test
    void plot_staysInsideItsEdges() {
        Pattern number = Pattern.compile("[( ,\"](-?[0-9]+\\.[0-9])");
        for (MatchResult found : number.matcher(Figures.syrupPlot()).results().toList()) {
            assertThat(Double.parseDouble(found.group(1))).isBetween(0.0, 860.0);
        }
    }

    @Test
    void whatIsNoNumber_isRefusedByName() {
        assertThatThrownBy(() -> Row.of("66 %", "NaN", 1)).hasMessageContaining("66 %");
        assertThatThrownBy(() -> new Group("A table", Origin.READ, "°C", List.of()))
                .hasMessageContaining("A table");
    }

    private static List<String[]> summary() {
        List<String[]> rows = new ArrayList<>();
        boolean inside = false;
        for (String line : Figures.tables().lines().toList()) {
            if (line.startsWith("| source | known ")) {
                inside = true;
            } else if (!line.startsWith("|")) {
                inside = false;
            } else if (inside && !line.startsWith("|---")) {
                String[] cells = line.substring(2, line.length() - 2).split(" \\| ", -1);
                assertThat(cells).hasSize(SUMMARY_CELLS);
                rows.add(cells);
            }
        }
        return rows;
    }
}
