package pourwright.house;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Who may know whom. Dependencies run one way, from the command line down to physics and units. */
class ArchitectureTest {
    /** Classes the build makes from rule texts are not ours to judge. */
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(location -> !location.contains("/pourwright/rules/"))
            .importPath(Path.of("target/classes"));

    /** Each part and the parts it may use. */
    private static final Map<String, Set<String>> MAY_USE = new TreeMap<>(Map.ofEntries(
            Map.entry("units", Set.of()),
            Map.entry("physics", Set.of()),
            Map.entry("geometry", Set.of("physics")),
            Map.entry("kitfit", Set.of("physics")),
            Map.entry("degas", Set.of("physics")),
            Map.entry("facts", Set.of()),
            // What is at hand is read from words and reckoned by figures, so it lies below all that speak of it.
            Map.entry("stock", Set.of("units")),
            Map.entry("knowledge", Set.of("facts", "units")),
            Map.entry("emergency", Set.of("knowledge")),
            Map.entry("figures", Set.of("facts", "physics", "knowledge", "stock", "units")),
            Map.entry("rulebook", Set.of("facts")),
            Map.entry("advice", Set.of("rulebook", "figures", "facts", "physics", "knowledge", "stock", "units")),
            Map.entry(
                    "vents",
                    Set.of("advice", "rulebook", "figures", "facts", "geometry", "physics", "knowledge", "units")),
            // A card of rules says them as prose.
            Map.entry("sheet", Set.of("ask", "advice", "rulebook", "figures", "facts", "knowledge", "units")),
            Map.entry("follow", Set.of("interview", "advice", "figures", "facts", "knowledge", "units")),
            Map.entry("remedy", Set.of("advice", "figures", "facts", "knowledge", "units")),
            // It reads the rules themselves, and what a person would type; the steps of its values are the remedies'.
            Map.entry(
                    "ask",
                    Set.of("remedy", "interview", "advice", "rulebook", "figures", "facts", "knowledge", "units")),
            // A case is judged anew before it is compared, whatever its word.
            Map.entry("alike", Set.of("diagnosis", "vents", "kit", "advice", "rulebook", "knowledge", "facts")),
            // Exercises are marked by the advisor and the diagnosis, and what is replied is read as an interview reads
            // it.
            Map.entry(
                    "teach",
                    Set.of(
                            "ask",
                            "diagnosis",
                            "interview",
                            "advice",
                            "rulebook",
                            "figures",
                            "facts",
                            "knowledge",
                            "units")),
            Map.entry("course", Set.of("advice", "figures", "facts", "degas", "physics", "knowledge", "units")),
            Map.entry(
                    "kit",
                    Set.of(
                            "interview",
                            "advice",
                            "rulebook",
                            "figures",
                            "facts",
                            "kitfit",
                            "physics",
                            "knowledge",
                            "units")),
            Map.entry("interview", Set.of("advice", "rulebook", "figures", "facts", "knowledge", "stock", "units")),
            Map.entry("diagnosis", Set.of("interview", "advice", "rulebook", "figures", "facts", "knowledge", "units")),
            Map.entry(
                    "casebook",
                    Set.of(
                            "diagnosis",
                            "emergency",
                            "remedy",
                            "ask",
                            "teach",
                            "alike",
                            "follow",
                            "course",
                            "sheet",
                            "degas",
                            "vents",
                            "kit",
                            "kitfit",
                            "interview",
                            "advice",
                            "rulebook",
                            "figures",
                            "facts",
                            "geometry",
                            "knowledge",
                            "stock",
                            "units")),
            Map.entry(
                    "console",
                    Set.of(
                            "casebook",
                            "emergency",
                            "remedy",
                            "ask",
                            "teach",
                            "alike",
                            "follow",
                            "course",
                            "sheet",
                            "degas",
                            "diagnosis",
                            "vents",
                            "kit",
                            "kitfit",
                            "interview",
                            "advice",
                            "rulebook",
                            "figures",
                            "facts",
                            "geometry",
                            "knowledge",
                            "stock",
                            "units")),
            Map.entry(
                    "cli",
                    Set.of(
                            "console",
                            "casebook",
                            "emergency",
                            "remedy",
                            "ask",
                            "teach",
                            "alike",
                            "follow",
                            "course",
                            "sheet",
                            "degas",
                            "diagnosis",
                            "vents",
                            "kit",
                            "kitfit",
                            "interview",
                            "advice",
                            "rulebook",
                            "figures",
                            "facts",
                            "geometry",
                            "knowledge",
                            "stock",
                            "units"))));

    /** Each library and the only parts that may touch it. */
    private static final Map<String, Set<String>> TOUCHED_BY = new TreeMap<>(Map.of(
            "org.drools", Set.of("rulebook"),
            "org.kie", Set.of("rulebook"),
            "picocli", Set.of("cli"),
            "org.jline", Set.of("console", "cli"),
            "com.fasterxml.jackson", Set.of("knowledge", "casebook", "cli"),
            "com.networknt", Set.of("knowledge"),
            "org.hipparchus", Set.of("physics"),
            "tech.units", Set.of("units"),
            "javax.measure", Set.of("units")));

    private static final String[] PURE = {
        "pourwright.units..",
        "pourwright.facts..",
        "pourwright.stock..",
        "pourwright.physics..",
        "pourwright.figures..",
        "pourwright.rulebook..",
        "pourwright.advice..",
        "pourwright.interview..",
        "pourwright.diagnosis..",
        "pourwright.kitfit..",
        "pourwright.degas..",
        "pourwright.remedy..",
        "pourwright.ask..",
        "pourwright.teach..",
        "pourwright.alike..",
        "pourwright.follow..",
        "pourwright.course..",
        "pourwright.geometry..",
        "pourwright.kit..",
        "pourwright.vents..",
        "pourwright.emergency.."
    };

    private static String part(JavaClass c) {
        String[] names = c.getPackageName().split("\\.");
        return names.length < 2 || !names[0].equals("pourwright") ? "" : names[1];
    }

    @Test
    void thePartsAreTheKnownOnes() {
        Set<String> found = new TreeSet<>();
        CLASSES.forEach(c -> found.add(part(c)));
        assertThat(found).isEqualTo(new TreeSet<>(MAY_USE.keySet()));
    }

    @TestFactory
    Stream<DynamicTest> aPartUsesOnlyWhatLiesBelowIt() {
        return MAY_USE.entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> {
                    List<String> wrong = new ArrayList<>();
                    CLASSES.stream()
                            .filter(c -> part(c).equals(e.getKey()))
                            .forEach(c -> c.getDirectDependenciesFromSelf().stream()
                                    .filter(d ->
                                            d.getTargetClass().getPackageName().startsWith("pourwright."))
                                    .map(d -> part(d.getTargetClass()))
                                    .filter(to -> !to.equals(e.getKey())
                                            && !e.getValue().contains(to))
                                    .forEach(to -> wrong.add(c.getName() + " uses " + to)));
                    assertThat(wrong).isEmpty();
                }));
    }

    @TestFactory
    Stream<DynamicTest> aLibraryIsTouchedOnlyWhereItBelongs() {
        return TOUCHED_BY.entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> {
                    List<String> wrong = new ArrayList<>();
                    CLASSES.stream()
                            .filter(c -> !e.getValue().contains(part(c)))
                            .forEach(c -> c.getDirectDependenciesFromSelf().stream()
                                    .filter(d ->
                                            d.getTargetClass().getPackageName().startsWith(e.getKey()))
                                    .forEach(d -> wrong.add(d.getDescription())));
                    assertThat(wrong).isEmpty();
                }));
    }

    @Test
    void noCycles() {
        slices().matching("pourwright.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void onlyTheWayInTouchesTheProcess() {
        DescribedPredicate<JavaAccess<?>> process = DescribedPredicate.describe(
                "the process's own streams or its end",
                a -> a.getTargetOwner().isEquivalentTo(System.class)
                                && Set.of("out", "err", "exit", "setOut", "setErr", "setIn")
                                        .contains(a.getName())
                        || a.getTargetOwner().isEquivalentTo(Runtime.class)
                                && Set.of("exit", "halt").contains(a.getName())
                        || a.getTargetOwner().isAssignableTo(Throwable.class)
                                && a.getName().equals("printStackTrace"));
        noClasses()
                .that(not(nameMatching("pourwright\\.cli\\.(Main|Program|Training)")))
                .should()
                .accessTargetWhere(process)
                .because("tests hand in the streams, and only the way in may end the process")
                .check(CLASSES);
    }

    @Test
    void adviceDependsOnNothingButAnswersAndKnowledge() {
        DescribedPredicate<JavaAccess<?>> chance = DescribedPredicate.describe(
                "a clock, chance, the environment or a language setting",
                a -> a.getTargetOwner().getPackageName().startsWith("java.time")
                                && a.getName().equals("now")
                        || a.getTargetOwner().isEquivalentTo(System.class)
                                && Set.of("currentTimeMillis", "nanoTime", "getenv", "getProperty")
                                        .contains(a.getName())
                        || a.getTargetOwner().isEquivalentTo(Math.class)
                                && a.getName().equals("random")
                        || a.getTargetOwner()
                                .getName()
                                .matches("java\\.util\\.(Random|UUID|concurrent\\.ThreadLocalRandom|Date)")
                        || a.getTargetOwner().isEquivalentTo(java.util.Locale.class)
                                && a.getName().equals("getDefault"));
        noClasses()
                .that()
                .resideInAnyPackage(PURE)
                .should()
                .accessTargetWhere(chance)
                .check(CLASSES);
    }

    /** Reckoning with days that were handed in, as the stock does, looks at no clock. */
    private static boolean isDay(JavaAccess<?> a) {
        return a.getTargetOwner().getName().matches("java\\.time\\.(LocalDate|temporal\\.ChronoUnit)")
                && !a.getName().equals("now")
                && a.getOriginOwner().getSimpleName().startsWith("Stock");
    }

    /**
     * A clock that jumps can spoil neither a conversation nor what is kept of it: nobody there looks at one. Only whoever
     * follows a plan at the bench has a watch, and it is handed in.
     */
    @Test
    void whatIsKeptKnowsNoClock() {
        DescribedPredicate<JavaAccess<?>> clock = DescribedPredicate.describe(
                "a clock or the age of a file",
                a -> a.getTargetOwner().getPackageName().startsWith("java.time") && !isDay(a)
                        || a.getTargetOwner().getName().matches("java\\.util\\.(Date|Calendar|Timer)")
                        || Set.of(
                                        "currentTimeMillis",
                                        "nanoTime",
                                        "getLastModifiedTime",
                                        "setLastModifiedTime",
                                        "lastModified",
                                        "lastModifiedTime",
                                        "creationTime")
                                .contains(a.getName()));
        noClasses()
                .that()
                .resideInAnyPackage("pourwright.casebook..", "pourwright.console..")
                .and()
                .doNotHaveFullyQualifiedName("pourwright.console.Bench")
                .and()
                .doNotHaveFullyQualifiedName("pourwright.console.Stopwatch")
                .should()
                .accessTargetWhere(clock)
                .because("the order of the lines is all that a journal counts on")
                .check(CLASSES);
    }

    @Test
    void noneOfThePurePartsTouchesAFile() {
        noClasses()
                .that(resideInAnyPackage(
                        "pourwright.units..",
                        "pourwright.facts..",
                        "pourwright.physics..",
                        "pourwright.figures..",
                        "pourwright.advice..",
                        "pourwright.interview..",
                        "pourwright.kitfit..",
                        "pourwright.degas..",
                        "pourwright.remedy..",
                        "pourwright.ask..",
                        "pourwright.teach..",
                        "pourwright.alike..",
                        "pourwright.follow..",
                        "pourwright.course..",
                        "pourwright.geometry..",
                        "pourwright.vents..",
                        "pourwright.kit..",
                        "pourwright.emergency..",
                        "pourwright.diagnosis.."))
                .and()
                // The one class whose work is to open a mesh.
                .doNotHaveFullyQualifiedName("pourwright.geometry.MeshFile")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..", "java.net..", "java.sql..")
                .orShould()
                .dependOnClassesThat(nameMatching("java\\.io\\.(File.*|RandomAccessFile)"))
                .check(CLASSES);
    }
}
