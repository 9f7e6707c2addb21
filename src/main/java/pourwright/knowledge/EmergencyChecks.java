package pourwright.knowledge;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** What the schema of the emergencies cannot say. That steps and title fit their lines, it does say. */
final class EmergencyChecks {
    private static final int COLUMNS = 80;

    private final List<Emergency> all;

    EmergencyChecks(List<Emergency> all) {
        this.all = all;
    }

    /** @throws KnowledgeFault for the first entry that does not hold */
    void check() {
        Set<String> ids = new HashSet<>();
        Map<String, String> words = new HashMap<>();
        Emergency.Danger worst = Emergency.Danger.PEOPLE;
        for (Emergency e : all) {
            require(ids.add(e.id()), e, "it stands twice");
            require(e.closing().length() <= COLUMNS, e, "line and defers together are longer than " + COLUMNS);
            require(e.danger().compareTo(worst) >= 0, e, "danger to people stands before danger to the part");
            worst = e.danger();
            for (String said : e.says()) {
                String other = words.putIfAbsent(said.toLowerCase(Locale.ROOT), e.id());
                require(other == null, e, "'" + said + "' is also said for " + other);
            }
        }
    }

    private static void require(boolean holds, Emergency e, String otherwise) {
        if (!holds) {
            throw new KnowledgeFault("emergencies.json, '" + e.id() + "': " + otherwise);
        }
    }
}
