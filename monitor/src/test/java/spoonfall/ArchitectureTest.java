package spoonfall;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.Formatter;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import spoonfall.estimate.warming.PanPrior;
import spoonfall.kitchen.again.CookAgain;
import spoonfall.kitchen.ask.Questions;
import spoonfall.kitchen.canner.Canner;
import spoonfall.kitchen.clock.ClockWatch;
import spoonfall.kitchen.cook.Words;
import spoonfall.kitchen.desk.Desks;
import spoonfall.kitchen.plan.PlanDiary;
import spoonfall.kitchen.plan.PlannedCook;
import spoonfall.kitchen.thermometer.Thermometer;
import spoonfall.kitchen.thermometer.ThermometerCheck;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.kitchen.told.Climb;
import spoonfall.kitchen.told.KitchenCounts;
import spoonfall.kitchen.typed.TypedBook;
import spoonfall.log.store.book.OutcomeRows;
import spoonfall.log.store.book.PhotoRows;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.Moment;
import spoonfall.log.store.upkeep.UpkeepLine;
import spoonfall.web.book.LearnViews;
import spoonfall.web.door.NetworkDoor;
import spoonfall.web.plan.PlanViews;
import spoonfall.web.view.Views;
import spoonfall.web.wire.WireJson;

/** Packages depend downwards only. */
@AnalyzeClasses(
        packages = "spoonfall",
        importOptions = {ImportOption.DoNotIncludeTests.class, ArchitectureTest.NoTestJars.class})
final class ArchitectureTest {
    /** Where all modules are packaged, the tests of another one are in a jar. */
    static final class NoTestJars implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return !location.contains("-tests.jar");
        }
    }

    @ArchTest
    static final ArchRule DOWNWARDS = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("cli")
            .definedBy("spoonfall.cli..")
            .layer("web")
            .definedBy("spoonfall.web..")
            .layer("door")
            .definedBy("spoonfall.door..")
            .layer("announce")
            .definedBy("spoonfall.announce")
            .layer("kitchen")
            .definedBy("spoonfall.kitchen..")
            .layer("words")
            .definedBy("spoonfall.words")
            .layer("afternoon")
            .definedBy("spoonfall.afternoon")
            .layer("log")
            .definedBy("spoonfall.log..")
            .layer("lesson")
            .definedBy("spoonfall.lesson")
            .layer("learn")
            .definedBy("spoonfall.learn")
            .layer("book")
            .definedBy("spoonfall.book")
            .layer("paper")
            .definedBy("spoonfall.paper")
            .layer("photo")
            .definedBy("spoonfall.photo")
            .layer("cook")
            .definedBy("spoonfall.cook..")
            .layer("estimate")
            .definedBy("spoonfall.estimate..")
            .layer("series")
            .definedBy("spoonfall.series")
            .layer("alarm")
            .definedBy("spoonfall.alarm")
            .layer("physics")
            .definedBy("spoonfall.physics")
            .layer("calibration")
            .definedBy("spoonfall.calibration")
            .layer("canning")
            .definedBy("spoonfall.canning")
            .layer("canner")
            .definedBy("spoonfall.canner")
            .layer("lab")
            .definedBy("spoonfall.lab..")
            .layer("science")
            .definedBy("spoonfall.science")
            .layer("score")
            .definedBy("spoonfall.score..")
            .layer("typed")
            .definedBy("spoonfall.typed")
            .layer("settest")
            .definedBy("spoonfall.settest")
            .layer("food")
            .definedBy("spoonfall.food")
            .layer("plan")
            .definedBy("spoonfall.plan")
            .layer("units")
            .definedBy("spoonfall.units")
            .layer("probe")
            .definedBy("spoonfall.probe..")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("web")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("door")
            .mayOnlyBeAccessedByLayers("cli", "web")
            .whereLayer("announce")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("kitchen")
            .mayOnlyBeAccessedByLayers("cli", "web", "announce", "lesson")
            .whereLayer("lesson")
            .mayOnlyBeAccessedByLayers("web")
            .whereLayer("words")
            .mayOnlyBeAccessedByLayers("cli", "paper", "web", "announce", "kitchen", "lesson")
            .whereLayer("afternoon")
            .mayOnlyBeAccessedByLayers("cli", "web", "kitchen", "words")
            .whereLayer("log")
            .mayOnlyBeAccessedByLayers("cli", "paper", "web", "kitchen", "score", "lesson")
            .whereLayer("learn")
            .mayOnlyBeAccessedByLayers("cli", "web", "kitchen", "log")
            .whereLayer("book")
            .mayOnlyBeAccessedByLayers("cli", "paper", "web", "learn", "log")
            .whereLayer("paper")
            .mayOnlyBeAccessedByLayers("cli", "web")
            .whereLayer("photo")
            .mayOnlyBeAccessedByLayers("cli", "web")
            .whereLayer("cook")
            .mayOnlyBeAccessedByLayers(
                    "cli", "paper", "web", "announce", "kitchen", "words", "afternoon", "log", "score", "lesson")
            .whereLayer("alarm")
            .mayOnlyBeAccessedByLayers("cli", "web", "announce", "kitchen", "words", "log", "cook", "canner", "score")
            .whereLayer("estimate")
            .mayOnlyBeAccessedByLayers("cook", "kitchen")
            .whereLayer("series")
            .mayOnlyBeAccessedByLayers("cook", "estimate")
            .whereLayer("physics")
            .mayOnlyBeAccessedByLayers(
                    "cli", "paper", "web", "words", "learn", "cook", "estimate", "science", "canner", "plan")
            .whereLayer("plan")
            .mayOnlyBeAccessedByLayers("cli", "paper", "web", "kitchen", "log")
            .whereLayer("food")
            .mayOnlyBeAccessedByLayers("cli", "web", "kitchen", "plan", "log")
            .whereLayer("calibration")
            .mayOnlyBeAccessedByLayers("cli", "kitchen", "log")
            .whereLayer("canning")
            .mayOnlyBeAccessedByLayers("cli", "web", "kitchen", "canner")
            .whereLayer("canner")
            .mayOnlyBeAccessedByLayers("web", "announce", "kitchen")
            .whereLayer("lab")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("science")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("score")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("typed")
            .mayOnlyBeAccessedByLayers("web", "kitchen")
            .whereLayer("settest")
            .mayOnlyBeAccessedByLayers("cli", "web", "kitchen", "words", "log", "cook")
            .whereLayer("units")
            .mayOnlyBeAccessedByLayers("cli", "kitchen", "canning", "food", "plan", "log");

    /** The package of all probes opens each kind of them, and they are what it says a probe is. */
    @ArchTest
    static final ArchRule NO_TWO_PACKAGES_NEED_EACH_OTHER_BUT_THE_PROBES = slices().matching("spoonfall.(**)")
            .should()
            .beFreeOfCycles()
            .ignoreDependency(resideInAPackage("spoonfall.probe.."), resideInAPackage("spoonfall.probe.."));

    @ArchTest
    static final ArchRule HOW_A_PAN_IS_WATCHED_IS_NOBODY_ELSES_BUSINESS = noClasses()
            .that()
            .resideOutsideOfPackage("spoonfall.cook..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "spoonfall.cook.alarm",
                    "spoonfall.cook.signal",
                    "spoonfall.cook.probe",
                    "spoonfall.cook.forecast",
                    "spoonfall.cook.stage",
                    "spoonfall.cook.watch",
                    "spoonfall.cook.pan");

    @ArchTest
    static final ArchRule OF_THE_ESTIMATE_OTHERS_KNOW_THE_PLAN_ALONE = noClasses()
            .that()
            .resideOutsideOfPackages("spoonfall.cook..", "spoonfall.estimate..")
            .should()
            .dependOnClassesThat(resideInAPackage("spoonfall.estimate..").and(not(type(PanPrior.class))));

    @ArchTest
    static final ArchRule HOW_THE_RECORD_IS_KEPT_IS_NOBODY_ELSES_BUSINESS = noClasses()
            .that()
            .resideOutsideOfPackage("spoonfall.log.store..")
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                            "spoonfall.log.store.file",
                            "spoonfall.log.store.chunk",
                            "spoonfall.log.store.write",
                            "spoonfall.log.store.diary",
                            "spoonfall.log.store.upkeep")
                    .and(not(belongToAnyOf(UpkeepLine.class)))
                    .or(belongToAnyOf(CookStore.class, Moment.class, OutcomeRows.class, PhotoRows.class)));

    /** Commands begin a service, and print what its pages are shown. */
    @ArchTest
    static final ArchRule OF_THE_WEB_OTHERS_KNOW_THE_SERVICE_AND_WHAT_IS_SHOWN_ALONE = noClasses()
            .that()
            .resideOutsideOfPackage("spoonfall.web..")
            .should()
            .dependOnClassesThat(resideInAPackage("spoonfall.web..")
                    .and(not(resideInAPackage("spoonfall.web")))
                    .and(not(belongToAnyOf(
                            NetworkDoor.class, WireJson.class, Views.class, PlanViews.class, LearnViews.class))));

    @ArchTest
    static final ArchRule HOW_A_KITCHEN_WORKS_IS_NOBODY_ELSES_BUSINESS = noClasses()
            .that()
            .resideOutsideOfPackage("spoonfall.kitchen..")
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                            "spoonfall.kitchen.cook",
                            "spoonfall.kitchen.afternoon",
                            "spoonfall.kitchen.pan",
                            "spoonfall.kitchen.again")
                    .and(not(belongToAnyOf(Words.class, CookAgain.class)))
                    .or(belongToAnyOf(
                            Questions.class,
                            ClockWatch.class,
                            Desks.class,
                            PlanDiary.class,
                            PlannedCook.class,
                            Thermometer.class,
                            ThermometerCheck.class,
                            Thermometers.class,
                            TypedBook.class)));

    @ArchTest
    static final ArchRule WHAT_A_KITCHEN_COUNTS_DRAWS_AND_STARTS_IS_ITS_OWN = noClasses()
            .that()
            .resideOutsideOfPackage("spoonfall.kitchen..")
            .should()
            .callMethodWhere(target(owner(belongToAnyOf(KitchenCounts.class, Climb.class, Canner.class)))
                    .and(target(nameMatching("count.+|add.*|cut.+|start"))));

    @ArchTest
    static final ArchRule THE_COOK_IS_PURE = noClasses()
            .that()
            .resideInAnyPackage(
                    "spoonfall.cook..",
                    "spoonfall.afternoon",
                    "spoonfall.learn",
                    "spoonfall.book",
                    "spoonfall.lesson",
                    "spoonfall.alarm",
                    "spoonfall.physics",
                    "spoonfall.estimate..",
                    "spoonfall.series",
                    "spoonfall.words",
                    "spoonfall.settest",
                    "spoonfall.calibration",
                    "spoonfall.canning",
                    "spoonfall.canner",
                    "spoonfall.food",
                    "spoonfall.plan",
                    "spoonfall.typed")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.io..", "java.nio..", "java.net..", "java.time..", "java.util.concurrent..", "org.slf4j..")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis");

    @ArchTest
    static final ArchRule THE_DOOR_KNOWS_NOTHING_OF_COOKING_OR_HTTP = noClasses()
            .that()
            .resideInAPackage("spoonfall.door..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "spoonfall.cook..",
                    "spoonfall.kitchen..",
                    "spoonfall.log..",
                    "io.javalin..",
                    "org.eclipse.jetty..",
                    "jakarta..");

    @ArchTest
    static final ArchRule KITCHEN_FILES_KNOW_NOTHING_OF_A_RUNNING_KITCHEN = noClasses()
            .that()
            .resideInAPackage("spoonfall.kitchen.file")
            .should()
            .dependOnClassesThat(
                    resideInAPackage("spoonfall.kitchen..").and(not(resideInAPackage("spoonfall.kitchen.file"))));

    @ArchTest
    static final ArchRule THE_LAB_HAS_ITS_OWN_PHYSICS = noClasses()
            .that()
            .resideInAPackage("spoonfall.lab..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("spoonfall.physics", "spoonfall.cook..", "spoonfall.words");

    @ArchTest
    static final ArchRule THE_SCORE_KNOWS_NOTHING_OF_THE_LAB = noClasses()
            .that()
            .resideInAPackage("spoonfall.score..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("spoonfall.lab..", "spoonfall.physics");

    @ArchTest
    static final ArchRule PROBES_KNOW_NOTHING_OF_COOKING = noClasses()
            .that()
            .resideInAPackage("spoonfall.probe..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "spoonfall.cook..",
                    "spoonfall.kitchen..",
                    "spoonfall.web..",
                    "spoonfall.words",
                    "spoonfall.log..",
                    "spoonfall.physics",
                    "spoonfall.alarm");

    /**
     * Half of the world writes a decimal comma, some of it other digits, and a Turkish i has no dot when it is large: whatever is
     * made of numbers or names here is read by pages and files as well.
     */
    @ArchTest
    static final ArchRule WORDS_ARE_THE_SAME_WHATEVER_THE_MACHINES_LOCALE = noClasses()
            .should()
            .accessTargetWhere(
                    DescribedPredicate.describe("goes by the machine's locale", ArchitectureTest::goesByTheLocale));

    /** What takes the machine's locale where it is given none. */
    private static boolean goesByTheLocale(JavaAccess<?> access) {
        return access.getTarget() instanceof AccessTarget.CodeUnitAccessTarget called
                && Set.of("format", "formatted", "printf", "toLowerCase", "toUpperCase")
                        .contains(called.getName())
                && Stream.of(String.class, Formatter.class, PrintStream.class, PrintWriter.class)
                        .anyMatch(called.getOwner()::isEquivalentTo)
                && called.getRawParameterTypes().stream().noneMatch(type -> type.isEquivalentTo(Locale.class));
    }
}
