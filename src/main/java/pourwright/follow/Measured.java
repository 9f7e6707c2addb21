package pourwright.follow;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import pourwright.advice.Consultation;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.figures.FigureValue;
import pourwright.figures.KitName;
import pourwright.figures.OwnCorrection;
import pourwright.figures.Scope;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.OwnRun;
import pourwright.knowledge.Question;

/** What a followed plan says about the estimates it was made with: measured over computed. */
public final class Measured {
    private static final String OPEN = "degas-open";

    private final Consultation c;
    private final Knowledge knowledge;
    private final FollowLog log;

    private Measured(Consultation c, Knowledge knowledge, FollowLog log) {
        this.c = c;
        this.knowledge = knowledge;
        this.log = log;
    }

    /** The run as the workshop's own data; empty when the log measures nothing. */
    public static Optional<OwnRun> run(Consultation c, Knowledge knowledge, FollowLog log) {
        Map<String, Double> ratios = new Measured(c, knowledge, log).ratios();
        return ratios.isEmpty() || log.began().isEmpty()
                ? Optional.empty()
                : Optional.of(new OwnRun(
                        log.began().get().toString(), c.answers().choice("material"), KitName.of(c.answers()), ratios));
    }

    private Map<String, Double> ratios() {
        Map<String, Double> ratios = new TreeMap<>();
        OptionalDouble crest = ratio("froth-crest-time", sinceOpen("degas-crest"));
        OptionalDouble fall = ratio("froth-fall-time", sinceOpen("degas-fall"));
        if (crest.isPresent() && fall.isPresent()) {
            ratios.put(OwnCorrection.FROTH, Math.sqrt(crest.getAsDouble() * fall.getAsDouble()));
        } else {
            crest.ifPresent(r -> ratios.put(OwnCorrection.FROTH, r));
            fall.ifPresent(r -> ratios.put(OwnCorrection.FROTH, r));
        }
        ratio("pump-down-time", deepEnough()).ifPresent(r -> ratios.put(OwnCorrection.PUMP_DOWN, r));
        ratio("working-time", log.first("gel")).ifPresent(r -> ratios.put(OwnCorrection.WORKING, r));
        overflow().ifPresent(r -> ratios.put(OwnCorrection.ROOM, r));
        return ratios;
    }

    private OptionalDouble sinceOpen(String what) {
        OptionalDouble open = log.first(OPEN);
        OptionalDouble at = log.first(what);
        return open.isPresent() && at.isPresent() && at.getAsDouble() > open.getAsDouble()
                ? OptionalDouble.of(at.getAsDouble() - open.getAsDouble())
                : OptionalDouble.empty();
    }

    /** The time from opening the valve to the first reading at or below the planned pressure. */
    private OptionalDouble deepEnough() {
        OptionalDouble open = log.first(OPEN);
        Optional<FigureValue> planned = c.figure("planned-pressure");
        if (open.isEmpty() || planned.isEmpty()) {
            return OptionalDouble.empty();
        }
        return log.entries().stream()
                .filter(e -> e.what().equals(FollowLog.GAUGE) && e.atS() > open.getAsDouble())
                .filter(e -> pressurePa(c.answers(), knowledge, e.value())
                        .filter(p -> p <= planned.get().si().typical())
                        .isPresent())
                .mapToDouble(e -> e.atS() - open.getAsDouble())
                .findFirst();
    }

    /** What the chamber holds when this gauge shows that, Pa absolute; empty when it cannot be read. */
    public static Optional<Double> pressurePa(Answers answers, Knowledge knowledge, String reading) {
        Question q = knowledge.question("gauge-reading").orElseThrow();
        Answers with = new AnswerReader(knowledge).fromProgram(q, reading) instanceof AnswerReader.Understood u
                        && u.answer() instanceof Answer.Quantity
                ? answers.with(q.id(), u.answer(), reading)
                : answers.without(q.id());
        return with.has(q.id())
                ? new Scope(with, knowledge, true).get("absolute-pressure").map(v -> v.si().typical())
                : Optional.empty();
    }

    private OptionalDouble ratio(String figure, OptionalDouble measuredS) {
        Optional<FigureValue> computed = c.figure(figure);
        if (measuredS.isEmpty() || computed.isEmpty()) {
            return OptionalDouble.empty();
        }
        double plain = computed.get().si().typical() / computed.get().ownFactor();
        return OwnCorrection.usable(measuredS.getAsDouble() / plain);
    }

    /** Froth over the rim shows that the cup holds too few times the mix; how many it takes lies somewhat above. */
    private OptionalDouble overflow() {
        Optional<FigureValue> cup = c.figure("cup-volume");
        Optional<FigureValue> load = c.figure("cup-load");
        Optional<FigureValue> factor = c.figure("cup-factor");
        if (log.first(FollowLog.OVERFLOW).isEmpty() || cup.isEmpty() || load.isEmpty() || factor.isEmpty()) {
            return OptionalDouble.empty();
        }
        double batches = c.figure("batch-count").map(v -> v.si().typical()).orElse(1.0);
        double had = cup.get().si().typical() / (load.get().si().typical() / batches);
        double wanted = had * knowledge.guidelineSi("overflow-margin");
        return OwnCorrection.usable(
                wanted / (factor.get().si().typical() / factor.get().ownFactor()));
    }
}
