package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.advice.BadAnswer;
import pourwright.advice.OneFigure;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.figures.FigureDef;
import pourwright.figures.Missing;
import pourwright.interview.Interviewer;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;

/** One figure: asks for the answers it waits for and no others, shows it, and is done. */
public final class FigureJob implements Job {
    private final OneFigure figure;
    private final Knowledge knowledge;
    private final String unit;

    /**
     * @param figure which one
     * @param unit the unit to show it in, or null for the person's own
     */
    public FigureJob(OneFigure figure, Knowledge knowledge, String unit) {
        this.figure = figure;
        this.knowledge = knowledge;
        this.unit = unit;
    }

    @Override
    public String word() {
        return "figure";
    }

    @Override
    public Knowledge knowledge() {
        return knowledge;
    }

    @Override
    public boolean usesKit() {
        return false;
    }

    @Override
    public boolean endsWithItsResult() {
        return true;
    }

    @Override
    public Optional<Interviewer.Next> next(Answers answers) {
        Optional<Missing.Wanted> missing = figure.missing(answers);
        if (missing.isEmpty()) {
            askAgainForWhatCannotBe(answers);
            return Optional.empty();
        }
        Missing.Wanted wanted = missing.get();
        Question q = knowledge.question(wanted.question()).orElseThrow();
        return Optional.of(new Interviewer.Next(q, reasons(wanted, answers)));
    }

    /** An answer that cannot be true is asked again; a figure that does not exist is for the result to refuse. */
    private void askAgainForWhatCannotBe(Answers answers) {
        try {
            figure.of(answers, unit);
        } catch (BadAnswer e) {
            if (answers.get(e.field()).isPresent()) {
                throw e;
            }
        }
    }

    private List<String> reasons(Missing.Wanted wanted, Answers answers) {
        List<String> out = new ArrayList<>();
        for (FigureDef d : wanted.path()) {
            out.add((out.isEmpty() ? "" : "That takes ") + d.id() + " (\"" + d.asks() + "\"): " + d.words() + ".");
        }
        Optional<Missing.Wanted> instead = figure.missing(answers.with(wanted.question(), new Answer.DontKnow(), null));
        instead.ifPresent(i -> out.add("If you don't know it, '" + i.question() + "' is asked instead."));
        return out;
    }

    @Override
    public Optional<String> tooEarly(Answers answers) {
        return figure.missing(answers)
                .map(w -> "\"" + figure.definition().id() + "\" cannot be computed yet: '" + w.question()
                        + "' is needed, or \"don't know\".");
    }

    @Override
    public Result result(Answers answers, int width, boolean plain) {
        return new Computed(new FigurePage(knowledge, width).lines(figure.of(answers, unit)), again(answers));
    }

    /** The line that gives the same figure again without a question. */
    private String again(Answers answers) {
        StringBuilder line = new StringBuilder("The same again: pourwright figure ")
                .append(figure.definition().id());
        answers.all().forEach((id, given) -> {
            if (given.raw() != null) {
                String raw = given.raw().toString();
                line.append(' ').append(id).append('=').append(raw.matches("[\\w.:+-]+") ? raw : "\"" + raw + "\"");
            }
        });
        return line + (unit == null ? "" : " --in \"" + unit + "\"");
    }

    /** A figure with its page. */
    private record Computed(List<String> first, String next) implements Result {
        @Override
        public List<String> words() {
            return List.of();
        }

        @Override
        public Optional<List<String>> say(String verb, String rest) {
            return Optional.empty();
        }

        @Override
        public boolean stop() {
            return false;
        }

        @Override
        public String caseText(String name) {
            throw new IllegalStateException("a figure is no case");
        }
    }
}
