package pourwright.diagnosis;

import java.util.List;

/** The belief as it would be had one question not been answered. */
final class Without {
    private Without() {}

    static Belief question(String id, State s) {
        if (s.answers().choices(id).isEmpty()) {
            return s.belief();
        }
        List<Evidence> rest =
                s.evidence().stream().filter(e -> !e.question().equals(id)).toList();
        return s.belief().anew(rest);
    }
}
