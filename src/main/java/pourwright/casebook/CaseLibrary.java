package pourwright.casebook;

import java.nio.file.Path;
import java.util.List;
import pourwright.knowledge.Knowledge;
import pourwright.teach.Told;

/** The cases that exercises are drawn from: those that came with the program, and the workshop's own. */
public final class CaseLibrary {
    private CaseLibrary() {}

    /**
     * The plans and diagnoses of a folder, by name. A file that cannot be used teaches nothing and is passed over.
     *
     * @param knowledge with the questions of a diagnosis
     * @param own true for the workshop's own cases
     */
    public static List<Told> read(Path folder, Knowledge knowledge, boolean own) {
        return SavedCases.in(folder, own, knowledge).stream()
                .filter(s -> s.word().equals("plan") || s.word().equals("diagnose"))
                .flatMap(s -> s.read().stream().map(c -> new Told(s.name(), s.word(), c.answers(), own)))
                .toList();
    }
}
