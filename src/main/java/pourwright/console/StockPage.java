package pourwright.console;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.advice.Strength;
import pourwright.advice.Wording;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.StockAnswers;
import pourwright.facts.Answers;
import pourwright.figures.Money;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.StockCan;
import pourwright.knowledge.StockList;
import pourwright.stock.Can;
import pourwright.stock.CanUse;
import pourwright.stock.Cans;
import pourwright.units.Dimension;

/** The cans of a workshop as lines, and which of them a plan takes from. */
public final class StockPage {
    private static final double DAY_S = 86_400;

    private StockPage() {}

    /** All cans: by material and part, and the one to use up first on top. */
    public static List<StockCan> ordered(StockList stock, LocalDate today) {
        Map<String, List<StockCan>> groups = new TreeMap<>();
        stock.cans()
                .forEach(c -> groups.computeIfAbsent(c.material() + " " + c.part(), k -> new ArrayList<>())
                        .add(c));
        List<StockCan> all = new ArrayList<>();
        for (List<StockCan> group : groups.values()) {
            List<String> order =
                    CanUse.oldestFirst(group.stream()
                                    .map(c -> StockAnswers.can(c, today))
                                    .toList())
                            .stream()
                            .map(Can::name)
                            .toList();
            group.sort(Comparator.comparingInt(c -> order.indexOf(Integer.toString(c.id()))));
            all.addAll(group);
        }
        return all;
    }

    /** One can in one line. */
    public static String line(StockCan c, Knowledge knowledge, LocalDate today) {
        Can aged = StockAnswers.can(c, today);
        StringBuilder s = new StringBuilder("can " + c.id() + ": " + c.material());
        part(c, knowledge.materials().get(c.material()), s);
        s.append(", ").append(Cans.mass(aged.massKg()));
        s.append(aged.openS().isPresent() ? ", " + open(aged.openS().getAsDouble()) : ", never opened");
        aged.boughtS().ifPresent(a -> s.append(", bought ").append(days(a)).append(" ago"));
        if (c.bestBefore() != null) {
            s.append(", best before ").append(c.bestBefore());
            aged.pastS().ifPresent(a -> s.append(" (").append(days(a)).append(" past)"));
        }
        aged.price()
                .ifPresent(p -> s.append(", ")
                        .append(Money.amount(p.perKg()))
                        .append(' ')
                        .append(p.currency())
                        .append(" per kg"));
        return s.toString();
    }

    private static void part(StockCan c, MaterialClass m, StringBuilder s) {
        if (m == null) {
            s.append(" (no such liquid is known)");
        } else if (!c.part().equals("whole")) {
            s.append(' ').append(m.mix().names().get(c.part().equals("first") ? 0 : 1));
        }
    }

    private static String open(double s) {
        return s < DAY_S ? "opened today" : "open " + days(s);
    }

    private static String days(double s) {
        long days = Math.round(s / DAY_S);
        return days + (days == 1 ? " day" : " days");
    }

    /** What the rules about stock say of one can by itself. */
    public static List<String> warnings(StockCan c, Knowledge knowledge, LocalDate today) {
        if (!knowledge.materials().containsKey(c.material()) || c.leftKg().signum() == 0) {
            return List.of();
        }
        AnswersJson reader = new AnswersJson(knowledge);
        Answers answers = reader.with(Answers.NONE, "material", c.material());
        String question = c.part().equals("second") ? "cans-second" : "cans-first";
        answers = reader.with(answers, question, Cans.text(List.of(StockAnswers.can(c, today))));
        return Advisor.consult(answers, knowledge).findings().stream()
                .filter(f -> f.rule().folder().equals("stock") && f.strength() != Strength.NOTE)
                .map(f -> f.say().replace('\u00a0', ' '))
                .toList();
    }

    /** In one line what is at hand of a material, to be confirmed. */
    static String inShort(Map<String, List<Can>> cans, MaterialClass m) {
        List<String> parts = new ArrayList<>();
        cans.forEach((question, all) -> {
            int index = question.equals("cans-second") ? 1 : 0;
            String name = m.mix().names().size() > index ? m.mix().names().get(index) : m.name();
            double kg = all.stream().mapToDouble(Can::massKg).sum();
            Can oldest = CanUse.oldestFirst(all).get(0);
            String open = oldest.openS().isPresent() ? open(oldest.openS().getAsDouble()) : "never opened";
            parts.add(name + " " + Cans.mass(kg) + " in " + all.size()
                    + (all.size() == 1 ? " can, " : " cans, the oldest ") + open);
        });
        return String.join("; ", parts);
    }

    /** True when a plan was told of cans. */
    static boolean told(Consultation c) {
        return !c.answers().text("cans-first").isEmpty()
                || !c.answers().text("cans-second").isEmpty();
    }

    /** Which cans a plan takes from, what is left in each, and the lines that write it down. */
    static List<String> ofPlan(Consultation c, Knowledge knowledge, int width, String ending) {
        List<String> out = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        MaterialClass m = knowledge.materials().get(c.answers().choice("material"));
        boolean first = part(c, m, "cans-first", "need-first", 0, width, out, lines);
        boolean second = part(c, m, "cans-second", "part-mass-b", 1, width, out, lines);
        if (!lines.isEmpty() && first && second) {
            out.addAll(Wrap.text("Once it is mixed, these lines bring the stock up to date:", width, "", ""));
            // Never wrapped: a line to be copied stays whole.
            lines.forEach(l -> out.add("  " + l + ending));
        }
        return out;
    }

    /** Adds the lines of one part; false when there is too little of it. */
    private static boolean part(
            Consultation c,
            MaterialClass m,
            String question,
            String need,
            int index,
            int width,
            List<String> out,
            List<String> lines) {
        String text = c.answers().text(question);
        if (text.isEmpty()) {
            return true;
        }
        String name = m.mix().names().size() > index ? m.mix().names().get(index) : m.name();
        if (c.figure(need).isEmpty()) {
            out.addAll(Wrap.text(name + ": how much is needed is not known yet.", width, "", "  "));
            return true;
        }
        CanUse use = CanUse.of(Cans.read(text), c.figure(need).get().si().typical());
        for (CanUse.Taken t : use.taken()) {
            // The scale shows tenths of a gram at best, and what was said must be what is typed.
            String taken = t.all() ? Cans.mass(t.can().massKg()) : Wording.one(t.kg(), Dimension.MASS);
            double left = t.all() ? 0 : t.can().massKg() - t.kg();
            out.addAll(Wrap.text(
                    name + ": " + taken + " from can " + t.can().name()
                            + (t.all()
                                    ? ", which is then empty."
                                    : ", which leaves " + Wording.one(left, Dimension.MASS) + "."),
                    width,
                    "",
                    "  "));
            lines.add("pourwright stock use " + t.can().name() + " \"" + taken.replace('\u00a0', ' ') + "\"");
        }
        if (use.shortKg() > 0) {
            out.addAll(Wrap.text(
                    name + ": " + Wording.one(use.shortKg(), Dimension.MASS) + " are missing.", width, "", "  "));
        }
        return use.shortKg() == 0;
    }
}
