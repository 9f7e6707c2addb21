package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.advice.Difference;
import pourwright.advice.Finding;
import pourwright.advice.Wording;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;
import pourwright.units.Show;

/** A difference as lines of text: the verdict first, then what is new, what is gone, and the figures. */
public final class DifferencePage {
    private static final int MOST_FIGURES = 12;
    private static final int MOST_STEPS = 6;

    private final Difference d;
    private final Knowledge knowledge;
    private final int width;

    public DifferencePage(Difference d, Knowledge knowledge, int width) {
        this.d = d;
        this.knowledge = knowledge;
        this.width = width;
    }

    /** All of it. */
    public List<String> lines() {
        List<String> out = new ArrayList<>();
        if (d.nothing()) {
            return wrap("Nothing would change.", "", "");
        }
        String old = d.before().verdict().word().toUpperCase(Locale.ROOT);
        String now = d.after().verdict().word().toUpperCase(Locale.ROOT);
        out.addAll(wrap(old.equals(now) ? "Still " + now + "." : now + " instead of " + old + ".", "", ""));
        d.fresh().forEach(f -> out.addAll(wrap(f.say(), "  new (" + strength(f) + "): ", "    ")));
        d.gone().forEach(f -> out.addAll(wrap(f.say(), "  gone (" + strength(f) + "): ", "    ")));
        Wording before = new Wording(knowledge, d.before().answers(), d.before().figures());
        Wording after = new Wording(knowledge, d.after().answers(), d.after().figures());
        d.figures().stream()
                .filter(this::computed)
                .limit(MOST_FIGURES)
                .forEach(id -> out.addAll(wrap(
                        shown(d.before().figures().get(id), before) + ", then "
                                + shown(d.after().figures().get(id), after),
                        "  " + id + ": ",
                        "    ")));
        List<Difference.Moved> steps = d.steps();
        steps.stream().limit(MOST_STEPS).forEach(m -> out.addAll(wrap(moved(m), "  timetable: ", "    ")));
        if (steps.size() > MOST_STEPS) {
            out.addAll(wrap(
                    "and " + (steps.size() - MOST_STEPS) + " more steps at other times.", "  timetable: ", "    "));
        }
        out.addAll(wrap("Nothing was changed. \"change NUMBER\" changes an answer for good.", "", ""));
        return out;
    }

    private static String moved(Difference.Moved m) {
        if (m.before() == null) {
            return m.id() + " at " + Show.clock(m.after().atS().typical()) + ", new.";
        }
        return m.id() + " at " + Show.clock(m.before().atS().typical())
                + (m.after() == null
                        ? ", then no more."
                        : ", then at " + Show.clock(m.after().atS().typical()) + ".");
    }

    private boolean computed(String id) {
        FigureValue v =
                d.after().figures().getOrDefault(id, d.before().figures().get(id));
        return v.defined().isPresent();
    }

    private static String shown(FigureValue v, Wording wording) {
        return v == null ? "none" : wording.show(v);
    }

    private static String strength(Finding f) {
        return f.isCaution() ? "caution" : f.strength().word();
    }

    private List<String> wrap(String text, String first, String rest) {
        return Wrap.text(text, width, first, rest);
    }
}
