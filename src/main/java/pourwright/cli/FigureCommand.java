package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.advice.OneFigure;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.ResultJson;
import pourwright.console.FigureJob;
import pourwright.console.FigurePage;
import pourwright.facts.Answers;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;

/** One figure on its own, from just the answers it needs. */
@Command(
        name = "figure",
        header = {
            "  pourwright figure                             # all, by what they answer",
            "  pourwright figure pump-down-time              # asks for what it needs",
            "  pourwright figure pump-down-time chamber-volume=20 pump-speed=\"3 cfm\" \\",
            "      target-pressure=30",
            "  pourwright figure absolute-pressure gauge-reading=\"24 inHg\" \\",
            "      gauge-kind=below-local-air altitude=1600 --in kPa"
        },
        description = "Compute one figure: its range, formula, source, and where it holds.")
final class FigureCommand implements Callable<Integer> {
    private final Program program;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "NAME",
            description = "The figure; without it all are listed.")
    private String name;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "id=value", description = "Answers already known.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--in", paramLabel = "UNIT", description = "Show it in this unit, for example inHg.")
    private String unit;

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean asJson;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    FigureCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        Knowledge knowledge = program.knowledge(shared);
        FigurePage page = new FigurePage(knowledge, Talk.width(program));
        try {
            if (name == null) {
                if (asJson) {
                    program.out().println(Json.write(list()));
                } else {
                    page.all().forEach(program.out()::println);
                }
                return ExitCode.ADVICE.code();
            }
            OneFigure figure = OneFigure.named(name, knowledge);
            Answers answers = Given.read(words, new AnswersJson(knowledge));
            if (!asJson && !shared.noInput && figure.missing(answers).isPresent()) {
                return Talk.job(program, shared, new FigureJob(figure, knowledge, unit), null, answers)
                        .code();
            }
            OneFigure.Result r = figure.of(answers, unit);
            if (asJson) {
                program.out()
                        .println(Json.write(new ResultJson(knowledge).figure(r.value(), r.wording(), r.assumed())));
            } else {
                page.lines(r).forEach(program.out()::println);
            }
            return ExitCode.ADVICE.code();
        } catch (BadAnswer e) {
            if (asJson) {
                program.out().println(Json.write(ResultJson.error(e)));
            }
            return program.failed(e).code();
        }
    }

    private static ObjectNode list() {
        ObjectNode out = Json.object();
        ArrayNode all = out.putArray("figures");
        FigurePage.topics()
                .forEach((topic, defs) -> defs.forEach(d -> {
                    ObjectNode one = all.addObject();
                    one.put("id", d.id())
                            .put("topic", topic)
                            .put("answers", d.asks())
                            .put("unit", d.dimension().siUnit())
                            .put("formula", d.words())
                            .put("holds-for", d.valid());
                    ArrayNode sources = one.putArray("sources");
                    d.sources().forEach(sources::add);
                }));
        return out;
    }
}
