package pourwright.casebook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import pourwright.knowledge.Json;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Lessons;
import pourwright.teach.Progress;

/** The course and who has mastered what, as JSON. */
public final class LearnJson {
    private LearnJson() {}

    /** The lessons in their order. */
    public static ObjectNode course(Lessons course) {
        ObjectNode out = Json.object();
        ArrayNode lessons = out.putArray("lessons");
        for (Lesson l : course.lessons()) {
            ObjectNode one = lessons.addObject();
            one.put("id", l.id());
            one.put("order", l.order());
            one.put("title", l.title());
            texts(one, "says", l.says());
            texts(one, "terms", l.terms());
            texts(one, "misconceptions", l.misconceptions());
            texts(one, "rules", l.rules());
            texts(one, "sources", l.sources());
        }
        return out;
    }

    /** Each person's standing in each lesson, and what the replies showed to be believed. */
    public static ObjectNode progress(List<Progress> all, Lessons course, int run) {
        ObjectNode out = Json.object();
        ArrayNode people = out.putArray("people");
        for (Progress p : all) {
            ObjectNode one = people.addObject();
            one.put("name", p.name());
            ObjectNode lessons = one.putObject("lessons");
            for (Lesson l : course.lessons()) {
                ObjectNode standing = lessons.putObject(l.id());
                standing.put(
                        "standing",
                        p.standing(l, run).name().toLowerCase(Locale.ROOT).replace('_', '-'));
                standing.put("right-in-a-row", p.run(l));
                standing.put("exercises", p.exercises(l.id()).size());
            }
            one.put(
                    "unaided-right",
                    p.events().stream().filter(e -> e.unaided() && e.right()).count());
            one.put(
                    "unaided",
                    p.events().stream().filter(Progress.Event::unaided).count());
            ObjectNode beliefs = one.putObject("misconceptions");
            p.beliefs().forEach((id, b) -> {
                ObjectNode belief = beliefs.putObject(id);
                belief.put("times", b.times());
                belief.put("last", b.last());
            });
        }
        return out;
    }

    private static void texts(ObjectNode out, String name, List<String> texts) {
        ArrayNode array = out.putArray(name);
        texts.forEach(array::add);
    }
}
