package pourwright.figures;

import static pourwright.figures.FigureDef.figure;
import static pourwright.figures.Input.in;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import pourwright.physics.PhysicsException;
import pourwright.stock.Can;
import pourwright.stock.CanUse;
import pourwright.units.Dimension;

/**
 * What is at hand against what a mix takes, how old it is, and what it costs. Everything rests on the answers
 * {@code cans-first} and {@code cans-second}: a workshop that gives none gets none of these figures.
 */
final class StockFigures {
    private static final String FIRST = "cans-first";
    private static final String SECOND = "cans-second";
    private static final String SOURCE = "common-practice";
    private static final String OLDEST =
            "the cans the mix takes from: the oldest that holds enough, else the oldest first; the oldest of all while the amount is open";

    private StockFigures() {}

    static List<FigureDef> all() {
        return List.of(
                atHand("stock-first", "first", FIRST),
                atHand("stock-second", "second", SECOND),
                count("can-count-first", "first", FIRST),
                count("can-count-second", "second", SECOND),
                left("stock-left-first", "first", FIRST, "need-first"),
                left("stock-left-second", "second", SECOND, "part-mass-b"),
                lacking("stock-short-first", "first", FIRST, "need-first"),
                lacking("stock-short-second", "second", SECOND, "part-mass-b"),
                figure(
                        "need-first",
                        "How much of the first can does the mix take?",
                        Dimension.MASS,
                        "the mass of the first part; of a liquid in one part, the whole mix",
                        SOURCE,
                        "one mix, weighed as planned",
                        Formula.when(
                                s -> !inOnePart(s), x -> x[0], in("part-mass-a").up()),
                        Formula.when(
                                StockFigures::inOnePart,
                                x -> x[0],
                                in("mix-mass").up())),
                figure(
                        "batch-from-stock",
                        "How much can I mix with what is at hand?",
                        Dimension.MASS,
                        "mix mass × the smaller of: first part at hand / needed, second part at hand / needed",
                        SOURCE,
                        "the same ratio; all cans of a part emptied",
                        Formula.of(
                                x -> x[0] * Math.min(x[1] / x[2], x[3] / x[4]),
                                in("mix-mass").typical(),
                                in("stock-first").up(),
                                in("need-first").typical(),
                                in("stock-second").up(),
                                in("part-mass-b").typical()),
                        Formula.of(
                                x -> x[0] * x[1] / x[2],
                                in("mix-mass").typical(),
                                in("stock-first").up(),
                                in("need-first").typical()),
                        Formula.of(
                                x -> x[0] * x[1] / x[2],
                                in("mix-mass").typical(),
                                in("stock-second").up(),
                                in("part-mass-b").typical())),
                age("opened-first", "How long has the first can been open?", FIRST, "need-first", Can::openS),
                age("opened-second", "How long has the second can been open?", SECOND, "part-mass-b", Can::openS),
                longest("opened-longest", "How long has the can that is open longest been open?", Can::openS),
                longest("bought-longest", "How long ago was the oldest can bought?", Can::boughtS),
                longest("past-date-longest", "How long is a can past its date?", Can::pastS),
                cost("cost-first", "What does the first part cost?", FIRST, "need-first"),
                cost("cost-second", "What does the second part cost?", SECOND, "part-mass-b"),
                figure(
                        "cost-of-mix",
                        "What does the mix cost?",
                        Dimension.NUMBER,
                        "first part + second part, in the money the cans are priced in; water counts nothing",
                        SOURCE,
                        "all cans priced in one money; fillers, moulds and hours not counted",
                        Formula.byWhen(
                                s -> !inOnePart(s) && !withWater(s),
                                (job, x) -> oneMoney(job, x[0] + x[1]),
                                in("cost-first").up(),
                                in("cost-second").up()),
                        Formula.when(
                                s -> inOnePart(s) || withWater(s),
                                x -> x[0],
                                in("cost-first").up())),
                figure(
                        "cost-of-part",
                        "What does the liquid in the part cost?",
                        Dimension.NUMBER,
                        "cost of the mix × the volume to fill / the volume mixed",
                        SOURCE,
                        "what fills the mould stays in the part",
                        Formula.of(
                                x -> x[0] * Math.min(1, x[1] / x[2]),
                                in("cost-of-mix").up(),
                                in("fill-volume").typical(),
                                in("mix-volume").typical())),
                figure(
                        "cost-of-waste",
                        "What does the liquid cost that stays on cup and sticks?",
                        Dimension.NUMBER,
                        "cost of the mix × (1 - the volume to fill / the volume mixed)",
                        SOURCE,
                        "what is left over is not used elsewhere",
                        Formula.of(
                                x -> x[0] * Math.max(0, 1 - x[1] / x[2]),
                                in("cost-of-mix").up(),
                                in("fill-volume").typical(),
                                in("mix-volume").typical())));
    }

    private static boolean inOnePart(Scope s) {
        return s.material() != null && s.material().mix().by().equals("none");
    }

    private static boolean withWater(Scope s) {
        return s.material() != null && s.material().mix().by().equals("water");
    }

    private static FigureDef atHand(String id, String which, String cans) {
        return figure(
                id,
                "How much of the " + which + " part is at hand?",
                Dimension.MASS,
                "what is left in all its cans together",
                SOURCE,
                "cans weighed, or used up as planned since",
                Formula.of(x -> x[0], in("typed:" + cans).up()));
    }

    private static FigureDef count(String id, String which, String cans) {
        return figure(
                id,
                "How many cans of the " + which + " part are there?",
                Dimension.NUMBER,
                "counted",
                SOURCE,
                "cans with something in them",
                Formula.by(
                        (job, x) -> job.cans(cans).size(), in("typed:" + cans).typical()));
    }

    private static FigureDef left(String id, String which, String cans, String need) {
        return figure(
                id,
                "How much of the " + which + " part is left after this mix?",
                Dimension.MASS,
                "what is at hand less what the mix takes; none when it does not suffice",
                SOURCE,
                "one mix, weighed as planned",
                Formula.of(x -> Math.max(0, x[0] - x[1]), in("typed:" + cans).up(), in(need).down()));
    }

    private static FigureDef lacking(String id, String which, String cans, String need) {
        return figure(
                id,
                "How much of the " + which + " part is missing?",
                Dimension.MASS,
                "what the mix takes less what is at hand; none when it suffices",
                SOURCE,
                "one mix, weighed as planned",
                Formula.of(x -> Math.max(0, x[1] - x[0]), in("typed:" + cans).down(), in(need).up()));
    }

    private static FigureDef age(String id, String asks, String cans, String need, Function<Can, OptionalDouble> age) {
        return figure(
                id,
                asks,
                Dimension.TIME,
                "the longest time among the cans it takes from",
                SOURCE,
                OLDEST,
                Formula.by(
                        (job, x) -> CanUse.of(job.cans(cans), x[1]).oldest(age).orElse(Double.NaN),
                        in("typed:" + cans).typical(),
                        in(need).typical()),
                Formula.by(
                        (job, x) -> unused(job, cans, age), in("typed:" + cans).typical()));
    }

    /** While nobody knows how much is taken, the can that would go first. */
    private static double unused(Scope job, String cans, Function<Can, OptionalDouble> age) {
        return CanUse.of(job.cans(cans), 0).oldest(age).orElse(Double.NaN);
    }

    /** Over both parts, whichever of them is known. */
    private static FigureDef longest(String id, String asks, Function<Can, OptionalDouble> age) {
        ToDoubleFunction<Scope> first = s -> one(s, FIRST, "need-first", age);
        ToDoubleFunction<Scope> second = s -> one(s, SECOND, "part-mass-b", age);
        return figure(
                id,
                asks,
                Dimension.TIME,
                "the longest time among the cans the mix takes from",
                SOURCE,
                OLDEST,
                Formula.by(
                        (job, x) -> longer(first.applyAsDouble(job), second.applyAsDouble(job)),
                        in("typed:" + FIRST).typical(),
                        in("typed:" + SECOND).typical()),
                Formula.by(
                        (job, x) -> first.applyAsDouble(job),
                        in("typed:" + FIRST).typical()),
                Formula.by(
                        (job, x) -> second.applyAsDouble(job),
                        in("typed:" + SECOND).typical()));
    }

    private static double one(Scope s, String cans, String need, Function<Can, OptionalDouble> age) {
        double kg = s.get(need).map(v -> v.si().typical()).orElse(0.0);
        return CanUse.of(s.cans(cans), kg).oldest(age).orElse(Double.NaN);
    }

    private static double longer(double a, double b) {
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.max(a, b);
    }

    private static FigureDef cost(String id, String asks, String cans, String need) {
        return figure(
                id,
                asks,
                Dimension.NUMBER,
                "mass taken from each can × its price for a kilogram; what is missing at the price of the last can",
                SOURCE,
                "in the money the cans are priced in; nothing is converted",
                Formula.by(
                        (job, x) -> priced(CanUse.of(job.cans(cans), x[1])),
                        in("typed:" + cans).typical(),
                        in(need)));
    }

    private static double priced(CanUse use) {
        boolean all = use.taken().stream().allMatch(t -> t.can().price().isPresent());
        return use.cost().orElseGet(() -> {
            if (all && !use.taken().isEmpty()) {
                throw new PhysicsException("The cans are priced in different money, and nothing is converted.");
            }
            return Double.NaN;
        });
    }

    private static double oneMoney(Scope job, double sum) {
        if (Money.of(job.answers()).isEmpty()) {
            throw new PhysicsException("The two parts are priced in different money, and nothing is converted.");
        }
        return sum;
    }
}
