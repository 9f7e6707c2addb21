package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The test a blind user gave: spaces collapsed to one, no colour, one character at a time, everything at the end of what
 * was shown before. What can still be done so can be done with a screen reader.
 */
class TeletypeTest {
    private static final Pattern CHOICE = Pattern.compile(" (\\d+)\\. [^\\[\\]]* \\[([a-z0-9-]+)\\]");

    @TempDir
    private Path home;

    /** R14, R17, R19: a plan to its end, by a dumb terminal and by {@code --plain}. */
    @ParameterizedTest
    @CsvSource({"dumb, false", "xterm-256color, true"})
    void aPlanIsMadeFromCollapsedLinesAlone(String term, boolean plain) {
        String[] words = plain ? new String[] {"plan", "--plain"} : new String[] {"plan"};
        try (Rig rig =
                Rig.in(home).with("TERM", term).with("NO_COLOR", "1").keyByKey().run(words)) {
            String heard = rig.opening();
            int byNumber = 0;
            String id = rig.prompt();
            while (!id.equals("review")) {
                String wanted = Typist.JOB.getOrDefault(id, "don't know");
                String number = number(heard, wanted);
                byNumber += number.isEmpty() ? 0 : 1;
                heard = rig.said(number.isEmpty() ? wanted : number);
                id = rig.prompt();
            }
            assertThat(byNumber).as("choices found by the number read out").isGreaterThan(2);
            List<String> page = rig.reply("");
            String result = Rig.collapsed(page);
            assertThat(result).matches("(GO|CHANGE|STOP)\\b.*").contains("Mix: ", "Next: ");
            List<String> facts = new ArrayList<>(page);
            for (String word : List.of("more", "cautions", "how 1", "answers")) {
                facts.addAll(rig.reply(word));
            }
            columnless(facts);
            List<String> times = page.stream()
                    .filter(l -> l.matches("-?\\d+(?::\\d\\d| min| h(?: \\d\\d min)?| d|\\.\\d h)?: \\S.*"))
                    .toList();
            assertThat(times).as("the timetable, \"time: what to do\" a line").hasSizeGreaterThan(5);
            rig.reply("quit");
            assertThat(rig.exit()).isIn(0, 1);
            assertThat(rig.raw()).as("not one control sequence").doesNotContain("\u001b", "\b", "\u0007");
            assertThat(rig.raw()).doesNotContainPattern("\r[^\r\n]");
        }
    }

    /** R17: a diagnosis from one spoken line to the cause, its test and its repair. */
    @Test
    void aDiagnosisIsMadeFromCollapsedLinesAlone() {
        try (Rig rig = Rig.in(home).with("TERM", "dumb").keyByKey().run("diagnose")) {
            rig.opening();
            rig.reply("round bubbles all through the casting, the left-over in the cup is bubbly too");
            assertThat(rig.prompt()).isEqualTo("right");
            String heard = rig.said("yes");
            String id = rig.prompt();
            while (!id.equals("review")) {
                Matcher m = CHOICE.matcher(heard);
                heard = rig.said(id.equals("material") ? "clear polyurethane" : m.find() ? m.group(1) : "don't know");
                id = rig.prompt();
            }
            List<String> page = rig.reply("");
            assertThat(Rig.collapsed(page)).contains("[1] ", "Test next: ", "Now: ", "Next: ");
            List<String> facts = new ArrayList<>(page);
            facts.addAll(rig.reply("how 1"));
            facts.addAll(rig.reply("causes"));
            columnless(facts);
            rig.reply("quit");
            assertThat(rig.exit()).isEqualTo(0);
            assertThat(rig.raw()).doesNotContain("\u001b", "\b");
        }
    }

    /** The number that was read out before a choice; nothing when it was not among them. */
    private static String number(String heard, String choice) {
        Matcher m = CHOICE.matcher(heard);
        while (m.find()) {
            if (m.group(2).equals(choice)) {
                return m.group(1);
            }
        }
        return "";
    }

    /** No line needs its place on the screen: beyond its beginning, no two spaces stand together. */
    private static void columnless(List<String> lines) {
        assertThat(lines.stream().filter(l -> l.strip().contains("  "))).isEmpty();
    }
}
