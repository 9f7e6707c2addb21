package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pourwright.console.Wrap;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;

/** Every question with its id, unit, range and choices. */
@Command(
        name = "questions",
        header = {
            "  pourwright questions                          # every id with what it takes",
            "  pourwright questions --json                   # the same for a program"
        },
        description = "List every question: its id, what it takes, its choices.")
final class QuestionsCommand implements Callable<Integer> {
    private final Program program;

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean asJson;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    QuestionsCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        DiagnosticKnowledge diagnostic = program.knowledgeForDiagnosis(shared, false);
        Knowledge knowledge = diagnostic.base();
        List<Question> both = new ArrayList<>(knowledge.questions());
        both.addAll(diagnostic.observations());
        ArrayNode all = Json.array();
        for (Question q : both) {
            ObjectNode one = all.addObject();
            one.put("word", diagnostic.observations().contains(q) ? "diagnose" : "plan");
            one.put("id", q.id())
                    .put("section", q.section())
                    .put("ask", q.ask())
                    .put("kind", q.kind())
                    .put("help", q.help());
            if (q.several()) {
                one.put("several", true);
            }
            if (q.kind().equals("quantity")) {
                one.put("quantity", q.quantity())
                        .put("unit", q.unit())
                        .put("min", q.min())
                        .put("max", q.max());
            }
            if (q.example() != null) {
                one.put("example", q.example());
            }
            ArrayNode choices =
                    q.kind().equals("choice") || q.kind().equals("material") ? one.putArray("choices") : null;
            q.choices().forEach(c -> choices.addObject().put("id", c.id()).put("text", c.text()));
            if (q.kind().equals("material")) {
                knowledge
                        .materials()
                        .values()
                        .forEach(m -> choices.addObject().put("id", m.id()).put("text", m.name()));
            }
            if (!asJson) {
                line(q);
            }
        }
        if (asJson) {
            program.out().println(Json.write(Json.object().set("questions", all)));
        }
        return ExitCode.ADVICE.code();
    }

    private void line(Question q) {
        String takes = switch (q.kind()) {
            case "quantity" -> q.min() + " to " + q.max() + " " + q.unit();
            case "choice" ->
                String.join(" | ", q.choices().stream().map(Question.Choice::id).toList());
            case "ratio" -> "a ratio, for example " + q.example();
            case "log" -> "a log of the bench, for example " + q.example();
            case "cans" -> "cans of a part, for example " + q.example();
            case "places" -> "three numbers, for example " + q.example();
            case "text" -> "a text, for example " + q.example();
            default -> "a material, see --json";
        };
        Wrap.text(q.ask() + " " + takes, Talk.width(program), q.id() + ": ", "    ")
                .forEach(program.out()::println);
    }
}
