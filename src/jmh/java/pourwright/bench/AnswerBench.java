package pourwright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.console.Conversation;
import pourwright.console.DiagnoseJob;
import pourwright.console.Door;
import pourwright.console.PlanJob;
import pourwright.diagnosis.Diagnoser;
import pourwright.facts.Answers;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.KnowledgeReader;

/**
 * How long a person waits after Enter until the next question stands there, over a recorded day: every shipped case of a
 * plan and of a diagnosis as one conversation, with a workshop's folder, so that each answer is forced to disk as it is in
 * use. The day is lived a few times to warm up and then measured; what stands in the table are percentiles in
 * milliseconds.
 */
public final class AnswerBench {
    private static final Path KNOWLEDGE = Path.of("knowledge");
    private static final Path CASES = Path.of("transcripts-of-cases");
    private static final int WARM_DAYS = 4;
    private static final int DAYS = 3;
    private static final int[] PERCENTILES = {50, 90, 99};
    private static final double NS_PER_MS = 1e6;
    private static final int WIDTH = 80;

    private final DiagnosticKnowledge knowledge;
    private final Diagnoser diagnoser;
    private final List<Case> cases;
    private final Path folder;
    private int talks;

    private AnswerBench(DiagnosticKnowledge knowledge, List<Case> cases, Path folder) {
        this.knowledge = knowledge;
        this.diagnoser = new Diagnoser(knowledge);
        this.cases = cases;
        this.folder = folder;
    }

    /** One case to be told again. */
    private record Case(String word, Answers answers) {}

    /** Runs and prints. */
    public static void main(String[] args) throws IOException {
        DiagnosticKnowledge knowledge = KnowledgeReader.forDiagnosis(KNOWLEDGE, KnowledgeReader.read(KNOWLEDGE));
        AnswerBench bench = new AnswerBench(
                knowledge, cases(new AnswersJson(knowledge.base())), Files.createTempDirectory("pourwright-day"));
        try {
            bench.run();
        } finally {
            bench.tidy();
        }
    }

    private static List<Case> cases(AnswersJson reader) throws IOException {
        try (Stream<Path> files = Files.list(CASES)) {
            List<Case> all = files.filter(f -> f.toString().endsWith(".case.json"))
                    .sorted()
                    .map(f -> {
                        String word = CaseFile.wordOf(f);
                        return new Case(word, CaseFile.read(f, word, reader).answers());
                    })
                    .toList();
            if (all.isEmpty()) {
                throw new IllegalStateException("there are no cases in " + CASES.toAbsolutePath());
            }
            return all;
        }
    }

    private void run() {
        for (int day = 0; day < WARM_DAYS; day++) {
            day("plan", true);
            day("diagnose", true);
        }
        System.out.printf(
                Locale.ROOT,
                "next question after Enter, %d days of %d conversations, after %d to warm up, in ms:%n"
                        + "  %-24s %9s %8s %8s %8s%n",
                DAYS,
                cases.size(),
                WARM_DAYS,
                "",
                "questions",
                "50th",
                "90th",
                "99th");
        for (boolean kept : new boolean[] {true, false}) {
            for (String word : List.of("plan", "diagnose")) {
                List<Long> all = new ArrayList<>();
                for (int day = 0; day < DAYS; day++) {
                    all.addAll(day(word, kept));
                }
                print(word + (kept ? ", kept on disk" : ", nothing kept"), all);
            }
        }
    }

    private static void print(String name, List<Long> waitsNs) {
        long[] sorted = waitsNs.stream().mapToLong(Long::longValue).toArray();
        Arrays.sort(sorted);
        StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "  %-24s %9d", name, sorted.length));
        for (int p : PERCENTILES) {
            // The smallest wait that so many in a hundred do not exceed.
            int rank = (int) Math.ceil(p / 100.0 * sorted.length);
            line.append(String.format(Locale.ROOT, " %8.2f", sorted[Math.max(0, rank - 1)] / NS_PER_MS));
        }
        System.out.println(line);
    }

    /** The waits of one day's conversations of one kind, in nanoseconds. */
    private List<Long> day(String word, boolean kept) {
        List<Long> waits = new ArrayList<>();
        for (Case c : cases) {
            if (c.word().equals(word)) {
                Person person = new Person(c);
                // A new folder each time: a remembered kit would spare the questions about it.
                Path shop = kept ? folder.resolve("shop-" + talks++) : null;
                new Conversation(
                                person,
                                word.equals("plan") ? new PlanJob(knowledge.base()) : new DiagnoseJob(diagnoser),
                                shop,
                                Answers.NONE)
                        .run();
                waits.addAll(person.waitsNs);
            }
        }
        if (waits.isEmpty()) {
            throw new IllegalStateException("no question was asked in any \"" + word + "\": nothing was measured");
        }
        return waits;
    }

    private void tidy() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(p);
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** Types the answers of a case and stops the clock whenever the next question stands there. */
    private final class Person implements Door {
        private static final String PROMPT_END = " > ";

        private final Case told;
        private final List<Long> waitsNs = new ArrayList<>();
        private final Set<String> answered = new HashSet<>();
        private long enterNs = -1;

        Person(Case told) {
            this.told = told;
        }

        @Override
        public String ask(String prompt, List<String> words) {
            long now = System.nanoTime();
            String id = prompt.substring(0, prompt.length() - PROMPT_END.length());
            boolean question = knowledge.base().question(id).isPresent();
            if (question && enterNs >= 0) {
                waitsNs.add(now - enterNs);
            }
            String line = id.equals(told.word()) && !words.isEmpty() ? "quit" : question ? answer(id) : "";
            enterNs = System.nanoTime();
            return line;
        }

        private String answer(String id) {
            Answers.Given given = told.answers().all().get(id);
            // What a file says in short may need its unit at a prompt: asked again, it is not known.
            boolean known = given != null && given.raw() != null && answered.add(id);
            return known ? given.raw().toString() : "don't know";
        }

        @Override
        public void say(String line) {
            // What the page looks like takes no part.
        }

        @Override
        public int width() {
            return WIDTH;
        }

        @Override
        public boolean plain() {
            return false;
        }
    }
}
