package pourwright.figures;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Basis;
import pourwright.facts.Estimate;
import pourwright.knowledge.ClassValues;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.PumpKind;
import pourwright.knowledge.Question;
import pourwright.knowledge.Value;
import pourwright.physics.PhysicsException;
import pourwright.stock.Can;
import pourwright.stock.Cans;
import pourwright.units.Dimension;

/**
 * The figures of one job: resolves names to answers, class values, defaults and other figures, each computed once, and
 * carries ranges through. Used for one consultation and thrown away.
 */
public final class Scope {
    private final Answers answers;
    private final Knowledge knowledge;
    private final MaterialClass material;
    private final boolean assume;
    private final Map<String, Optional<FigureValue>> known = new HashMap<>();
    private final Set<String> underWay = new HashSet<>();
    private final Set<String> assumed = new TreeSet<>();
    private final Set<String> neutral = new TreeSet<>();
    private final Map<String, String> failures = new TreeMap<>();
    private final Map<Object, Object> memo = new HashMap<>();
    private List<String> looked;

    /**
     * @param answers what was said
     * @param knowledge what is known
     * @param assume true to fall back on a question's stated default, as a plan does; false for a figure on its own
     */
    public Scope(Answers answers, Knowledge knowledge, boolean assume) {
        this.answers = answers;
        this.knowledge = knowledge;
        this.assume = assume;
        this.material = knowledge.materials().get(answers.choice("material"));
    }

    /** The material class, or null when none was named. */
    public MaterialClass material() {
        look("material");
        return material;
    }

    /** The id of the choice made for a question, or an empty string. */
    public String choice(String question) {
        look(question);
        return answers.choice(question);
    }

    private void look(String question) {
        if (looked != null) {
            looked.add(question);
        }
    }

    /** Tests a condition and notes which choices it looked at. */
    boolean watching(List<String> seen, BooleanSupplier condition) {
        looked = seen;
        try {
            return condition.getAsBoolean();
        } finally {
            looked = null;
        }
    }

    /** True in a plan, where a stated default may stand in for an answer. */
    boolean assumes() {
        return assume;
    }

    /** Traits of the material; none when no material was named. */
    public Set<String> traits() {
        look("material");
        return material == null ? Set.of() : material.traits();
    }

    boolean hasTrait(String trait) {
        look("material");
        return material != null && material.traits().contains(trait);
    }

    Answers answers() {
        return answers;
    }

    Knowledge knowledge() {
        return knowledge;
    }

    double guideline(String name) {
        return knowledge.guidelineSi(name);
    }

    /** Ids of questions whose class range or stated default stood in for an answer, so far. */
    public Set<String> assumed() {
        return Collections.unmodifiableSet(assumed);
    }

    /** Names of inputs nobody gave for which a formula's stand-in (usually none) was taken, so far. */
    public Set<String> neutral() {
        return Collections.unmodifiableSet(neutral);
    }

    /** The first answer that would have to be given for a figure and was not; empty when no answer could help. */
    public Optional<Missing.Wanted> firstMissing(FigureDef def) {
        return get(def.id()).isPresent() ? Optional.empty() : new Missing(this).of(def);
    }

    /** Figures that could not be computed although their inputs were there, with the reason. */
    public Map<String, String> failures() {
        return Collections.unmodifiableMap(failures);
    }

    /** Computes once per key; figures that share costly work use it. */
    @SuppressWarnings("unchecked")
    <T> T once(Object key, Supplier<T> make) {
        Object done = memo.get(key);
        if (done == null) {
            done = make.get();
            memo.put(key, done);
        }
        return (T) done;
    }

    /** Puts in a value computed outside, such as the minute of the pour from the timetable. */
    public void put(FigureValue value) {
        known.put(value.id(), Optional.of(value));
    }

    /** Every figure and quantity that can be had for this job, by id. */
    public Map<String, FigureValue> all() {
        Map<String, FigureValue> all = new LinkedHashMap<>();
        for (String id : FigureBook.ids()) {
            get(id).ifPresent(v -> all.put(id, v));
        }
        for (Question q : knowledge.questions()) {
            if (q.kind().equals("quantity") && !all.containsKey(q.id())) {
                get(q.id()).ifPresent(v -> all.put(q.id(), v));
            }
        }
        if (material != null) {
            for (String name : material.values().keySet()) {
                if (!all.containsKey(name)) {
                    get(name).ifPresent(v -> all.put(name, v));
                }
            }
        }
        all.putAll(extra());
        return all;
    }

    private Map<String, FigureValue> extra() {
        Map<String, FigureValue> extra = new TreeMap<>();
        known.forEach((id, v) -> v.filter(x -> !id.contains(":")).ifPresent(x -> extra.put(id, x)));
        return extra;
    }

    /** A figure or quantity by name, if it can be had. */
    public Optional<FigureValue> get(String name) {
        Optional<FigureValue> done = known.get(name);
        if (done != null) {
            return done;
        }
        if (!underWay.add(name)) {
            throw new IllegalStateException("the figure '" + name + "' needs itself");
        }
        try {
            Optional<FigureValue> value = find(name);
            known.put(name, value);
            return value;
        } finally {
            underWay.remove(name);
        }
    }

    private Optional<FigureValue> find(String name) {
        if (name.startsWith("guide:")) {
            Estimate value = Estimate.exactly(guideline(name.substring("guide:".length())));
            return Optional.of(plain(name, Dimension.NUMBER, value, Basis.TYPED, new TreeSet<>()));
        }
        if (name.startsWith("guides:")) {
            String[] g = name.substring("guides:".length()).split(",");
            Estimate range = new Estimate(orNone(g[0]), orNone(g[1]), orNone(g[2]));
            return Optional.of(plain(name, Dimension.NUMBER, range, Basis.CLASS, new TreeSet<>()));
        }
        if (name.startsWith("error:")) {
            double most = guideline(name.substring("error:".length()));
            return Optional.of(
                    plain(name, Dimension.NUMBER, new Estimate(-most, 0, most), Basis.TYPED, new TreeSet<>()));
        }
        if (name.startsWith("typed:")) {
            return typed(name.substring("typed:".length()));
        }
        if (name.startsWith("ratio:")) {
            return ratio(name.endsWith("first"));
        }
        if (name.startsWith("kind:")) {
            return ofPumpKind(name.substring("kind:".length()));
        }
        if (name.startsWith("raw:")) {
            return raw(name.substring("raw:".length()));
        }
        Optional<FigureDef> def = FigureBook.get(name);
        return def.isPresent() ? computed(def.get()) : raw(name);
    }

    private double orNone(String guideline) {
        return guideline.equals("none") ? 0 : guideline(guideline);
    }

    private Optional<FigureValue> typed(String id) {
        if (answers.get(id).orElse(null) instanceof Answer.Quantity q) {
            Dimension d = dimension(id);
            return Optional.of(plain(id, d, q.si(), Basis.TYPED, new TreeSet<>(Set.of(id))));
        }
        if (knowledge.question(id).filter(q -> q.kind().equals("cans")).isPresent()
                && !answers.text(id).isEmpty()) {
            double kg = cans(id).stream().mapToDouble(Can::massKg).sum();
            return Optional.of(plain(id, Dimension.MASS, Estimate.exactly(kg), Basis.TYPED, new TreeSet<>(Set.of(id))));
        }
        return Optional.empty();
    }

    /** The cans an answer names; none when it was not given. */
    List<Can> cans(String question) {
        String text = answers.text(question);
        return text.isEmpty() ? List.of() : once("cans " + question, () -> Cans.read(text));
    }

    /** Whether the ratio in force is by {@code weight} or by {@code volume}; empty when there is none or nobody said. */
    String ratioBy() {
        look("mix-ratio");
        Optional<Answer> typed = answers.get("mix-ratio");
        if (typed.isPresent() && typed.get() instanceof Answer.Ratio r && !r.by().isEmpty()) {
            return r.by();
        }
        String said = choice("ratio-by");
        if (!said.isEmpty()) {
            return said;
        }
        String usual = material == null ? "" : material.mix().by();
        look("material");
        return switch (usual) {
            case "volume" -> "volume";
            case "mass", "either", "water" -> "weight";
            default -> typed.isPresent() ? "weight" : "";
        };
    }

    private Optional<FigureValue> ratio(boolean first) {
        String name = first ? "ratio:first" : "ratio:second";
        if (answers.get("mix-ratio").orElse(null) instanceof Answer.Ratio r) {
            return Optional.of(plain(
                    name,
                    Dimension.NUMBER,
                    Estimate.exactly(first != waterFirst() ? r.first() : r.second()),
                    Basis.TYPED,
                    new TreeSet<>(Set.of("mix-ratio"))));
        }
        if (material == null || material.mix().first() == null) {
            return Optional.empty();
        }
        assumed.add("mix-ratio");
        MaterialClass.Span s = material.mix().second();
        Estimate parts =
                first ? Estimate.exactly(material.mix().first()) : new Estimate(s.low(), s.typical(), s.high());
        return Optional.of(plain(name, Dimension.NUMBER, parts, Basis.CLASS, new TreeSet<>(Set.of("material"))));
    }

    /** Water-mixed classes are spoken of as water to powder, and weighed powder first. */
    private boolean waterFirst() {
        return material != null && material.mix().by().equals("water");
    }

    private Optional<FigureValue> ofPumpKind(String id) {
        PumpKind kind = knowledge.pumps().get(choice("pump-kind"));
        if (kind == null) {
            return Optional.empty();
        }
        Dimension d = dimension(id);
        Value v = id.equals("pump-speed") ? kind.speed() : kind.ultimate();
        return Optional.of(plain(id, d, v.si(d), Basis.CLASS, new TreeSet<>(Set.of("pump-kind"))));
    }

    private Optional<FigureValue> raw(String id) {
        Optional<FigureValue> typed = typed(id);
        if (typed.isPresent()) {
            return typed;
        }
        if (material != null && material.values().containsKey(id)) {
            Value v = material.values().get(id);
            Dimension d = ClassValues.dimension(id);
            if (v.basis() == Basis.CLASS && knowledge.question(id).isPresent()) {
                assumed.add(id);
            }
            return Optional.of(plain(id, d, v.si(d), v.basis(), new TreeSet<>(Set.of("material"))));
        }
        if (assume) {
            Optional<Question> q = knowledge.question(id).filter(x -> x.unknown() != null);
            if (q.isPresent()) {
                Dimension d = dimension(id);
                assumed.add(id);
                Question.Fallback f = q.get().unknown();
                Value v =
                        new Value(f.low(), f.typical(), f.high(), q.get().unit(), f.source(), f.note(), Basis.ASSUMED);
                return Optional.of(plain(id, d, v.si(d), Basis.ASSUMED, new TreeSet<>(Set.of(id))));
            }
        }
        return Optional.empty();
    }

    private Dimension dimension(String id) {
        return knowledge
                .question(id)
                .filter(q -> q.quantity() != null)
                .map(q -> Dimension.named(q.quantity()))
                .orElse(Dimension.NUMBER);
    }

    private static FigureValue plain(String id, Dimension d, Estimate si, Basis basis, SortedSet<String> from) {
        return FigureValue.plain(id, d, si, basis, from);
    }

    private Optional<FigureValue> computed(FigureDef def) {
        for (Formula way : def.formulas()) {
            if (!way.when().test(this)) {
                continue;
            }
            Optional<List<FigureValue>> inputs = inputs(way);
            if (inputs.isPresent()) {
                return evaluate(def, way, inputs.get());
            }
        }
        return Optional.empty();
    }

    private Optional<List<FigureValue>> inputs(Formula way) {
        List<FigureValue> found = new ArrayList<>();
        for (Input i : way.inputs()) {
            Optional<FigureValue> v = get(i.name());
            if (v.isEmpty() && i.neutral() != null) {
                neutral.add(i.name().substring(i.name().indexOf(':') + 1));
                v = Optional.of(
                        plain(i.name(), Dimension.NUMBER, Estimate.exactly(i.neutral()), Basis.TYPED, new TreeSet<>()));
            }
            if (v.isEmpty()) {
                return Optional.empty();
            }
            found.add(v.get());
        }
        return Optional.of(found);
    }

    private Optional<FigureValue> evaluate(FigureDef def, Formula way, List<FigureValue> inputs) {
        int n = inputs.size();
        double[] typical = new double[n];
        for (int i = 0; i < n; i++) {
            typical[i] = inputs.get(i).si().typical();
        }
        double middle;
        try {
            middle = way.of().apply(this, typical);
        } catch (PhysicsException e) {
            failures.put(def.id(), e.getMessage());
            return Optional.empty();
        }
        if (Double.isNaN(middle)) {
            return Optional.empty();
        }
        Spread spread = new Spread(this, way, inputs, typical, middle);
        OwnCorrection own = OwnCorrection.of(def.id(), spread.range(), this);
        Estimate si = own.si();
        SortedSet<String> from = new TreeSet<>();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            from.addAll(inputs.get(i).answers());
            names.add(way.inputs().get(i).name());
        }
        return Optional.of(new FigureValue(
                def.id(),
                def.dimension(),
                si,
                from,
                spread.caveat(),
                def,
                List.copyOf(names),
                spread::sensitivity,
                () -> def.holds().broken(this, si),
                spread::lever,
                own.runs(),
                own.factor()));
    }

    /** The change, as a share, by which inputs are compared. */
    private static final double SMALL_CHANGE = 0.01;

    /** Carries the inputs' ranges through a formula: exact where the formula is monotone in each input. */
    private static final class Spread {
        private final Scope scope;
        private final Formula way;
        private final List<FigureValue> inputs;
        private final double[] typical;
        private final double middle;
        private String caveat;

        Spread(Scope scope, Formula way, List<FigureValue> inputs, double[] typical, double middle) {
            this.scope = scope;
            this.way = way;
            this.inputs = inputs;
            this.typical = typical;
            this.middle = middle;
        }

        Estimate range() {
            double[] low = typical.clone();
            double[] high = typical.clone();
            List<Integer> free = new ArrayList<>();
            boolean any = false;
            for (int i = 0; i < inputs.size(); i++) {
                Estimate e = inputs.get(i).si();
                if (e.exact()) {
                    continue;
                }
                any = true;
                switch (way.inputs().get(i).direction()) {
                    case UP -> {
                        low[i] = e.low();
                        high[i] = e.high();
                    }
                    case DOWN -> {
                        low[i] = e.high();
                        high[i] = e.low();
                    }
                    case FREE -> free.add(i);
                    case TYPICAL ->
                        caveat = "the range of " + way.inputs().get(i).name() + " is left out here";
                }
            }
            if (!any) {
                return Estimate.exactly(middle);
            }
            double least = middle;
            double most = middle;
            // Inputs whose direction depends on the others are tried at both ends, together.
            for (int ends = 0; ends < 1 << free.size(); ends++) {
                for (int f = 0; f < free.size(); f++) {
                    Estimate e = inputs.get(free.get(f)).si();
                    double end = (ends >> f & 1) == 0 ? e.low() : e.high();
                    low[free.get(f)] = end;
                    high[free.get(f)] = end;
                }
                least = Math.min(least, corner(low));
                most = Math.max(most, corner(high));
            }
            return new Estimate(least, middle, most);
        }

        private double corner(double[] x) {
            try {
                double y = way.of().apply(scope, x);
                if (!Double.isNaN(y)) {
                    return y;
                }
                caveat = "at one end of the inputs' ranges this figure does not exist";
            } catch (PhysicsException e) {
                caveat = "one end of the range lies outside the formula: " + e.getMessage();
            }
            return middle;
        }

        private double at(int i, double value) {
            double[] x = typical.clone();
            x[i] = value;
            return corner(x);
        }

        String caveat() {
            return caveat;
        }

        /** The input whose range moves the result most, and how well it is known. */
        FigureValue.Sensitivity sensitivity() {
            int widest = widest();
            if (widest >= 0) {
                FigureValue v = inputs.get(widest);
                String name = way.inputs().get(widest).name();
                String deeper = v.dependsOnMost();
                String input = deeper.isEmpty() ? name.substring(name.indexOf(':') + 1) : deeper;
                return new FigureValue.Sensitivity(v.basis(), input);
            }
            Basis weakest = Basis.TYPED;
            for (FigureValue v : inputs) {
                weakest = weakest.weaker(v.basis());
            }
            return new FigureValue.Sensitivity(weakest, "");
        }

        /** The input, of those a person can change, whose small change moves the result most. */
        String lever() {
            String strongest = "";
            double most = 0;
            for (int i = 0; i < inputs.size(); i++) {
                String name = way.inputs().get(i).name();
                double moved = Math.abs(at(i, typical[i] * (1 + SMALL_CHANGE)) - middle);
                if (moved > most && !name.startsWith("guide")) {
                    most = moved;
                    String deeper = inputs.get(i).strongest();
                    strongest = deeper.isEmpty() ? name.substring(name.indexOf(':') + 1) : deeper;
                }
            }
            return strongest;
        }

        private int widest() {
            int widest = -1;
            int ranged = 0;
            for (int i = 0; i < inputs.size(); i++) {
                if (!inputs.get(i).si().exact()) {
                    ranged++;
                    widest = i;
                }
            }
            if (ranged < 2) {
                return widest;
            }
            double most = -1;
            for (int i = 0; i < inputs.size(); i++) {
                Estimate e = inputs.get(i).si();
                if (!e.exact()) {
                    double swing = Math.abs(at(i, e.high()) - at(i, e.low()));
                    if (swing > most || Double.isNaN(swing)) {
                        most = swing;
                        widest = i;
                    }
                }
            }
            return widest;
        }
    }
}
