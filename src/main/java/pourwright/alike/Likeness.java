package pourwright.alike;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pourwright.facts.Answer;
import pourwright.facts.Answers;

/**
 * How near two pictures are. Half of the distance is how far the deciding answers lie apart, weighted by how much rests on
 * them; the other half is how little of what was concluded is common to both (one less the weighted Jaccard index).
 *
 * @param distance from 0, the same, to 1, nothing in common; the same both ways
 * @param same questions answered alike, the weightiest first
 * @param differs questions answered otherwise, the weightiest first
 */
public record Likeness(double distance, List<String> same, List<String> differs) {
    /** A value ten times another is as far from it as values get; common practice, as the two below. */
    private static final double FAR_RATIO = Math.log(10);

    /** Temperatures so far apart are as far as they get, K. */
    private static final double FAR_K = 20;

    /** Between the same and another: nobody knows which. */
    private static final double UNKNOWN = 0.5;

    /** Answers so near are called the same; a word, it decides nothing. */
    private static final double ALIKE = 0.15;

    private static final double ROUNDED = 1e-12;
    private static final double LEAST_FOR_KELVIN = 200;

    public Likeness {
        same = List.copyOf(same);
        differs = List.copyOf(differs);
    }

    /** Compares two pictures. */
    public static Likeness of(Picture a, Picture b) {
        Set<String> ids = new TreeSet<>(a.deciding().keySet());
        ids.addAll(b.deciding().keySet());
        double all = 0;
        double apart = 0;
        List<String> same = new ArrayList<>();
        List<String> differs = new ArrayList<>();
        for (String id : ids) {
            double weight = weight(id, a, b);
            double far = far(a.answers(), b.answers(), id);
            all += weight;
            apart += weight * far;
            boolean both =
                    a.answers().get(id).isPresent() && b.answers().get(id).isPresent();
            if (both) {
                (far <= ALIKE ? same : differs).add(id);
            }
        }
        Comparator<String> byWeight =
                Comparator.comparingDouble((String id) -> -weight(id, a, b)).thenComparing(Comparator.naturalOrder());
        same.sort(byWeight);
        differs.sort(byWeight);
        double answers = all == 0 ? 0 : apart / all;
        double distance = (answers + apart(a.concluded(), b.concluded())) / 2;
        // Sums that were rounded must not make a case another than itself.
        return new Likeness(distance < ROUNDED ? 0 : distance, same, differs);
    }

    private static double weight(String id, Picture a, Picture b) {
        return (a.deciding().getOrDefault(id, 0.0) + b.deciding().getOrDefault(id, 0.0)) / 2;
    }

    /** One less the weighted Jaccard index. */
    private static double apart(Map<String, Double> a, Map<String, Double> b) {
        Set<String> ids = new TreeSet<>(a.keySet());
        ids.addAll(b.keySet());
        double common = 0;
        double all = 0;
        for (String id : ids) {
            double x = a.getOrDefault(id, 0.0);
            double y = b.getOrDefault(id, 0.0);
            common += Math.min(x, y);
            all += Math.max(x, y);
        }
        return all == 0 ? 0 : 1 - common / all;
    }

    /** How far two answers lie apart, from 0 to 1. */
    private static double far(Answers a, Answers b, String id) {
        Optional<Answer> x = a.get(id);
        Optional<Answer> y = b.get(id);
        if (x.isEmpty() || y.isEmpty()) {
            return x.isEmpty() && y.isEmpty() ? 0 : UNKNOWN;
        }
        if (x.get() instanceof Answer.Quantity p && y.get() instanceof Answer.Quantity q) {
            return far(p, q);
        }
        if (x.get() instanceof Answer.Ratio p && y.get() instanceof Answer.Ratio q) {
            return Math.min(1, Math.abs(Math.log(p.first() / p.second() * q.second() / q.first())) / FAR_RATIO);
        }
        if (x.get() instanceof Answer.Several || y.get() instanceof Answer.Several) {
            Set<String> p = new HashSet<>(a.choices(id));
            Set<String> both = new HashSet<>(p);
            both.retainAll(b.choices(id));
            p.addAll(b.choices(id));
            return p.isEmpty() ? 0 : 1 - (double) both.size() / p.size();
        }
        return x.get().equals(y.get()) ? 0 : 1;
    }

    private static double far(Answer.Quantity p, Answer.Quantity q) {
        double a = p.si().typical();
        double b = q.si().typical();
        if (a == b) {
            return 0;
        }
        boolean kelvin = p.unit().matches("°?[CFK]") && a > LEAST_FOR_KELVIN && b > LEAST_FOR_KELVIN;
        if (kelvin) {
            return Math.min(1, Math.abs(a - b) / FAR_K);
        }
        return a <= 0 || b <= 0 ? 1 : Math.min(1, Math.abs(Math.log(a / b)) / FAR_RATIO);
    }
}
