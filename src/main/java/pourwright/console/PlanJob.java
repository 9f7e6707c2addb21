package pourwright.console;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pourwright.advice.Advisor;
import pourwright.advice.Amounts;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Difference;
import pourwright.advice.Verdict;
import pourwright.alike.Picture;
import pourwright.ask.Deciding;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.course.Course;
import pourwright.course.Heat;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.follow.FollowLog;
import pourwright.follow.Measured;
import pourwright.interview.AnswerReader;
import pourwright.interview.Interviewer;
import pourwright.interview.Slip;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeFault;
import pourwright.knowledge.OwnRun;
import pourwright.knowledge.Question;
import pourwright.rulebook.RuleBook;
import pourwright.stock.Can;
import pourwright.stock.Cans;

/** The planning of one pour. */
public final class PlanJob implements Job {
    private final Knowledge knowledge;
    private final Interviewer interviewer;

    private static final String AGO_ID = "mixed-ago";
    private static final double LEAST_PASSED_S = 5;
    private static final Pattern AGO = Pattern.compile(
            "(?i)(?:i |we )?(?:have |'ve )?(?:already )?mixed(?: it| them| this)?[, ]+(.{1,40}?)(?: ago)?\\.?");

    private final InstantSource clock;
    private final Stopwatch watch;
    private Answer said;
    private final Function<OwnRun, String> runs;
    private final BiFunction<Consultation, String, String> sheets;
    private final BiFunction<Consultation, String, String> cards;
    private final Shelf shelf;

    /** What the workshop has of a material. */
    @FunctionalInterface
    public interface Shelf {
        /**
         * The cans by question, with their ages today; none where there is no stock of it.
         *
         * @throws pourwright.knowledge.KnowledgeFault when the stock cannot be read
         */
        Map<String, List<Can>> of(String material);

        /** What a line that brings the stock up to date must end with, so that it finds the same folder. */
        default String ending() {
            return "";
        }
    }

    /** A plan that nobody follows: it is told again from a case, or tested. */
    public PlanJob(Knowledge knowledge) {
        this(knowledge, null, run -> "");
    }

    /** A plan for whoever keeps no stock. */
    PlanJob(Knowledge knowledge, InstantSource clock, Function<OwnRun, String> runs) {
        this(knowledge, clock, runs, material -> Map.of());
    }

    /** A plan that can be followed, and of which no sheet can be written. */
    PlanJob(Knowledge knowledge, InstantSource clock, Function<OwnRun, String> runs, Shelf shelf) {
        this(knowledge, clock, runs, shelf, (c, file) -> "No sheet can be written here.");
    }

    /**
     * @param clock what time it is, for whoever follows the plan; null where nobody can
     * @param runs keeps what a followed plan measured, and says in a sentence what became of it
     * @param shelf what the workshop has of a material
     * @param sheets writes a plan as a sheet, given the name of a file and a title after it, and says what became of it
     */
    public PlanJob(
            Knowledge knowledge,
            InstantSource clock,
            Function<OwnRun, String> runs,
            Shelf shelf,
            BiFunction<Consultation, String, String> sheets) {
        this(knowledge, clock, runs, shelf, sheets, (c, file) -> "No card can be written here.");
    }

    /**
     * The same with cards.
     *
     * @param cards writes a plan as a card, as {@code sheets} does a sheet
     */
    public PlanJob(
            Knowledge knowledge,
            InstantSource clock,
            Function<OwnRun, String> runs,
            Shelf shelf,
            BiFunction<Consultation, String, String> sheets,
            BiFunction<Consultation, String, String> cards) {
        this.cards = cards;
        this.shelf = shelf;
        this.sheets = sheets;
        this.knowledge = knowledge;
        this.interviewer = new Interviewer(knowledge);
        this.clock = clock;
        this.watch = new Stopwatch(clock);
        this.runs = runs;
    }

    @Override
    public Optional<Picture> picture(Answers answers) {
        return Optional.of(Picture.of(Advisor.consult(answers, knowledge), knowledge));
    }

    /** The same job in a workshop whose stock is what some answers say of it; for a case that is told again. */
    PlanJob having(Answers told) {
        return new PlanJob(knowledge, clock, runs, material -> {
            Map<String, List<Can>> cans = new TreeMap<>();
            for (String id : List.of("cans-first", "cans-second")) {
                if (told.choice("material").equals(material) && !told.text(id).isEmpty()) {
                    cans.put(id, Cans.read(told.text(id)));
                }
            }
            return cans;
        });
    }

    @Override
    public String word() {
        return "plan";
    }

    @Override
    public Knowledge knowledge() {
        return knowledge;
    }

    @Override
    public boolean usesKit() {
        return true;
    }

    @Override
    public void prepare() {
        RuleBook.preparePlanSoon(knowledge::readAll);
    }

    @Override
    public Optional<Interviewer.Next> next(Answers answers) {
        return interviewer.next(withTimePassed(answers));
    }

    @Override
    public Optional<Heard> atHand(Answers answers) {
        String material = answers.choice("material");
        Map<String, List<Can>> cans;
        try {
            cans = shelf.of(material);
        } catch (KnowledgeFault e) {
            return Optional.of(new Heard(
                    Answers.NONE,
                    List.of("The stock is left out, since it cannot be read: " + e.getMessage() + "."),
                    List.of()));
        }
        if (cans.isEmpty()) {
            return Optional.empty();
        }
        Answers told = Answers.NONE;
        for (Map.Entry<String, List<Can>> e : cans.entrySet()) {
            told = new AnswersJson(knowledge).with(told, e.getKey(), Cans.text(e.getValue()));
        }
        return Optional.of(new Heard(
                told,
                List.of("In stock (Enter = yes, or \"no\"): "
                        + StockPage.inShort(cans, knowledge.materials().get(material)) + "."),
                List.of()));
    }

    @Override
    public Optional<Heard> aside(String line, Answers answers) {
        Matcher m = AGO.matcher(line.strip());
        if (!m.matches()) {
            return Slip.of(line, answers, knowledge).map(s -> new Heard(s, said(s), List.of()));
        }
        String ago = m.group(1).replaceFirst("(?i)^just now$", "0 min");
        return new AnswerReader(knowledge).atPrompt(knowledge.question(AGO_ID).orElseThrow(), ago)
                        instanceof AnswerReader.Understood u
                ? Optional.of(new Heard(
                        Answers.NONE.with(AGO_ID, u.answer(), ago),
                        List.of("Mixed " + Page.echo(u.answer())
                                + " ago. The plan is for what is left; minutes that pass here are counted."),
                        List.of()))
                : Optional.empty();
    }

    private List<String> said(Answers inTheCup) {
        return List.of("In the cup: " + Page.echo(inTheCup.get("put-first").orElseThrow()) + " of the first part and "
                + Page.echo(inTheCup.get("put-second").orElseThrow())
                + " of the second. \"change put-first\" alters it.");
    }

    /** What was mixed four minutes ago when it was said is five minutes old a minute later. */
    private Answers withTimePassed(Answers answers) {
        Answers.Given given = answers.all().get(AGO_ID);
        if (given == null || !(given.answer() instanceof Answer.Quantity q)) {
            return answers;
        }
        if (!given.answer().equals(said)) {
            said = given.answer();
            watch.start();
        }
        double passedS = watch.passedS();
        if (passedS < LEAST_PASSED_S) {
            return answers;
        }
        double nowS = q.si().typical() + passedS;
        String raw = Math.round(nowS) + " s";
        return new AnswersJson(knowledge).with(answers, AGO_ID, raw);
    }

    @Override
    public Set<String> relevant(Answers answers) {
        Set<String> ids = new HashSet<>(Set.of("material"));
        if (answers.get("material").isPresent()) {
            try {
                Advisor.consult(answers, knowledge).needs().forEach(n -> ids.add(n.question()));
            } catch (BadAnswer e) {
                // What cannot be true together is settled by the next question.
                return answers.all().keySet();
            }
        }
        return ids;
    }

    @Override
    public List<String> settles(Question question, Answers answers, int width) {
        return new AskPage(knowledge, width).differs(Deciding.of(question, withTimePassed(answers), knowledge));
    }

    @Override
    public Optional<String> tooEarly(Answers answers) {
        return answers.get("material").isEmpty()
                ? Optional.of("The liquid is needed first: nothing can be planned without it.")
                : Optional.empty();
    }

    @Override
    public Result result(Answers answers, int width, boolean plain) {
        return new Planned(Advisor.consult(withTimePassed(answers), knowledge), width, plain);
    }

    /** A plan with its page. */
    private final class Planned implements Result {
        private final Consultation c;
        private final int width;
        private final boolean plain;
        private final Page page;

        Planned(Consultation c, int width, boolean plain) {
            this.c = c;
            this.width = width;
            this.plain = plain;
            this.page = new Page(c, knowledge, width, plain);
        }

        @Override
        public List<String> first() {
            return page.first();
        }

        @Override
        public String next() {
            return "Next: \"more\", \"cautions\", \"how 1\", " + (page.wantsFix() ? "\"fix\", " : "")
                    + (page.degasses() || cures() ? "\"course\", " : "")
                    + (StockPage.told(c) ? "\"stock\", " : "")
                    + "\"follow\", \"sheet FILE\", \"map\", \"figures\", \"rules\", \"sources\", \"change 1\", \"save NAME\", \"quit\".";
        }

        private boolean cures() {
            return Heat.follows(knowledge.materials().get(c.answers().choice("material")));
        }

        @Override
        public List<String> words() {
            List<String> words = new ArrayList<>(List.of(
                    "more",
                    "cautions",
                    "how NUMBER",
                    "why QUESTION",
                    "why-not WHAT",
                    "sensitive",
                    "what-if ID=VALUE",
                    "fix",
                    "map",
                    "course",
                    "follow",
                    "log",
                    "sheet FILE TITLE",
                    "card FILE TITLE",
                    "figures",
                    "rules",
                    "sources"));
            if (StockPage.told(c)) {
                words.add("stock");
            }
            return words;
        }

        @Override
        public Optional<List<String>> say(String verb, String rest) {
            return switch (verb) {
                case "more" -> Optional.of(page.more());
                case "cautions" -> Optional.of(page.cautions());
                case "how" -> Optional.of(page.how(rest));
                case "what-if" -> Optional.of(whatIf(rest));
                case "why-not" -> Optional.of(new AskPage(knowledge, width).whyNot(rest, c));
                case "sensitive" -> Optional.of(new AskPage(knowledge, width).sensitive(c));
                case "why" ->
                    rest.isBlank()
                            ? Optional.empty()
                            : Optional.of(
                                    rest.matches("\\d{1,4}")
                                            ? page.how(rest)
                                            : new AskPage(knowledge, width).why(rest, c.answers()));
                case "rule" -> Optional.of(new RulePage(knowledge, width).lines(rest, c));
                case "fix" -> Optional.of(FixPage.typed(rest, c, knowledge, width));
                case "course" ->
                    Optional.of(new CoursePage(Course.of(c, knowledge), Amounts.of(c.answers()), width, plain).lines());
                case "map" -> Optional.of(MapPage.lines(c, knowledge, width, plain));
                case "sheet" -> Optional.of(wrapped(sheets.apply(c, rest), width));
                case "card" -> Optional.of(wrapped(cards.apply(c, rest), width));
                case "stock" -> StockPage.told(c) ? Optional.of(stock()) : Optional.empty();
                case "log" -> Optional.of(Bench.lines(c, knowledge, width));
                case "figures" -> Optional.of(page.figures());
                case "rules" -> Optional.of(page.rules());
                case "sources" -> Optional.of(page.sources());
                default -> Optional.empty();
            };
        }

        @Override
        public boolean live(String verb, Door door, BiConsumer<String, String> keep) {
            if (!verb.equals("follow") || clock == null) {
                return false;
            }
            FollowLog log = new Bench(door, c, knowledge, clock, text -> keep.accept("bench-log", text)).run();
            Measured.run(c, knowledge, log)
                    .map(runs)
                    .filter(s -> !s.isEmpty())
                    .ifPresent(said -> wrapped(said, width).forEach(door::say));
            if (StockPage.told(c) && log.began().isPresent()) {
                stock().forEach(door::say);
            }
            return true;
        }

        private List<String> stock() {
            return StockPage.ofPlan(c, knowledge, width, shelf.ending());
        }

        private List<String> whatIf(String rest) {
            try {
                Answers changed = c.answers();
                for (String word : rest.split("\\s+(?=[a-z-]+\\s*=)")) {
                    int at = word.indexOf('=');
                    if (at <= 0) {
                        return wrapped(
                                "Say which answer and what it would be, for example what-if cup-volume=5 L.", width);
                    }
                    changed = new AnswersJson(knowledge)
                            .with(
                                    changed,
                                    word.substring(0, at).strip(),
                                    word.substring(at + 1).strip());
                }
                return new DifferencePage(Difference.between(c, Advisor.consult(changed, knowledge)), knowledge, width)
                        .lines();
            } catch (BadAnswer e) {
                return wrapped(e.getMessage(), width);
            }
        }

        private static List<String> wrapped(String text, int width) {
            return Wrap.text(text, width, "", "    ");
        }

        @Override
        public boolean stop() {
            return c.verdict() == Verdict.STOP;
        }

        @Override
        public String caseText(String name) {
            return CaseFile.of(c, "workshop", name).text();
        }
    }
}
