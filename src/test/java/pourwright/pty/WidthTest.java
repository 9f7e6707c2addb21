package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Question;

/** Narrow or wide, the same words: nothing is lost, nothing is broken that belongs together. */
class WidthTest {
    private static final List<String> WORDS =
            List.of("again", "more", "cautions", "how 1", "how 3", "figures", "rules", "sources", "answers");

    private static final Pattern ENDS_IN_A_NUMBER = Pattern.compile(".*(?:^|[\\s(=])-?\\d[\\d.,:/]*$");
    private static final Pattern BEGINS_WITH_A_UNIT = Pattern.compile(
            "(?:mm|cm|m|km|µm|ml|mL|cl|l|L|g|kg|lb|oz|s|min|h|d|days?|mbar|bar|Pa|hPa|kPa|MPa|inHg|torr|psi"
                    + "|°C|°F|K|W|kW|J|N|%|cfm|L/s|L/min|m³/h|m³|cm³|Pa·s|mPa·s|cP|kg/m³|g/cm³|Hz|in)(?![\\w-]).*");

    @TempDir
    private Path home;

    /** R20, R21 */
    @Test
    void fortyEightyAndTwoHundredColumnsSayTheSame() throws Exception {
        Map<Integer, String> said = new LinkedHashMap<>();
        for (int width : new int[] {40, 80, 200}) {
            try (Rig rig = Rig.in(Files.createDirectories(home.resolve("at-" + width)))
                    .columns(width)
                    .run("plan")) {
                said.put(width, conversation(rig, width));
            }
        }
        assertThat(said.get(40)).isEqualTo(said.get(80));
        assertThat(said.get(200)).isEqualTo(said.get(80));
    }

    /** R20: a plain terminal is as wide as it is, and a window made narrower is narrower from the next line on. */
    @Test
    void aPlainTerminalAndAResizedOneAreFitted() {
        try (Rig rig = Rig.in(home).columns(40).run("plan", "--plain", "material=tin-silicone")) {
            List<String> lines = new ArrayList<>(rig.reply("help"));
            lines.addAll(rig.reply("enough"));
            fits(lines, 40);
            rig.reply("quit");
        }
        try (Rig rig = Rig.in(home.resolve("resized")).columns(120).run("plan", "material=tin-silicone")) {
            rig.reply("enough");
            assertThat(rig.reply("more")).anyMatch(l -> l.length() > 80);
            rig.resize(40);
            List<String> lines = new ArrayList<>(rig.reply("more"));
            lines.addAll(rig.reply("again"));
            fits(lines, 40);
            rig.reply("quit");
        }
    }

    /** R18, R20: the pictures of a diagnosis too are shown whole or not at all, and never alone. */
    @Test
    void aNarrowDiagnosisBreaksNoPicture() {
        Map<String, Question> drawn = new LinkedHashMap<>();
        Knowledge k = KnowledgeReader.read(Path.of("knowledge"));
        KnowledgeReader.forDiagnosis(Path.of("knowledge"), k).observations().stream()
                .filter(q -> !q.picture().isEmpty())
                .forEach(q -> drawn.put(q.id(), q));
        drawn.values().forEach(q -> {
            assertThat(q.help()).as("the words for the drawing of '%s'", q.id()).hasSizeGreaterThan(40);
            assertThat(String.join("", q.picture())).matches("[ -~]+");
        });
        for (int width : new int[] {40, 80}) {
            int shown = 0;
            try (Rig rig = Rig.in(home.resolve("drawn-" + width)).columns(width).run("diagnose")) {
                List<String> all = new ArrayList<>(rig.reply("bubbles"));
                all.addAll(rig.reply(""));
                String id = rig.prompt();
                while (!id.equals("review")) {
                    Question q = drawn.get(id);
                    boolean whole = q != null
                            && q.picture().stream().allMatch(l -> rig.screen().contains(l.stripTrailing()));
                    boolean room = q != null && q.picture().stream().allMatch(l -> l.length() + 2 <= width);
                    assertThat(whole).as(id).isEqualTo(room);
                    shown += whole ? 1 : 0;
                    all.addAll(rig.reply("help"));
                    all.addAll(rig.reply("don't know"));
                    id = rig.prompt();
                }
                all.addAll(rig.reply(""));
                all.addAll(rig.reply("how 1"));
                rig.reply("quit");
                fits(all, width);
            }
            assertThat(shown).as("drawings shown at %d columns", width).matches(n -> width < 80 || n > 0);
        }
    }

    private static String conversation(Rig rig, int width) {
        List<String> all = new ArrayList<>();
        rig.prompt();
        for (String line : List.of("help", "why", "nonsense")) {
            all.addAll(rig.reply(line));
        }
        String id = rig.prompt();
        while (!id.equals("review")) {
            all.addAll(rig.reply(Typist.JOB.getOrDefault(id, "don't know")));
            id = rig.prompt();
        }
        List<String> page = rig.reply("");
        resultFirstNextLast(page);
        all.addAll(page);
        for (String word : WORDS) {
            all.addAll(rig.reply(word));
        }
        rig.reply("quit");
        rig.exit();
        fits(all, width);
        return Rig.collapsed(all);
    }

    /** R21: the result is the first line, what can be done next the last. */
    private static void resultFirstNextLast(List<String> page) {
        List<String> lines = page.stream().filter(l -> !l.isBlank()).toList();
        assertThat(lines.get(0)).matches("(GO|CHANGE|STOP)\\b.*");
        String text = Rig.collapsed(lines);
        assertThat(text.substring(text.lastIndexOf("Next: "))).endsWith("\"quit\".");
    }

    private static void fits(List<String> lines, int width) {
        assertThat(lines).hasSizeGreaterThan(10);
        assertThat(lines.stream()
                        .filter(l -> l.codePointCount(0, l.length()) > width)
                        // A name longer than the line cannot be broken without being lost.
                        .filter(l -> l.strip().contains(" ")))
                .as("wider than %d columns", width)
                .isEmpty();
        List<String> split = new ArrayList<>();
        for (int i = 0; i + 1 < lines.size(); i++) {
            if (ENDS_IN_A_NUMBER.matcher(lines.get(i)).matches()
                    && BEGINS_WITH_A_UNIT.matcher(lines.get(i + 1).strip()).matches()) {
                split.add(lines.get(i) + " / " + lines.get(i + 1));
            }
        }
        assertThat(split).as("a number parted from its unit").isEmpty();
    }
}
