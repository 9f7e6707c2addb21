package pourwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.casebook.CaseLibrary;
import pourwright.casebook.LearnJson;
import pourwright.casebook.Learners;
import pourwright.casebook.Trouble;
import pourwright.console.Clean;
import pourwright.console.Door;
import pourwright.console.Learning;
import pourwright.console.LessonPage;
import pourwright.console.TrainerPage;
import pourwright.diagnosis.Diagnoser;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Lessons;
import pourwright.teach.Exercises;
import pourwright.teach.Progress;
import pourwright.teach.Told;

/** The course for new staff. */
@Command(
        name = "learn",
        header = {
            "  pourwright learn                              # the course, lesson by lesson",
            "  pourwright learn pot-life --as Ida            # one lesson",
            "  pourwright learn --trainer                    # who has mastered what"
        },
        description = "Learn the trade: short lessons, things to try, and exercises that are marked.")
final class LearnCommand implements Callable<Integer> {
    private final Program program;

    @Parameters(paramLabel = "LESSON", arity = "0..1", description = "Its id or number.")
    private String lesson;

    @Option(names = "--as", paramLabel = "NAME", description = "Who learns; progress is kept under this name.")
    private String name = "";

    @Option(names = "--trainer", description = "Show who has mastered what.")
    private boolean trainer;

    @Option(names = "--seed", paramLabel = "N", description = "Draw the same exercises again.")
    private Long seed;

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean asJson;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    LearnCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        Path shop = program.shop(shared.shop);
        Lessons course = KnowledgeReader.lessons(program.knowledgeFolder(shared));
        Diagnoser diagnoser = new Diagnoser(program.knowledgeForDiagnosis(shared, true));
        int run = (int) Math.round(diagnoser.knowledge().base().guidelineSi("lesson-mastery"));
        if (trainer) {
            List<Progress> all = progress(new Learners(shop));
            if (asJson) {
                program.out().println(Json.write(LearnJson.progress(all, course, run)));
            } else {
                new TrainerPage(course, run, Talk.width(program)).lines(all).forEach(program.out()::println);
            }
            return ExitCode.ADVICE.code();
        }
        Lesson first = lesson == null ? null : find(course, lesson);
        if (asJson) {
            program.out().println(Json.write(LearnJson.course(course)));
            return ExitCode.ADVICE.code();
        }
        if (shared.noInput) {
            LessonPage page = new LessonPage(course, diagnoser, Talk.width(program));
            List<Lesson> some = first == null ? course.lessons() : List.of(first);
            some.forEach(l -> {
                page.whole(l).forEach(program.out()::println);
                if (some.size() > 1) {
                    program.out().println();
                }
            });
            return ExitCode.ADVICE.code();
        }
        return Talk.with(
                        program,
                        shared,
                        door -> learning(program, shared, course, diagnoser, seed, door)
                                .run(name, first))
                .code();
    }

    /** The course, to be talked through at a door. */
    static Learning learning(
            Program program, SharedOptions shared, Lessons course, Diagnoser diagnoser, Long seed, Door door) {
        Path shop = program.shop(shared.shop);
        Knowledge knowledge = diagnoser.knowledge().base();
        List<Told> cases = new ArrayList<>(CaseLibrary.read(program.casesFolder(), knowledge, false));
        cases.addAll(CaseLibrary.read(shop.resolve("cases"), knowledge, true));
        // Whoever comes again meets other exercises.
        long from = seed == null ? program.clock().instant().toEpochMilli() : seed;
        return new Learning(
                door,
                course,
                new Exercises(course, cases, diagnoser),
                diagnoser,
                new Learning.Keep(new Learners(shop), program.today()),
                from);
    }

    /** The same from the console, where nothing was named. */
    static Learning learning(Program program, SharedOptions shared, Door door) {
        return learning(
                program,
                shared,
                KnowledgeReader.lessons(program.knowledgeFolder(shared)),
                new Diagnoser(program.knowledgeForDiagnosis(shared, true)),
                null,
                door);
    }

    /** @throws BadAnswer when there is no such lesson, with the names */
    static Lesson find(Lessons course, String typed) {
        return course.find(typed)
                .orElseThrow(() -> new BadAnswer(
                        "lesson",
                        "There is no lesson \"" + Clean.quoted(typed) + "\". Accepted: 1 to "
                                + course.lessons().size() + ", or "
                                + String.join(
                                        ", ",
                                        course.lessons().stream()
                                                .map(Lesson::id)
                                                .toList()) + "."));
    }

    private static List<Progress> progress(Learners learners) {
        List<Progress> all = new ArrayList<>();
        try {
            for (String n : learners.names()) {
                all.add(learners.read(n));
            }
        } catch (IOException e) {
            throw new BadAnswer(
                    "learners",
                    "The progress cannot be read: "
                            + Trouble.why(learners.file("x").getParent(), e) + ".");
        }
        return all;
    }
}
