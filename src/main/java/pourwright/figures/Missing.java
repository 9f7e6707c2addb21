package pourwright.figures;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pourwright.knowledge.Knowledge;

/**
 * Which answer a figure waits for. Ways to compute it are tried best first; one whose answer is not known gives way to the
 * next, and the class of the material stands behind what classes know.
 */
public final class Missing {
    private static final String MATERIAL = "material";

    private final Scope scope;
    private final Knowledge knowledge;
    private final Set<String> above = new HashSet<>();

    Missing(Scope scope) {
        this.scope = scope;
        this.knowledge = scope.knowledge();
    }

    /**
     * An answer that is wanted.
     *
     * @param question id of the question
     * @param path the figure asked for, and each figure on the way down to the answer
     */
    public record Wanted(String question, List<FigureDef> path) {}

    /** The first answer that would have to be given and was not; empty when no further answer could help. */
    Optional<Wanted> of(FigureDef def) {
        if (scope.failures().containsKey(def.id()) || !above.add(def.id())) {
            return Optional.empty();
        }
        try {
            for (Formula way : def.formulas()) {
                if (way.when().test(scope)) {
                    Lack lack = lack(def, way);
                    if (!lack.hopeless()) {
                        // A way that lacks nothing and yet gives nothing has failed: another answer would not mend it.
                        return Optional.ofNullable(lack.first());
                    }
                }
            }
            return locked(def);
        } finally {
            above.remove(def.id());
        }
    }

    /** A way that would fit if a choice were made which nobody has made yet. */
    private Optional<Wanted> locked(FigureDef def) {
        for (Formula way : def.formulas()) {
            List<String> looked = new ArrayList<>();
            boolean fits = scope.watching(looked, () -> way.when().test(scope));
            if (!fits && !lack(def, way).hopeless()) {
                Optional<String> choice = looked.stream().filter(this::askable).findFirst();
                if (choice.isPresent()) {
                    return Optional.of(new Wanted(choice.get(), List.of(def)));
                }
            }
        }
        return Optional.empty();
    }

    /**
     * What a way of computing lacks.
     *
     * @param hopeless whether something is lacking that no answer can bring
     * @param first the first answer that is lacking, or null
     */
    private record Lack(boolean hopeless, Wanted first) {}

    private Lack lack(FigureDef def, Formula way) {
        Wanted first = null;
        for (Input i : way.inputs()) {
            if (i.neutral() == null && scope.get(i.name()).isEmpty()) {
                Optional<Wanted> wanted = wanted(def, i.name());
                if (wanted.isEmpty()) {
                    return new Lack(true, null);
                }
                first = first == null ? wanted.get() : first;
            }
        }
        return new Lack(false, first);
    }

    private Optional<Wanted> wanted(FigureDef def, String input) {
        int colon = input.indexOf(':');
        String kind = colon < 0 ? "" : input.substring(0, colon);
        String plain = input.substring(colon + 1);
        Optional<String> id = switch (kind) {
            case "typed" -> Optional.of(plain).filter(this::askable);
            case "kind" -> Optional.of("pump-kind").filter(this::askable);
            case "ratio" -> Optional.of("mix-ratio").filter(this::askable).or(this::material);
            case "raw" -> plain(plain);
            default -> FigureBook.get(plain).isPresent() ? Optional.empty() : plain(plain);
        };
        if (kind.isEmpty() && FigureBook.get(plain).isPresent()) {
            return of(FigureBook.get(plain).get()).map(w -> {
                List<FigureDef> path = new ArrayList<>(List.of(def));
                path.addAll(w.path());
                return new Wanted(w.question(), List.copyOf(path));
            });
        }
        return id.map(q -> new Wanted(q, List.of(def)));
    }

    /** The question of that name, or the material, when classes know the value. */
    private Optional<String> plain(String name) {
        if (askable(name)) {
            return Optional.of(name);
        }
        boolean ofClass =
                knowledge.materials().values().stream().anyMatch(m -> m.values().containsKey(name));
        return ofClass ? material() : Optional.empty();
    }

    private Optional<String> material() {
        return Optional.of(MATERIAL).filter(this::askable);
    }

    private boolean askable(String id) {
        return knowledge.question(id).isPresent() && !scope.answers().has(id);
    }
}
