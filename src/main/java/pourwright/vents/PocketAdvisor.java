package pourwright.vents;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.advice.Wording;
import pourwright.facts.Answers;
import pourwright.geometry.Pocket;
import pourwright.geometry.Vec3;
import pourwright.knowledge.Knowledge;
import pourwright.rulebook.Conclusion;
import pourwright.rulebook.Verb;
import pourwright.units.Dimension;

/** Consults about one pocket at a time, and takes the cheapest sure decision that a rule speaks for. */
final class PocketAdvisor {
    /** The least volume a pocket's answer may have; below, the eye sees nothing anyway. */
    private static final double LEAST_M3 = 1e-12;

    private final Answers job;
    private final Knowledge knowledge;
    private final List<String> order;
    private final Map<Key, Boolean> vented = new ConcurrentHashMap<>();

    /**
     * @param job what was said about the job, with a material
     */
    PocketAdvisor(Answers job, Knowledge knowledge) {
        this.job = job;
        this.knowledge = knowledge;
        this.order = List.copyOf(knowledge.decisions().keySet());
    }

    private record Key(double volumeM3, double widthM, double depthM, double headM, String freed) {}

    /** The decision about a pocket found in a mesh. */
    Treatment of(Pocket pocket, Optional<Boolean> freed, Optional<Vec3> lean, int vents) {
        Answers answers = about(pocket, freed);
        if (vents > 1) {
            answers = Typed.quantity(answers, "undercut-count", vents, "1", Dimension.NUMBER);
        }
        return decided(Optional.of(pocket), Advisor.consult(answers, knowledge), lean);
    }

    /** The decision about a place that was only described. */
    Treatment described(Answers answers) {
        return decided(Optional.empty(), Advisor.consult(answers, knowledge), Optional.empty());
    }

    /** Whether a pocket takes a vent; the same pocket is looked at once. */
    boolean takesVent(Pocket pocket, Optional<Boolean> freed) {
        Key key = new Key(
                pocket.volumeM3(),
                pocket.mouthWidthM(),
                pocket.depthM(),
                pocket.headM(),
                freed.map(String::valueOf).orElse(""));
        return vented.computeIfAbsent(
                key, k -> of(pocket, freed, Optional.empty(), 1).vented());
    }

    private Answers about(Pocket pocket, Optional<Boolean> freed) {
        double depth = pocket.depthM();
        // A film under a flat ceiling has no mouth of its own: the ball of its volume stands in.
        double ball = Math.cbrt(6 * Math.max(LEAST_M3, pocket.volumeM3()) / Math.PI);
        double width = pocket.mouthWidthM() > 0 ? pocket.mouthWidthM() : ball;
        Answers answers = Typed.choice(job, "undercuts", UndercutClass.of(width, knowledge));
        answers = Typed.choice(answers, "undercut-blind", "yes");
        answers = Typed.quantity(answers, "undercut-width", width, "mm", Dimension.LENGTH);
        answers = Typed.quantity(answers, "undercut-depth", depth > 0 ? depth : ball, "mm", Dimension.LENGTH);
        answers =
                Typed.quantity(answers, "pocket-volume", Math.max(LEAST_M3, pocket.volumeM3()), "mL", Dimension.VOLUME);
        if (pocket.headM() >= 0) {
            answers = Typed.quantity(answers, "head-height", pocket.headM(), "mm", Dimension.LENGTH);
        }
        if (freed.isPresent()) {
            answers = Typed.choice(answers, "pocket-freed-by-tilt", freed.get() ? "yes" : "no");
        }
        return answers;
    }

    private Treatment decided(Optional<Pocket> pocket, Consultation c, Optional<Vec3> lean) {
        List<Conclusion> spoken =
                c.conclusions().stream().filter(x -> x.verb() == Verb.DECIDE).toList();
        for (String decision : order) {
            for (Conclusion x : spoken) {
                if (x.target().equals(decision)) {
                    String say = new Wording(knowledge, c.answers(), c.figures()).fill(x.say());
                    return new Treatment(
                            pocket, decision, say, x.rule(), c, decision.equals("tilt") ? lean : Optional.empty());
                }
            }
        }
        throw new IllegalStateException("no rule decides about " + c.answers().all());
    }
}
