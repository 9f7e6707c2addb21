package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing answered is ever lost, and every answer can be had again. */
class BackAndReviewTest {
    private static final Map<String, String> JOB = Typist.JOB;
    private static final int DEEP = 14;

    @TempDir
    private Path home;

    /** R1, R2: from quantities and choices alike, to the very first question, and Enter all the way forward. */
    @Test
    void backReachesEveryEarlierAnswerAndOffersItInTheSameText() {
        try (Rig rig = Rig.in(home).run("plan")) {
            Map<String, String> offered = new LinkedHashMap<>();
            for (int i = 0; i < DEEP; i++) {
                String id = rig.prompt();
                String typed = JOB.getOrDefault(id, "don't know");
                rig.reply(typed);
                offered.put(id, typed);
            }
            String next = rig.prompt();
            List<String> answers = rig.reply("answers");
            List<String> order = new ArrayList<>(offered.keySet());
            Collections.reverse(order);
            for (String id : order) {
                String said = rig.said("back");
                assertThat(rig.prompt()).as("one question back").isEqualTo(id);
                assertThat(said).as(id).contains("(Enter = " + offered.get(id) + ")");
            }
            assertThat(offered.values()).as("don't know counts as an answer").contains("don't know");
            assertThat(rig.said("back")).contains("This is the first question.");
            for (int i = 0; i < DEEP; i++) {
                rig.reply("");
            }
            assertThat(rig.prompt()).isEqualTo(next);
            assertThat(rig.reply("answers")).isEqualTo(answers);
            rig.reply("quit");
            assertThat(rig.exit()).isEqualTo(4);
        }
    }

    /** R1, R3: the page before the result; any answer changes, none is lost, and what no longer matters is named. */
    @Test
    void theReviewPageChangesAnyOneAnswerAndKeepsTheRest() {
        try (Rig rig = Rig.in(home).run("plan")) {
            Typist.untilReview(rig, JOB);
            List<String> before = numbered(rig.reply("answers"));
            assertThat(before).hasSizeGreaterThan(15);
            int kit = place(before, "kit");
            assertThat(rig.said("change " + kit)).contains("(Enter = vacuum)");
            assertThat(rig.prompt()).isEqualTo("kit");
            String said = rig.said("neither");
            assertThat(said).contains("No longer asked for with this change, but kept: ");
            assertThat(said).containsPattern("kept: [^.]*chamber-volume");
            while (!rig.prompt().equals("review")) {
                rig.reply("don't know");
            }
            List<String> after = numbered(rig.reply("answers"));
            List<String> lost = new ArrayList<>(before);
            lost.removeAll(after);
            assertThat(lost).as("only the changed line is another").hasSize(1);
            assertThat(lost.get(0)).contains("kit: ");
            for (String every : List.of("1", Integer.toString(after.size()))) {
                rig.reply("change " + every);
                rig.reply("back");
                assertThat(rig.prompt()).as("back leaves it as it was").isEqualTo("review");
            }
            assertThat(rig.said("99")).contains("Say which answer");
            assertThat(numbered(rig.reply("answers"))).isEqualTo(after);
            assertThat(rig.said("")).containsPattern("^(GO|CHANGE|STOP)\\b");
            assertThat(rig.prompt()).isEqualTo("plan");
            rig.reply("quit");
            assertThat(rig.exit()).isIn(0, 1);
        }
    }

    /** Numbered answers, one each, without the number, which a change may move. */
    private static List<String> numbered(List<String> lines) {
        List<String> out = new ArrayList<>();
        for (String line : lines) {
            if (line.matches("\\d+\\. .*")) {
                out.add(line.replaceFirst("^\\d+\\. ", ""));
            }
        }
        return out;
    }

    private static int place(List<String> answers, String id) {
        for (int i = 0; i < answers.size(); i++) {
            if (answers.get(i).startsWith(id + ": ")) {
                return i + 1;
            }
        }
        throw new AssertionError("no answer to " + id + " in " + answers);
    }
}
