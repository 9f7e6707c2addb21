package pourwright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pourwright.figures.FigureBook;
import pourwright.kit.KitFigures;
import pourwright.kitfit.KitState;
import pourwright.kitfit.PumpDownVerdict;
import pourwright.kitfit.RiseVerdict;
import pourwright.knowledge.ClassValues;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;

/** The rules of the house for the whole rule book: every rule says who it is, and names only what exists. */
class RuleHouseTest {
    private static final int FEWEST_RULES = 120;
    private static final Knowledge KNOWLEDGE = RuleFiles.KNOWLEDGE;
    private static final Knowledge ALL_QUESTIONS = RuleFiles.DIAGNOSTIC.base();
    private static final List<RuleText> RULES = RuleText.all();
    private static final Set<String> TOPICS = Set.of(
            "liquid",
            "mixing",
            "amount",
            "cup",
            "vacuum",
            "pump",
            "time",
            "now",
            "mould",
            "master",
            "pour",
            "pressure",
            "heat",
            "room",
            "cure",
            "release",
            "gauge",
            "safety",
            "use",
            "evidence",
            "interview");
    private static final Set<String> QUESTIONS =
            ALL_QUESTIONS.questionsById().values().stream().map(Question::id).collect(Collectors.toSet());
    /** Figures that only the timetable gives, once the ways of working are chosen. */
    private static final Set<String> TIMETABLE = Set.of("time-share", "time-margin", "viscosity-at-pour", "poured-at");

    private static final String COMPARED =
            "(?:likely|possibly|surely|firmly)(?:Above|Below)\\s*\\(\\s*\"([^\"]+)\"\\s*\\)";

    /** Rule and what is wrong with it, for every rule that a check faults. */
    private static List<String> faults(Function<RuleText, List<String>> check) {
        return RULES.stream()
                .flatMap(r -> check.apply(r).stream().map(f -> r + ": " + f))
                .toList();
    }

    private static List<String> unless(boolean holds, String fault) {
        return holds ? List.of() : List.of(fault);
    }

    private static List<String> missing(List<String> named, Set<String> known, String what) {
        return named.stream()
                .filter(n -> !known.contains(n))
                .map(n -> "no " + what + " is called '" + n + "'")
                .toList();
    }

    @Test
    void theBookIsLargeEnough() {
        assertThat(RULES).hasSizeGreaterThanOrEqualTo(FEWEST_RULES);
    }

    @Test
    void oneFileHoldsOneRuleNamedAfterIt() {
        assertThat(faults(r -> unless(r.rules() == 1, "it holds " + r.rules() + " rules")))
                .isEmpty();
        assertThat(faults(r -> unless(r.tag("id").equals(r.file().id()), "its id is '" + r.tag("id") + "'")))
                .isEmpty();
    }

    @Test
    void everyRuleHasItsCases() {
        assertThat(faults(r -> unless(Files.isRegularFile(r.file().cases()), "no file of cases")))
                .isEmpty();
    }

    @Test
    void noFileOfCasesIsLeftWithoutItsRule() throws IOException {
        Set<Path> wanted = RULES.stream().map(r -> r.file().cases()).collect(Collectors.toSet());
        try (Stream<Path> files = Files.walk(RuleFiles.ROOT)) {
            assertThat(files.filter(Files::isRegularFile)
                            .filter(f -> !f.toString().endsWith(".drl"))
                            .filter(f -> !wanted.contains(f)))
                    .isEmpty();
        }
    }

    @Test
    void idsAreUnique() {
        assertThat(doubled(r -> r.tag("id"))).isEmpty();
    }

    @Test
    void noTwoRulesHaveOneName() {
        // The engine finds a rule's card by its name: two of one name would answer for each other.
        assertThat(doubled(r -> r.name().toLowerCase(java.util.Locale.ROOT))).isEmpty();
    }

    private static List<String> doubled(Function<RuleText, String> key) {
        return RULES.stream().collect(Collectors.groupingBy(key, TreeMap::new, Collectors.toList())).entrySet().stream()
                .filter(e -> e.getValue().size() > 1)
                .map(Object::toString)
                .toList();
    }

    @Test
    void aTopicIsOneOfTheList() {
        assertThat(faults(r -> unless(TOPICS.contains(r.tag("topic")), "topic '" + r.tag("topic") + "'")))
                .isEmpty();
    }

    @Test
    void aSourceStandsInTheSources() {
        assertThat(faults(r -> {
                    List<String> keys = Arrays.stream(r.tag("source").split("[,;\\s]+"))
                            .filter(k -> !k.isEmpty())
                            .toList();
                    return keys.isEmpty()
                            ? List.of("no source")
                            : missing(keys, KNOWLEDGE.sources().keySet(), "source");
                }))
                .isEmpty();
    }

    @Test
    void aFigureOfTheFormulasNamesSourcesThatExist() {
        List<String> wrong = new ArrayList<>();
        FigureBook.all()
                .forEach(d -> d.sources().stream()
                        .filter(s -> !KNOWLEDGE.sources().containsKey(s))
                        .forEach(s -> wrong.add(d.id() + ": " + s)));
        assertThat(wrong).isEmpty();
    }

    @Test
    void aGuidelineComparedWithExists() {
        assertThat(faults(r -> missing(r.named(COMPARED), KNOWLEDGE.guidelines().keySet(), "guideline")))
                .isEmpty();
    }

    @Test
    void everyGuidelineIsUsed() throws IOException {
        Set<String> unused = new TreeSet<>(KNOWLEDGE.guidelines().keySet());
        RULES.forEach(r -> {
            unused.removeAll(r.named(COMPARED));
            unused.removeAll(placeholders(r)
                    .filter(p -> p.startsWith("guideline:"))
                    .map(p -> p.substring("guideline:".length()))
                    .toList());
        });
        KNOWLEDGE
                .steps()
                .values()
                .forEach(s -> unused.removeIf(g -> (s.say() + s.watch()).contains("{guideline:" + g + "}")));
        // Formulas and timetable name guidelines as plain strings; "stirred-in-air-" stands for all that begin so.
        Set<String> words = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path f : files.filter(p -> p.toString().endsWith(".java")).toList()) {
                Pattern.compile("\"([a-z0-9,-]+)\"")
                        .matcher(Files.readString(f))
                        .results()
                        .flatMap(m -> Arrays.stream(m.group(1).split(",")))
                        .forEach(words::add);
            }
        }
        unused.removeIf(g -> words.contains(g)
                || words.stream().anyMatch(w -> w.length() > 5 && w.endsWith("-") && g.startsWith(w)));
        assertThat(unused).as("guidelines that no rule, formula or step uses").isEmpty();
    }

    @Test
    void aCautionExistsAndEachIsGivenByARule() {
        Set<String> known = KNOWLEDGE.cautions().keySet();
        assertThat(faults(r -> missing(targets(r, "caution"), known, "caution")))
                .isEmpty();
        Set<String> given = all("caution");
        assertThat(known.stream().filter(c -> !given.contains(c)))
                .as("cautions that no rule gives")
                .isEmpty();
    }

    @Test
    void aQuestionAskedForExistsAndEachAskedQuestionIsNeededByARule() {
        Set<String> asked = KNOWLEDGE.questions().stream()
                .filter(q -> !Boolean.FALSE.equals(q.asked()))
                .map(Question::id)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(faults(r -> missing(targets(r, "need"), asked, "question that may be asked")))
                .isEmpty();
        asked.removeAll(all("need"));
        assertThat(asked).as("questions that no rule needs").isEmpty();
    }

    @Test
    void aWayOfWorkingExistsAndEachIsChosenByARule() {
        Set<String> known = KNOWLEDGE.processes().keySet();
        assertThat(faults(r -> missing(targets(r, "choose"), known, "way of working")))
                .isEmpty();
        assertThat(faults(r -> missing(targets(r, "refuse"), known, "way of working")))
                .isEmpty();
        assertThat(faults(r -> missing(values(r, "what"), known, "way of working")))
                .isEmpty();
        Set<String> chosen = all("choose");
        assertThat(known.stream().filter(w -> !chosen.contains(w)))
                .as("ways of working that no rule chooses")
                .isEmpty();
    }

    @Test
    void anAnswerAskedAboutExists() {
        assertThat(faults(RuleHouseTest::unknownAnswers)).isEmpty();
    }

    private static List<String> unknownAnswers(RuleText r) {
        List<String> wrong = new ArrayList<>();
        for (String said : r.named("\\bSaid\\s*\\(((?:[^()]|\\([^()]*\\))*)\\)")) {
            List<String> questions = valuesIn(said, "question");
            wrong.addAll(missing(questions, QUESTIONS, "question"));
            // One pattern may name several questions: each choice belongs to one of them at least.
            valuesIn(said, "choice").stream()
                    .filter(c -> questions.stream()
                            .flatMap(id -> ALL_QUESTIONS.question(id).stream())
                            .noneMatch(q -> q.choice(c).isPresent()))
                    .forEach(c -> wrong.add(questions + " has no choice '" + c + "'"));
            if (questions.isEmpty()) {
                wrong.add("a Said pattern that names no question: " + said);
            }
        }
        for (String unknown : r.named("\\bUnknown\\s*\\(((?:[^()]|\\([^()]*\\))*)\\)")) {
            wrong.addAll(missing(valuesIn(unknown, "question"), QUESTIONS, "question"));
        }
        return wrong;
    }

    /** What each test of a kit can show. */
    private static final Map<String, Set<String>> SHOWN = Map.of(
            "pump-down", with("not-done", PumpDownVerdict.values()),
            "rise", with("not-done", RiseVerdict.values()),
            "base-surely", with("", KitState.Part.values()),
            "base-perhaps", with("", KitState.Part.values()),
            "rise-level", Set.of("water"),
            "dial", Set.of("deeper-than-air"),
            "odd-reading", Set.of("pump-down", "rise"));

    private static Set<String> with(String other, Enum<?>... verdicts) {
        Set<String> all = new TreeSet<>(Set.of(other));
        Arrays.stream(verdicts)
                .forEach(
                        v -> all.add(v.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')));
        return all;
    }

    @Test
    void whatATestShowsExists() {
        assertThat(faults(r -> {
                    List<String> wrong = new ArrayList<>();
                    for (String shown : r.named("\\bShown\\s*\\(((?:[^()]|\\([^()]*\\))*)\\)")) {
                        List<String> tests = valuesIn(shown, "test");
                        wrong.addAll(missing(tests, SHOWN.keySet(), "test of a kit"));
                        tests.forEach(t -> wrong.addAll(missing(
                                valuesIn(shown, "outcome"), SHOWN.getOrDefault(t, Set.of()), "outcome of " + t)));
                    }
                    return wrong;
                }))
                .isEmpty();
    }

    @Test
    void aMaterialIsAskedOnlyForWhatSomeMaterialIs() {
        Set<String> traits = new TreeSet<>();
        KNOWLEDGE.materials().values().forEach(m -> traits.addAll(m.traits()));
        Set<String> families = names(MaterialClass::family);
        Set<String> permissions = names(MaterialClass::vacuum);
        assertThat(faults(r -> missing(r.named("\\bhas\\s*\\(\\s*\"([^\"]+)\""), traits, "trait")))
                .isEmpty();
        assertThat(faults(r -> {
                    List<String> wrong = new ArrayList<>();
                    for (String m : r.named("\\bMaterial\\s*\\(((?:[^()]|\\([^()]*\\))*)\\)")) {
                        wrong.addAll(missing(valuesIn(m, "family"), families, "family"));
                        wrong.addAll(missing(valuesIn(m, "vacuum"), permissions, "permission"));
                        wrong.addAll(
                                missing(valuesIn(m, "id"), KNOWLEDGE.materials().keySet(), "material"));
                    }
                    return wrong;
                }))
                .isEmpty();
    }

    private static Set<String> names(Function<MaterialClass, String> of) {
        return KNOWLEDGE.materials().values().stream().map(of).collect(Collectors.toSet());
    }

    @Test
    void aFigureComparedExists() {
        Set<String> known = figures();
        assertThat(faults(r -> {
                    List<String> wrong = new ArrayList<>();
                    for (String f : r.named("\\bFigure\\s*\\(((?:[^()]|\\((?:[^()]|\\([^()]*\\))*\\))*)\\)")) {
                        wrong.addAll(missing(valuesIn(f, "id"), known, "figure"));
                    }
                    return wrong;
                }))
                .isEmpty();
    }

    @Test
    void aPlaceholderCanBeFilled() {
        Set<String> known = figures();
        known.addAll(List.of("material", "gauge-target", "first-can", "second-can", "cans-first", "cans-second"));
        KNOWLEDGE.guidelines().keySet().forEach(g -> known.add("guideline:" + g));
        assertThat(faults(r -> missing(placeholders(r).toList(), known, "placeholder")))
                .isEmpty();
        List<String> steps = new ArrayList<>();
        KNOWLEDGE
                .steps()
                .forEach((id, s) -> places(s.say() + " " + s.watch())
                        .filter(p -> !known.contains(p))
                        .forEach(p -> steps.add(id + ": " + p)));
        assertThat(steps).as("placeholders of steps").isEmpty();
    }

    private static Set<String> figures() {
        Set<String> known = new TreeSet<>(FigureBook.ids());
        known.addAll(KitFigures.ids());
        known.addAll(ClassValues.names());
        known.addAll(TIMETABLE);
        ALL_QUESTIONS.questionsById().values().stream()
                .filter(q -> q.kind().equals("quantity"))
                .forEach(q -> known.add(q.id()));
        return known;
    }

    private static Stream<String> placeholders(RuleText r) {
        return r.calls().stream().flatMap(c -> places(c.say()));
    }

    private static Stream<String> places(String text) {
        return Pattern.compile("\\{([^}]*)}").matcher(text).results().map(m -> m.group(1));
    }

    @Test
    void eachFolderKeepsToItsVerbs() {
        Set<String> judging = Set.of("stop", "change", "suggest", "consider", "note", "caution", "decide");
        assertThat(faults(r -> {
                    Set<String> allowed = switch (r.file().folder()) {
                        case "method" -> Set.of("choose", "refuse");
                        case "interview" -> Set.of("need");
                        case "diagnosis" -> Set.of("speaksFor", "speaksAgainst", "rulesOut", "contradicts", "caution");
                        default -> judging;
                    };
                    return r.calls().isEmpty()
                            ? List.of("it concludes nothing")
                            : r.calls().stream()
                                    .map(RuleText.Call::verb)
                                    .filter(v -> !allowed.contains(v))
                                    .toList();
                }))
                .isEmpty();
    }

    @Test
    void rulesOfMethodDoNotAskWhatTheyThemselvesDecide() {
        assertThat(faults(r -> unless(
                        !r.file().folder().equals("method") || !r.when().matches("(?s).*\\b(Method|Refused)\\s*\\(.*"),
                        "it matches Method or Refused")))
                .isEmpty();
    }

    @Test
    void aRuleHoldsNoNumber() {
        assertThat(faults(r -> unless(!r.code().matches("(?s).*(?<![\\w$])[.]?\\d.*"), "a literal number")))
                .isEmpty();
    }

    @Test
    void aRuleOnlyConcludes() {
        List<String> banned = List.of(
                "no-loop",
                "lock-on-active",
                "salience",
                "agenda-group",
                "ruleflow-group",
                "eval\\s*\\(",
                "\\binsert\\w*\\s*\\(",
                "\\bmodify\\b",
                "\\bupdate\\b",
                "\\bdelete\\s*\\(",
                "\\bretract\\b",
                "System\\s*\\.",
                "\\bnew\\s",
                "\\bfrom\\b",
                "\\baccumulate\\b",
                "\\bfunction\\b");
        assertThat(faults(r -> banned.stream()
                        .filter(b -> Pattern.compile(b).matcher(r.code()).find())
                        .toList()))
                .isEmpty();
        assertThat(faults(r -> unless(
                        !RuleText.strings(r.when()).stream()
                                .reduce(r.when(), (t, s) -> t.replace("\"" + s + "\"", "\"\""))
                                .matches("(?s).*\\bor\\b.*"),
                        "'or' between patterns: write two rules")))
                .isEmpty();
        assertThat(faults(r -> {
                    String rest = r.then()
                            .replaceAll("\"(?:[^\"\\\\]|\\\\.)*\"", "\"\"")
                            .replaceAll("advice\\s*\\.\\s*\\w+\\s*\\(\\s*\"\"\\s*(,\\s*\"\"\\s*){0,2}\\)\\s*;", "");
                    return unless(rest.isBlank(), "besides advice it does: " + rest.strip());
                }))
                .isEmpty();
    }

    @Test
    void aRuleDrawsOneConclusion() {
        // A finding is known by its rule's id: of two sentences of one rule, the second would be lost.
        assertThat(faults(r -> {
                    boolean one = r.calls().size() == 1;
                    boolean alike = r.file().folder().equals("method")
                            && r.calls().stream()
                                            .map(c -> c.verb() + c.say())
                                            .distinct()
                                            .count()
                                    == 1;
                    boolean evidence = r.file().evidence()
                            && r.calls().stream()
                                            .map(RuleText.Call::target)
                                            .distinct()
                                            .count()
                                    == r.calls().size();
                    return unless(one || alike || evidence, r.calls().size() + " conclusions that differ");
                }))
                .isEmpty();
    }

    private static List<String> targets(RuleText r, String verb) {
        return r.calls().stream()
                .filter(c -> c.verb().equals(verb))
                .map(RuleText.Call::target)
                .toList();
    }

    private static Set<String> all(String verb) {
        return RULES.stream().flatMap(r -> targets(r, verb).stream()).collect(Collectors.toSet());
    }

    private static List<String> values(RuleText r, String field) {
        return valuesIn(r.when(), field);
    }

    /** The quoted values a field is compared with: {@code field == "a"}, {@code !=}, {@code in ("a", "b")}, {@code not in}. */
    private static List<String> valuesIn(String pattern, String field) {
        return Pattern.compile("\\b" + field
                        + "\\s*(?:==|!=|(?:not\\s+)?in\\s*\\()\\s*((?:\"[^\"]*\"[\\s,|]*(?:\\|\\|\\s*)?)+)")
                .matcher(pattern)
                .results()
                .flatMap(m -> RuleText.strings(m.group(1)).stream())
                .toList();
    }
}
