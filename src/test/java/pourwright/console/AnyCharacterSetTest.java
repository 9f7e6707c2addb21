package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The same words reach the person whatever Java and the terminal take for their character set, language and time zone. */
class AnyCharacterSetTest {
    private static final int TALKS = 10;
    private static final List<String> FAR_AWAY = List.of(
            "-Dfile.encoding=US-ASCII", "-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Asia/Kathmandu");

    /** Runs a class in a Java of its own, with no locale in the environment but this one. */
    private static byte[] run(String locale, String input, String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(FAR_AWAY);
        command.addAll(List.of(
                "-XX:TieredStopAtLevel=1",
                "-Dpourwright.home=" + Path.of("").toAbsolutePath(),
                "-cp",
                System.getProperty("java.class.path")));
        command.addAll(List.of(words));
        ProcessBuilder b = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD);
        List.of("LC_ALL", "LC_CTYPE", "LANG").forEach(b.environment()::remove);
        if (!locale.isEmpty()) {
            b.environment().put("LC_ALL", locale);
        }
        Process p = b.start();
        p.getOutputStream().write(input.getBytes(StandardCharsets.UTF_8));
        p.getOutputStream().close();
        byte[] out = p.getInputStream().readAllBytes();
        p.waitFor();
        return out;
    }

    @Test
    void tenTalksAreTheSameBytesFarAway() throws IOException, InterruptedException {
        ByteArrayOutputStream here = new ByteArrayOutputStream();
        for (int n = 0; n < TALKS; n++) {
            here.writeBytes(WholeProgramTalk.held(n).bytes());
        }
        String there = new String(
                run("", "", WholeProgramTalk.class.getName(), String.valueOf(TALKS)), StandardCharsets.UTF_8);
        assertThat(there).isEqualTo(here.toString(StandardCharsets.UTF_8)).contains("°C", "exit 0");
    }

    /** What is piped is UTF-8 whatever the locale: another program reads it. */
    @ParameterizedTest
    @CsvSource({"0, ''", "1, C", "0, tr_TR.ISO-8859-9"})
    void theProgramItselfPipesTheSameBytes(int number, String locale) throws IOException, InterruptedException {
        WholeProgramTalk held = WholeProgramTalk.held(number);
        String here = new String(held.bytes(), StandardCharsets.UTF_8).replaceAll("exit \\d+\n$", "");
        Path shop = WholeProgramTalk.shop(number);
        byte[] there = run(locale, held.typed(), "pourwright.cli.Main", held.word(), "--shop", shop.toString());
        WholeProgramTalk.delete(shop);
        assertThat(new String(there, StandardCharsets.UTF_8)).isEqualTo(here);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cool it to 20 °C first|cool it to 20 deg C first",
                "20°C, 68 °F and 45°|20 deg C, 68 deg F and 45 deg",
                "5 µm or 5 μm|5 um or 5 um",
                "4 Pa·s|4 Pa.s",
                "m³, m², 10⁻⁹, H₂O|m3, m2, 10^-9, H2O",
                "1–2 and −3|1-2 and -3",
                "½ kg × 2 ± ⅛|1/2 kg x 2 +/- 1/8",
                "it’s said…|it's said...",
                "5\u00a0kg|5 kg",
                "café, İzmir|cafe, Izmir",
                "plain|plain"
            })
    void aTerminalOfPlainCharactersIsSpokenToInThem(String text, String said) {
        ScriptedDoor door = new ScriptedDoor(id -> "", 80, false);
        new AsciiDoor(door).say(text);
        assertThat(door.lines).containsExactly(said);
    }

    @Test
    void nothingTheProgramKnowsBecomesAQuestionMark() throws IOException {
        TreeSet<String> lost = new TreeSet<>();
        for (Path root : List.of(Path.of("knowledge"), Path.of("rules"), Path.of("src", "main", "java"))) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path f : files.filter(Files::isRegularFile).toList()) {
                    Files.readString(f)
                            .codePoints()
                            .filter(c -> c > 0x7f)
                            .mapToObj(Character::toString)
                            .filter(c -> AsciiDoor.spelled(c).contains("?"))
                            .forEach(c -> lost.add(c + " in " + f));
                }
            }
        }
        // Other ways to type a unit, which are read and never shown.
        lost.removeIf(l -> l.contains("pourwright/units/"));
        assertThat(lost).isEmpty();
    }
}
