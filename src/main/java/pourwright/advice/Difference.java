package pourwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pourwright.figures.FigureValue;

/**
 * What changes between two consultations.
 *
 * @param before the first
 * @param after the second
 * @param fresh findings only the second has
 * @param gone findings only the first has
 * @param figures ids of figures whose typical value differs noticeably, or that only one has
 * @param steps steps of the timetable that come, go, or begin at another time
 */
public record Difference(
        Consultation before,
        Consultation after,
        List<Finding> fresh,
        List<Finding> gone,
        List<String> figures,
        List<Moved> steps) {
    private static final double NOTABLE = 0.01;

    /** Nobody at a bench tells less apart. */
    private static final double NOTABLE_S = 1;

    /** Compares two consultations. */
    public static Difference between(Consultation before, Consultation after) {
        List<Finding> fresh = after.findings().stream()
                .filter(f -> before.finding(f.id()).isEmpty())
                .toList();
        List<Finding> gone = before.findings().stream()
                .filter(f -> after.finding(f.id()).isEmpty())
                .toList();
        List<String> figures = new ArrayList<>();
        for (Map.Entry<String, FigureValue> e : after.figures().entrySet()) {
            FigureValue old = before.figures().get(e.getKey());
            if (old == null || differs(old, e.getValue())) {
                figures.add(e.getKey());
            }
        }
        before.figures().keySet().stream()
                .filter(id -> !after.figures().containsKey(id))
                .forEach(figures::add);
        return new Difference(before, after, fresh, gone, List.copyOf(figures), moved(before, after));
    }

    /**
     * A step of two timetables.
     *
     * @param id the step's id
     * @param before the step as it was, or null when it is new
     * @param after the step as it is then, or null when it is gone
     */
    public record Moved(String id, Step before, Step after) {}

    private static List<Moved> moved(Consultation before, Consultation after) {
        List<Moved> moved = new ArrayList<>();
        List<Step> old = new ArrayList<>(before.timetable());
        for (Step now : after.timetable()) {
            Step was = old.stream()
                    .filter(s -> s.id().equals(now.id()))
                    .findFirst()
                    .orElse(null);
            old.remove(was);
            if (was == null || Math.abs(was.atS().typical() - now.atS().typical()) >= NOTABLE_S) {
                moved.add(new Moved(now.id(), was, now));
            }
        }
        old.forEach(gone -> moved.add(new Moved(gone.id(), gone, null)));
        return List.copyOf(moved);
    }

    private static boolean differs(FigureValue a, FigureValue b) {
        double x = a.si().typical();
        double y = b.si().typical();
        return x != y && !(Math.abs(x - y) <= NOTABLE * Math.max(Math.abs(x), Math.abs(y)));
    }

    /** True when nothing a person would notice differs. */
    public boolean nothing() {
        return fresh.isEmpty() && gone.isEmpty() && figures.isEmpty() && before.verdict() == after.verdict();
    }
}
