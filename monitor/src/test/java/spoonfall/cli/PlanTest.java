package spoonfall.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cli.sample.SampleBatch;
import spoonfall.kitchen.file.NotesFile;
import spoonfall.kitchen.file.PlanFile;
import spoonfall.kitchen.pantry.FoodBook;
import spoonfall.kitchen.pantry.HobBook;

final class PlanTest {
    private static final Path SAMPLE = Path.of("..", "sample-notes", "seville-orange-and-ginger.toml");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    Path folder = Path.of("");

    private int run(String... args) {
        String[] all = new String[args.length + 3];
        all[0] = "plan";
        all[1] = "--data";
        all[2] = folder.toString();
        System.arraycopy(args, 0, all, 3, args.length);
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), all);
    }

    private Path notes(String toml) throws IOException {
        return Files.writeString(folder.resolve("notes.toml"), toml);
    }

    @Test
    void theSampleNotes_arePlanned_andAreAnAfternoonToo() {
        assertThat(run(SAMPLE.toString(), "--elevation", "1240m")).isZero();
        assertThat(out.toString())
                .contains(
                        "Seville orange and ginger, batch 14",
                        "half-pint jars",
                        "The way there:",
                        "spoonfall jars",
                        "sugar sticks",
                        "1,240 m")
                .contains("100.3 °C (212.5 °F)")
                .doesNotContain("Take care");
        assertThat(NotesFile.read(SAMPLE).step("spirit")).isEmpty();
    }

    @Test
    void theDemosBatch_isThatOfTheSampleNotes() {
        PlanFile file = PlanFile.read(SAMPLE, FoodBook.usual());
        assertThat(file.ingredients()).isEqualTo(SampleBatch.notes().ingredients());
        assertThat(file.setup()).isEqualTo(SampleBatch.notes().setup());
        assertThat(file.name()).contains(SampleBatch.NAME);
    }

    @Test
    void json_isWhatThePageGets_andOptionsWinOverNotes() throws IOException {
        assertThat(run(SAMPLE.toString(), "--elevation", "1240m", "--power", "2kW", "--add", "2 tbsp honey", "--json"))
                .isZero();
        JsonNode plan = new ObjectMapper().readTree(out.toString());
        assertThat(plan.path("hob").path("from").asText()).isEqualTo("given");
        assertThat(plan.path("ingredients")).hasSize(6);
        assertThat(plan.path("ingredients").get(5).path("g").asDouble()).isCloseTo(42.4, within(0.1)); // 339 g / 8
        assertThat(plan.path("jars").path("low").asDouble())
                .isLessThan(plan.path("jars").path("high").asDouble());
        assertThat(plan.path("path")).hasSize(25);
    }

    @Test
    void whatEarlierCooksShowed_givesTheMinutes() {
        new HobBook(folder.resolve("hob.json")).add("pan", Instant.EPOCH, 0.045);
        assertThat(run("--add", "1 kg plums", "--add", "800g sugar")).isZero();
        assertThat(out.toString()).contains("by your earlier cooks").contains("give --elevation");
    }

    @Test
    void foodsOfOnesOwn_areReadFromTheDataFolder_andFromAFile() throws IOException {
        String table = "food,kind,piece_g,water,soluble,source\nhollin bank bitter,fruit,120,84.5,11,our own tree\n";
        Files.writeString(folder.resolve("foods.csv"), table);
        assertThat(run("--add", "6 Hollin Bank bitters", "--add", "700 g sugar"))
                .isZero();
        Path other = Files.writeString(folder.resolve("other.csv"), table.replace("bitter", "sweet"));
        assertThat(run("--foods", other.toString(), "--foods-known")).isZero();
        assertThat(out.toString()).contains("hollin bank sweet", "our own tree", "SR28 NDB 09200 (FDC 169097)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG", "fa-IR", "mr-IN"})
    void aPlan_isTheSame_whateverTheMachinesLocale(String locale) {
        String usual = printed(Locale.ROOT);
        assertThat(usual).contains("At pH 3.8", "wants a pan of", "instead of");
        assertThat(printed(Locale.forLanguageTag(locale))).isEqualTo(usual);
    }

    /** A plan of which much is to be said, as a machine of that locale prints it. */
    private String printed(Locale locale) {
        Locale machines = Locale.getDefault();
        Locale.setDefault(locale);
        try {
            int before = out.getBuffer().length();
            String[] spare = {"--ph", "3.8", "--pan", "3L", "--power", "1.2kW", "--scale", "2.5"};
            String[] batch = {"--add", "2 kg strawberries", "--add", "700g sugar", "--elevation", "1240m"};
            assertThat(run(Stream.of(batch, spare).flatMap(Stream::of).toArray(String[]::new)))
                    .isZero();
            return out.toString().substring(before);
        } finally {
            Locale.setDefault(machines);
        }
    }

    @Test
    void scaling_saysWhatDoesNotScale() {
        assertThat(run(SAMPLE.toString(), "--elevation", "1240m", "--scale", "2"))
                .isZero();
        assertThat(out.toString())
                .contains(
                        "2 times the batch",
                        "The hob does not grow",
                        "Take care:",
                        "pan of 14.",
                        "long-boil".substring(0, 4));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "|what goes in? Give batch notes",
                "--add sugar|write amount, unit and food",
                "--add '-2 kg sugar'|is not understood",
                "--add '900 kg sugar'|no pan holds",
                "--add '2 oragnes'|did you mean orange",
                "--add '4 orangs'|or into a file for \"spoonfall plan --foods FILE\"; the user guide says how",
                "--add '3 orange peel'|no weight for a piece",
                "--add '1 cup quince'|nobody weighed a cup",
                "--add '1 kg plums' --pan 8|needs a unit",
                "--add '1 kg plums' --kettle 4min --power 2kW|not both",
                "--add '1 kg plums' --jar bucket|quarter-pint, half-pint, pint",
                "--add '1 kg plums' --scale 900|0.05 to 50",
                "--add '1 kg plums' --scale twice|write it like 2, 1.5 or 1/2",
                "--add '1 kg plums' --rise 40C|must be 1 to",
                "--foods none.csv --add '1 kg plums'|there is no table of foods none.csv",
                "none.toml|there are no batch notes none.toml"
            })
    void whatCannotBe_isOneLine_withTheWayOut(@org.jspecify.annotations.Nullable String args, String says) {
        String[] split = args == null
                ? new String[0]
                : java.util.regex.Pattern.compile("'([^']*)'|(\\S+)")
                        .matcher(args)
                        .results()
                        .map(one -> one.group(1) == null ? one.group(2) : one.group(1))
                        .toArray(String[]::new);
        assertThat(run(split)).isNotZero();
        assertThat(err.toString()).contains(says).hasLineCount(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[[ingredient]]\nfood = \"sugar\"\n|line 2: ingredient: needs amount",
                "[[ingredient]]\nfood = \"oragne\"\namount = \"1\"\n|line 2: food: \"oragne\" is not in the table",
                "[[ingredient]]\nfood = \"sugar\"\namount = \"lots\"\n|line 3: amount: amount \"lots\" is not understood",
                "[[ingredient]]\nfood = \"sugar\"\namuont = \"1 kg\"\n|line 3: amuont: is not a key of batch notes; did you mean amount?",
                "[ingredient]\nfood = \"sugar\"\n|headed [[ingredient]]",
                "[plan]\npann = \"8L\"\n|line 2: pann: is not a key of batch notes; did you mean pan?",
                "plan = 3\n|headed [plan]",
                "[plan]\nname = \"x\"\npan = \"9\"\n|notes.toml, line 3: pan: volume \"9\" needs a unit",
                "[plan]\npower = \"2hp\"\n|line 2: power: power \"2hp\" has the unknown unit hp",
                "[plan]\nkettle = \"10s\"\n|line 2: kettle: a litre takes more than half a minute",
                "[plan]\npower = \"2kW\"\nkettle = \"4min\"\n|line 3: kettle: give the power or",
                "[plan]\nph = \"9\"\n|line 2: ph: pH must be 1 to 7",
                "[plan]\njar = \"bucket\"\n|line 2: jar: ",
                "[plan]\nrise = \"40C\"\n|line 2: rise: a preserve sets 1 to 12",
                "[steps.soften]\nminutes = -4\n|line 1"
            })
    void badNotes_areRefused_withTheirLine(String notesAndAnswer) throws IOException {
        String[] parts = notesAndAnswer.split("\\|", 2);
        assertThat(run(notes(parts[0]).toString())).isEqualTo(1);
        assertThat(err.toString()).contains(parts[1]).hasLineCount(1);
    }
}
