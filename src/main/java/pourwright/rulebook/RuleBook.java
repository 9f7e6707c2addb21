package pourwright.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;

/**
 * A compiled base of rules. The build turns {@code rules/} into classes; this builds the base straight from them, which
 * starts several times faster than a container that looks for rule text.
 */
public final class RuleBook {
    private static final String MODEL_LIST = "META-INF/kie/pourwright/pourwright/drools-model";
    private static final String METHOD_PACKAGE = "pourwright.rules.method.";
    private static final String DIAGNOSIS_PACKAGE = "pourwright.rules.diagnosis.";
    private static final String KIT_PACKAGE = "pourwright.rules.kit.";
    private static final String RULES_PACKAGE = "pourwright.rules.";

    private static final int AFTER_THE_QUESTION_MS = 50;

    private final KieBase base;
    private final Map<String, RuleCard> byName;

    private RuleBook(Predicate<String> modelClass) {
        List<Model> models = new ArrayList<>();
        for (String name : modelClasses()) {
            if (modelClass.test(name)) {
                models.add(instantiate(name));
            }
        }
        this.base = KieBaseBuilder.createKieBaseFromModel(models);
        Map<String, RuleCard> cards = new TreeMap<>();
        for (KiePackage p : base.getKiePackages()) {
            for (Rule r : p.getRules()) {
                cards.put(r.getName(), RuleCard.of(r));
            }
        }
        this.byName = cards;
    }

    /**
     * Starts building both bases on threads of their own, so that a start can read its knowledge meanwhile. Whoever
     * needs a base before it is ready waits for it.
     */
    public static void prepare() {
        build(List.of(RuleBook::judge, RuleBook::method));
    }

    private static void build(List<Runnable> bases) {
        for (Runnable build : bases) {
            Thread thread = new Thread(build, "rule-book");
            thread.setDaemon(true);
            thread.start();
        }
    }

    /**
     * The same, a moment later: the first question goes before, since a person takes longer to read it than the bases
     * take to build.
     *
     * @param also what else will be needed then
     */
    public static void preparePlanSoon(Runnable also) {
        soon(List.of(also, RuleBook::judge, RuleBook::method));
    }

    /** The same for the base of evidence. */
    public static void prepareDiagnosisSoon(Runnable also) {
        soon(List.of(also, RuleBook::diagnosis));
    }

    /** The same for the rules about a tested kit. */
    public static void prepareKitSoon() {
        soon(List.of(RuleBook::kit));
    }

    private static void soon(List<Runnable> bases) {
        Thread thread = new Thread(
                () -> {
                    try {
                        Thread.sleep(AFTER_THE_QUESTION_MS);
                        build(bases);
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                },
                "rule-book-soon");
        thread.setDaemon(true);
        thread.start();
    }

    /** The rules that choose and refuse ways of working. */
    public static RuleBook method() {
        return Method.BOOK;
    }

    /** The rules that judge the job with its ways of working. */
    public static RuleBook judge() {
        return Judge.BOOK;
    }

    /** The rules of evidence. */
    public static RuleBook diagnosis() {
        return Diagnosis.BOOK;
    }

    /** The rules about a tested kit. */
    public static RuleBook kit() {
        return Kit.BOOK;
    }

    /** Built on first use, once. */
    private static final class Kit {
        static final RuleBook BOOK = new RuleBook(c -> c.startsWith(KIT_PACKAGE));
    }

    /** Built on first use, once. */
    private static final class Diagnosis {
        static final RuleBook BOOK = new RuleBook(c -> c.startsWith(DIAGNOSIS_PACKAGE));
    }

    /** Built on first use, once. */
    private static final class Method {
        static final RuleBook BOOK = new RuleBook(c -> c.startsWith(METHOD_PACKAGE));
    }

    /** Built on first use, once. */
    private static final class Judge {
        static final RuleBook BOOK = new RuleBook(c -> c.startsWith(RULES_PACKAGE)
                && !c.startsWith(METHOD_PACKAGE)
                && !c.startsWith(DIAGNOSIS_PACKAGE)
                && !c.startsWith(KIT_PACKAGE));
    }

    /** The cards of every base. */
    public static Stream<RuleCard> allCards() {
        return Stream.of(method(), judge(), kit(), diagnosis()).flatMap(b -> b.cards().stream());
    }

    /** The card of a rule of any base, by its id. */
    public static Optional<RuleCard> card(String id) {
        return allCards().filter(c -> c.id().equals(id)).findFirst();
    }

    /** The cards of all rules in this base. */
    public Collection<RuleCard> cards() {
        return byName.values();
    }

    /**
     * Fires the rules over the facts in one session and gives what they concluded, in no particular order.
     *
     * @param leftOut ids of rules that stay silent
     */
    public List<Conclusion> fire(Collection<?> facts, Set<String> leftOut) {
        KieSession session = base.newKieSession();
        try {
            Advice advice = new Advice(byName);
            session.addEventListener(advice);
            session.setGlobal("advice", advice);
            for (Object fact : facts) {
                session.insert(fact);
            }
            if (leftOut.isEmpty()) {
                session.fireAllRules();
            } else {
                session.fireAllRules(match ->
                        !leftOut.contains(byName.get(match.getRule().getName()).id()));
            }
            return advice.conclusions();
        } finally {
            session.dispose();
        }
    }

    private static List<String> modelClasses() {
        try (InputStream in = RuleBook.class.getClassLoader().getResourceAsStream(MODEL_LIST)) {
            if (in == null) {
                throw new IllegalStateException("the rule book was not built into this program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(String::strip)
                    .filter(l -> l.startsWith(RULES_PACKAGE))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Model instantiate(String name) {
        try {
            return Class.forName(name)
                    .asSubclass(Model.class)
                    .getDeclaredConstructor()
                    .newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the rule book is incomplete: " + name, e);
        }
    }
}
