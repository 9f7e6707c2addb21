package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Line in, line out: what is on the screen stays there, in one colour, for a screen reader as for anybody. */
class NothingIsRedrawnTest {
    /**
     * What may reach a terminal beside text while lines are typed without correcting them. All of it sets what keys send;
     * none of it moves the cursor, colours or clears anything.
     */
    private static final Set<String> MODES = Set.of(
            "\u001b[?1h", // arrow keys send their second form, and back
            "\u001b[?1l",
            "\u001b=", // so does the number pad, and back
            "\u001b>",
            "\u001b[?2004l", // pasted text comes without marks
            "\u001b[?1000l", // no mouse, of any kind
            "\u001b[?1002l",
            "\u001b[?1003l",
            "\u001b[?1005l",
            "\u001b[?1006l",
            "\u001b[?1015l",
            "\u001b[?1016l");

    /** While one line is edited: steps inside that line, and what is cut from or put into it. */
    private static final Pattern IN_LINE = Pattern.compile("\u001b\\[\\d*[CDKP@X]");

    private static final Pattern SEQUENCE = Pattern.compile("\u001b(?:\\[[0-?]*[ -/]*[@-~]|[^\\[])");

    @TempDir
    private Path home;

    private static Set<String> sequences(String raw) {
        Set<String> found = new TreeSet<>();
        Matcher m = SEQUENCE.matcher(raw);
        while (m.find()) {
            found.add(m.group());
        }
        found.removeAll(MODES);
        return found;
    }

    /** R14, R16, R18: a whole plan, with every word that shows something. */
    @Test
    void aWholeConversationMovesNoCursorAndHasNoColour() {
        try (Rig rig = Rig.in(home).run("plan")) {
            rig.reply("help");
            rig.reply("why");
            rig.reply("nonsense");
            Typist.untilResult(rig, Typist.JOB);
            for (String word :
                    List.of("more", "cautions", "how 1", "figures", "rules", "sources", "answers", "again")) {
                rig.reply(word);
            }
            rig.reply("quit");
            rig.exit();
            String raw = rig.raw();
            assertThat(readable(sequences(raw))).isEmpty();
            assertThat(raw).as("a line is never written over").doesNotContainPattern("\r[^\r\n]");
            assertThat(raw).doesNotContain("\b", "\u0007");
            assertThat(rig.screen())
                    .as("no boxes, blocks or arrows")
                    .doesNotContainPattern("[\u2190-\u21ff\u2500-\u27bf]");
        }
    }

    /** R18: nor with NO_COLOR, in a diagnosis. */
    @Test
    void noColourIsAskedForAndNoneIsShown() {
        try (Rig rig = Rig.in(home).with("NO_COLOR", "1").run("diagnose")) {
            rig.reply("tiny bubbles under the horns");
            rig.reply("");
            rig.reply("clear polyurethane");
            rig.reply("enough");
            rig.reply("how 1");
            rig.reply("quit");
            assertThat(rig.exit()).isEqualTo(0);
            assertThat(readable(sequences(rig.raw()))).isEmpty();
        }
    }

    /** R18: where the language settings name no Unicode, everything is spelled with plain characters. */
    @Test
    void aTerminalWithoutUnicodeGetsPlainCharacters() {
        try (Rig rig = Rig.in(home).with("LANG", "C").columns(40).run("plan", "material=tin-silicone")) {
            List<String> lines = new java.util.ArrayList<>(rig.reply("help"));
            lines.addAll(rig.reply("enough"));
            lines.addAll(rig.reply("more"));
            lines.addAll(rig.reply("figures"));
            rig.reply("quit");
            rig.exit();
            assertThat(rig.raw()).matches("(?s)[\\x00-\\x7f]*").contains(" Pa.s", "deg C");
            assertThat(lines).allMatch(l -> l.length() <= 40 || !l.strip().contains(" "));
        }
    }

    /** R14: corrections stay inside their line, Tab opens no menu and no list, arrow keys bring back lines, no more. */
    @Test
    void correctingALineAndTabStayInsideTheLine() {
        try (Rig rig = Rig.in(home).run("plan")) {
            rig.prompt();
            rig.type("\t\t\t\t");
            rig.type("tim\u007fn-silicone");
            assertThat(Rig.collapsed(rig.enter())).contains("= tin silicone");
            String before = rig.screen();
            rig.type("c\t\t\t");
            rig.waitFor("job > c");
            assertThat(rig.screen().substring(before.length()))
                    .as("no list of words")
                    .isEqualTo("c");
            rig.type("\u007f");
            // Left, left, "m", end: "ebed" becomes "embed". One terminal sends its arrow keys thus, another otherwise.
            rig.type("ebed\u001bOD\u001bOD\u001b[Dm");
            rig.enter();
            assertThat(rig.reply("answers")).anyMatch(l -> l.equals("2. job: cast clear resin around an object"));
            rig.reply("back");
            assertThat(rig.prompt()).isEqualTo("job");
            // Up three times: "back", "answers", the line that was mended.
            rig.type("\u001b[A\u001bOA\u001b[A");
            rig.enter();
            assertThat(rig.prompt()).isNotEqualTo("job");
            rig.reply("quit");
            rig.exit();
            Set<String> others = sequences(rig.raw());
            others.removeIf(s -> IN_LINE.matcher(s).matches());
            assertThat(readable(others)).isEmpty();
        }
    }

    private static List<String> readable(Set<String> sequences) {
        return sequences.stream().map(s -> s.replace("\u001b", "ESC")).toList();
    }
}
