package spoonfall.cli.plan;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spoonfall.cli.option.CookOptions;
import spoonfall.cli.option.DataOption;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.option.Output;
import spoonfall.cli.option.Understood;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.food.Food;
import spoonfall.food.Foods;
import spoonfall.food.Ingredient;
import spoonfall.food.IngredientLine;
import spoonfall.kitchen.file.KitchenFile;
import spoonfall.kitchen.file.PanEntry;
import spoonfall.kitchen.file.PlanFile;
import spoonfall.kitchen.pantry.FoodBook;
import spoonfall.kitchen.pantry.HobBook;
import spoonfall.plan.BatchPlan;
import spoonfall.plan.HobPower;
import spoonfall.plan.Scaling;
import spoonfall.plan.TypedSetup;
import spoonfall.web.plan.PlanViews;
import spoonfall.web.wire.WireJson;

/** {@code spoonfall plan}: what comes of a batch, before it is cooked. */
@Command(
        name = "plan",
        description =
                "Say what comes of a batch before it is cooked: how much, how many jars, how long, in how large a pan. "
                        + "It plans your own recipe; it never makes one up, and knows no processing time.",
        footer = {
            "",
            "For example:",
            "  spoonfall plan notes.toml --elevation 1240m --kettle 4min --pan 8L",
            "  spoonfall plan --add \"2 cups water\" --add \"3 cups sugar\" --add \"4 oranges\" --power 1.8kW",
            "  spoonfall plan notes.toml --scale 2",
            "  spoonfall plan --foods-known"
        })
public final class PlanCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "NOTES", description = "Batch notes (TOML) with [[ingredient]] tables.")
    private @Nullable Path notes;

    @Option(
            names = "--add",
            paramLabel = "INGREDIENT",
            description =
                    "Something that goes in: amount, unit and food, such as \"600 g sugar\" or \"4 oranges\". Give it again for more.")
    private List<String> added = List.of();

    @Option(names = "--pan", paramLabel = "VOLUME", description = "What the pan holds, such as 8L or 8qt.")
    private @Nullable String pan;

    @Option(
            names = "--power",
            paramLabel = "POWER",
            description = "What really reaches the pan, such as 1.8kW. A hob's rating is more; --kettle measures it.")
    private @Nullable String power;

    @Option(
            names = "--kettle",
            paramLabel = "TIME",
            description = "How long a litre of cold water takes to boil in this pan on this hob, such as 4min.")
    private @Nullable String kettle;

    @Option(names = "--ph", paramLabel = "PH", description = "The preserve's pH, such as 3.2, if it was measured.")
    private @Nullable String acidity;

    @Option(
            names = "--jar",
            paramLabel = "JAR",
            description = "quarter-pint, half-pint (usual), pint, or what it holds, such as 250mL.")
    private @Nullable String jar;

    @Option(names = "--scale", paramLabel = "TIMES", description = "Make it so many times as large, such as 2 or 0.5.")
    private @Nullable String scale;

    @Option(
            names = "--foods",
            paramLabel = "FILE",
            description = "Foods of your own (CSV); they win over the usual ones.")
    private @Nullable Path foodsFile;

    @Option(names = "--foods-known", description = "List the foods that are known, with their sources.")
    private boolean foodsKnown;

    @Option(names = "--json", description = "Print a JSON object.")
    private boolean json;

    @Mixin
    private CookOptions cook = new CookOptions();

    @Mixin
    private DataOption data = new DataOption();

    @Override
    public Integer call() {
        PrintWriter out = Output.of(spec);
        Foods foods = foodsFile == null ? FoodBook.withAny(data.folder().foods()) : FoodBook.with(foodsFile);
        if (foodsKnown) {
            list(foods, out);
            return 0;
        }
        Optional<PlanFile> file = Optional.ofNullable(notes).map(path -> PlanFile.read(path, foods));
        List<Ingredient> ingredients =
                new ArrayList<>(file.map(PlanFile::ingredients).orElse(List.of()));
        added.forEach(line -> ingredients.add(Understood.value(() -> IngredientLine.read(line, foods))));
        if (ingredients.isEmpty()) {
            throw new MisuseException(
                    "what goes in? Give batch notes with [[ingredient]] tables, or --add \"600 g sugar\" --add \"4 oranges\"");
        }
        CookSettings settings = cook.settings(KitchenFile.empty(), file.flatMap(PlanFile::riseC));
        TypedSetup setup = said().or(file.map(PlanFile::setup).orElse(said()));
        Optional<HobPower> learnt = new HobBook(data.folder().hob()).power(PanEntry.ONLY);
        BatchPlan plan = BatchPlan.of(
                ingredients,
                Understood.value(() -> setup.setup(
                        settings.waterBoil().pressurePa(),
                        settings.waterBoil().temperatureC(),
                        settings.riseC(),
                        learnt)));
        show(plan, settings, file.flatMap(PlanFile::name), out);
        return 0;
    }

    private void show(BatchPlan plan, CookSettings settings, Optional<String> name, PrintWriter out) {
        Optional<Scaling> scaling =
                Optional.ofNullable(scale).map(times -> Scaling.of(plan, Understood.value(times, Scaling::times)));
        if (json) {
            ObjectNode node = scaling.map(PlanViews::of).orElseGet(() -> PlanViews.of(plan));
            out.println(WireJson.text(node));
            return;
        }
        name.ifPresent(out::println);
        boolean assumed = settings.waterBoil().from() == WaterBoil.From.STANDARD;
        out.println(String.format(
                Locale.ROOT,
                "Where water boils at %.1f °C: %s%s",
                settings.waterBoil().temperatureC(),
                settings.waterBoil().detail(),
                assumed ? "; give --elevation" : ""));
        PlanText text = new PlanText(out);
        scaling.ifPresentOrElse(text::print, () -> text.print(plan));
    }

    private TypedSetup said() {
        return new TypedSetup(
                Optional.ofNullable(pan),
                Optional.ofNullable(power),
                Optional.ofNullable(kettle),
                Optional.ofNullable(acidity),
                Optional.ofNullable(jar));
    }

    private void list(Foods foods, PrintWriter out) {
        if (json) {
            out.println(PlanViews.foods(foods));
            return;
        }
        for (Food food : foods.all()) {
            out.println(String.format(
                    Locale.ROOT,
                    "%-20s %4.0f %% water, %2.0f to %.0f %% dissolves%s%s [%s]",
                    food.name(),
                    food.waterPercent(),
                    food.solubles().low(),
                    food.solubles().high(),
                    food.cupG().isPresent()
                            ? String.format(
                                    Locale.ROOT, ", a cup %.0f g", food.cupG().getAsDouble())
                            : "",
                    food.pieceG().isPresent()
                            ? String.format(
                                    Locale.ROOT, ", one %.0f g", food.pieceG().getAsDouble())
                            : "",
                    food.source()));
        }
    }
}
