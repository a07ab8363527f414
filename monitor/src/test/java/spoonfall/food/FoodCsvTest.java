package spoonfall.food;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.kitchen.pantry.FoodBook;

final class FoodCsvTest {
    private static final String HEADING = "food,kind,piece_g,water,soluble,source\n";

    @Test
    void ownFoods_winOverTheUsual_andAreFound() {
        List<Food> own = FoodCsv.read(HEADING + """
                # from our own tree
                "orange",fruit,90,88,9-12,"measured with a refractometer, January"
                hollin bank bitter,fruit,120,84.5,11,our own tree
                """, "own.csv");
        Foods foods = FoodBook.usual().and(own);
        assertThat(foods.named("orange").solubles()).isEqualTo(new Solubles(9, 12));
        assertThat(foods.named("orange").solubles().doubt()).isCloseTo(3 / 3.29, within(1e-6));
        assertThat(foods.named("Hollin Bank bitter").rest()).isCloseTo(4.5, within(1e-9));
        assertThat(foods.named("lemon").source()).contains("SR28");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "x,fruit,90,120,11,me|own.csv, line 2: x: water must be 0 to 100 %",
                "x,fruit,90,95,11,me|more than the whole",
                "x,fruit,90,85,12-9,me|the lower first",
                "x,fruit,90,85,9,|say where its numbers come from",
                "x,beast,90,85,9,me|kind must be fruit",
                "x,fruit,-3,85,9,me|piece_g must be a number",
                "x,fruit,90,85,9|5 cells below 6 headings",
                "x,fruit,90,85,9,\"me|not closed",
                ",fruit,90,85,9,me|needs a name"
            })
    void badRows_areRefused_withTheirLine(String row, String says) {
        assertThatThrownBy(() -> FoodCsv.read(HEADING + row, "own.csv"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(says);
    }

    @Test
    void aTableWithoutItsColumns_isRefused() {
        assertThatThrownBy(() -> FoodCsv.read("", "own.csv")).hasMessageContaining("no heading");
        assertThatThrownBy(() -> FoodCsv.read("food,colour\n", "own.csv"))
                .hasMessageContaining("\"colour\" is no column");
        assertThatThrownBy(() -> FoodCsv.read("food,kind\n", "own.csv")).hasMessageContaining("are needed");
    }

    @Test
    void anyBytes_areATableOrAComplaint() {
        long seed = 20261126;
        System.out.println("FoodCsvTest seed " + seed);
        Random random = new Random(seed);
        String letters = "food,kind\"\n#12.5-;é\u0000 water,source";
        for (int i = 0; i < 5_000; i++) {
            StringBuilder text = new StringBuilder(random.nextBoolean() ? HEADING : "");
            for (int n = random.nextInt(80); n > 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            try {
                FoodCsv.read(text.toString(), "own.csv");
            } catch (IllegalArgumentException e) {
                assertThat(e.getMessage()).startsWith("own.csv, line ");
            }
        }
    }
}
