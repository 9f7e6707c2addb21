package pourwright.cli;

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
import pourwright.advice.Wording;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.ResultJson;
import pourwright.console.Wrap;
import pourwright.facts.Answers;
import pourwright.figures.FigureBook;
import pourwright.figures.FigureDef;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;

/** One figure on its own, from just the answers it needs. */
@Command(
        name = "figure",
        description = "Compute one figure from just the answers it needs. Alone it lists them by what they answer.",
        customSynopsis = {
            "pourwright figure",
            "       pourwright figure pump-down-time chamber-volume=20 pump-speed=\"3 cfm\" target-pressure=30",
            "       pourwright figure absolute-pressure gauge-reading=27 gauge-kind=below-local-air altitude=1600",
            "       pourwright figure NAME id=value ... --json"
        })
final class FigureCommand implements Callable<Integer> {
    private final Program program;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean asJson;

    @Parameters(paramLabel = "NAME id=value", description = "The figure and its answers.")
    private List<String> words = new ArrayList<>();

    FigureCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        Knowledge knowledge = program.knowledge(shared);
        try {
            if (words.isEmpty()) {
                list();
                return ExitCode.ADVICE.code();
            }
            Answers answers = Given.read(words.subList(1, words.size()), new AnswersJson(knowledge));
            OneFigure.Result r = OneFigure.of(words.get(0), answers, knowledge);
            if (asJson) {
                ObjectNode out = new ResultJson(knowledge).figure(r.value(), r.wording(), r.assumed());
                program.out().println(Json.write(out));
            } else {
                lines(r).forEach(program.out()::println);
            }
            return ExitCode.ADVICE.code();
        } catch (BadAnswer e) {
            if (asJson) {
                program.out().println(Json.write(ResultJson.error(e)));
            }
            return program.failed(e).code();
        }
    }

    private List<String> lines(OneFigure.Result r) {
        int width = Talk.width(program);
        FigureValue v = r.value();
        Wording wording = r.wording();
        List<String> out = new ArrayList<>(Wrap.text(wording.show(v), width, v.id() + " = ", "  "));
        FigureDef d = v.defined().orElse(null);
        if (d != null) {
            out.addAll(Wrap.text(d.words(), width, "how: ", "  "));
            out.addAll(Wrap.text(d.valid(), width, "holds for: ", "  "));
            out.addAll(Wrap.text(String.join(", ", d.sources()), width, "source: ", "  "));
        }
        if (!v.dependsOnMost().isEmpty()) {
            out.addAll(Wrap.text(v.dependsOnMost(), width, "depends most on: ", "  "));
        }
        if (!r.assumed().isEmpty()) {
            out.addAll(Wrap.text(String.join(", ", r.assumed()), width, "assumed: ", "  "));
        }
        if (v.caveat() != null) {
            out.addAll(Wrap.text(v.caveat(), width, "careful: ", "  "));
        }
        return out;
    }

    private void list() {
        for (FigureDef d : FigureBook.all()) {
            if (!d.valid().startsWith("used inside")) {
                Wrap.text(d.asks(), Talk.width(program), d.id() + ": ", "    ").forEach(program.out()::println);
            }
        }
    }
}
