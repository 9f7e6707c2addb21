package pourwright.remedy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;

/** Consultations of one search: each job is tried once, and no more than a set number of them. */
final class Trials {
    /** Answers that cannot be true together are farther away than anything else. */
    static final long IMPOSSIBLE = Long.MAX_VALUE;

    private final Knowledge knowledge;
    private final Goal goal;
    private final int most;
    private final List<Finding> stuck;
    private final Map<Answers, Long> distances = new HashMap<>();

    Trials(Consultation before, Knowledge knowledge, Goal goal, int most) {
        this.knowledge = knowledge;
        this.goal = goal;
        this.most = most;
        this.stuck =
                new ArrayList<>(before.findings().stream().filter(Goal::hinders).toList());
    }

    /** True while another one may be tried. */
    boolean left() {
        return left(1);
    }

    /** True while that many may be tried. */
    boolean left(int count) {
        return distances.size() + count <= most;
    }

    int count() {
        return distances.size();
    }

    /** How far these answers are from the goal; what may not be tried any more is impossible. */
    long distance(Answers answers) {
        Long seen = distances.get(answers);
        if (seen != null) {
            return seen;
        }
        if (!left()) {
            return IMPOSSIBLE;
        }
        long distance;
        try {
            Consultation c = Advisor.consult(answers, knowledge);
            stuck.removeIf(f -> c.finding(f.id()).filter(Goal::hinders).isEmpty());
            distance = goal.distance(c);
        } catch (BadAnswer e) {
            distance = IMPOSSIBLE;
        }
        distances.put(answers, distance);
        return distance;
    }

    /** What hindered the job and was still there in every job tried. */
    List<Finding> stuck() {
        return List.copyOf(stuck);
    }

    /** The whole plan of a job that was tried. Kept are only distances: hundreds of plans would fill a small heap. */
    Consultation consultation(Answers answers) {
        return Advisor.consult(answers, knowledge);
    }
}
