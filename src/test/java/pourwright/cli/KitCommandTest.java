package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.knowledge.Json;

/** What other programs see of {@code kit}: readings typed or in a table, a history, and errors in one sentence. */
class KitCommandTest {
    private static final String[] KIT = {
        "gauge-kind=absolute",
        "chamber-volume=20 L",
        "pump-kind=oil-vane-one-stage",
        "pump-speed=1.4 L/s",
        "pump-ultimate=2 mbar",
        "hose-bore=12 mm",
        "hose-length=1 m"
    };
    private static final String FALL =
            "0 s 1013 mbar; 10 530; 20 278; 30 146; 45 56.5; 60 22.7; 75 9.9; 90 5.2; 120 2.7; 150 2.3; 180 2.3";

    @TempDir
    Path dir;

    private static String[] words(String... more) {
        String[] all = new String[KIT.length + more.length + 1];
        all[0] = "kit";
        System.arraycopy(KIT, 0, all, 1, KIT.length);
        System.arraycopy(more, 0, all, KIT.length + 1, more.length);
        return all;
    }

    private static JsonNode json(String... more) throws IOException {
        return Json.read(Ran.of(words(more)).out());
    }

    @Test
    void theResultHasItsShape() throws IOException {
        JsonNode out = json("pump-down-readings=" + FALL, "--json");
        assertThat(out.path("format").asInt()).isEqualTo(1);
        assertThat(out.path("verdict").asText()).isEqualTo("go");
        JsonNode speed = out.path("figures").path("effective-speed-measured");
        assertThat(speed.path("value").asDouble()).isCloseTo(1.3e-3, within(1e-4));
        assertThat(speed.path("unit").asText()).isEqualTo("m³/s");
        assertThat(speed.path("low").asDouble()).isLessThan(speed.path("high").asDouble());
        assertThat(out.path("tests").path("pump-down").path("shows").asText()).isEqualTo("enough");
        assertThat(out.path("tests").path("pump-down").path("readings")).hasSize(11);
        assertThat(out.path("rules-fired").toString()).contains("kit-speed-as-rated");
        assertThat(out.path("assumed").toString()).contains("target-pressure");
        assertThat(out.path("unasked").toString()).contains("rise-readings");
        assertThat(out.has("drift")).isFalse();
    }

    @Test
    void aTableSaysTheSameAsTypedReadings() throws IOException {
        Path csv = dir.resolve("pull.csv");
        Files.writeString(
                csv,
                "time (s),pressure (mbar)\n"
                        + FALL.replace(" s ", ",")
                                .replace(" mbar", "")
                                .replace("; ", "\n")
                                .replace(" ", ",") + "\n");
        assertThat(json("--csv", csv.toString(), "--json")).isEqualTo(json("pump-down-readings=" + FALL, "--json"));
    }

    @Test
    void oneTableMayHoldBothTests() throws IOException {
        Path csv = dir.resolve("both.csv");
        Files.writeString(csv, """
                test;time min;pressure mbar
                fall;0;1013
                fall;0,5;146
                fall;1;22,7
                fall;1,5;5,2
                fall;3;2,3
                fall;4;2,3
                rise;0;5
                rise;2;11
                rise;4;17
                rise;6;23
                rise;8;29
                rise;10;35
                """);
        JsonNode out = json("--csv", csv.toString(), "--json");
        assertThat(out.path("tests").path("rise").path("shows").asText()).isEqualTo("leak");
        // 3 mbar a minute in 20 L is 1 mbar L/s, which is 0.1 Pa m3/s.
        assertThat(out.path("figures").path("leak-rate-measured").path("value").asDouble())
                .isCloseTo(0.1, within(0.005));
    }

    @Test
    void aLongTableIsThinnedAndTellsTheSame() throws IOException {
        StringBuilder rows = new StringBuilder("time s,pressure mbar\n");
        for (int t = 0; t <= 300; t++) {
            rows.append(t)
                    .append(',')
                    .append(2.3 + 1010.7 * Math.exp(-1.3 * t / 20))
                    .append('\n');
        }
        Path csv = dir.resolve("long.csv");
        Files.writeString(csv, rows);
        assertThat(json("--csv", csv.toString(), "--json")
                        .path("figures")
                        .path("effective-speed-measured")
                        .path("value")
                        .asDouble())
                .isCloseTo(1.3e-3, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "time s,pressure mbar|holds no readings",
                "a,b/1,2|no columns named time and pressure",
                "time,pressure/1,2|names no unit",
                "time s,pressure mbar/0,1013/x,400|no number in row 3",
                "time s,pressure mbar/0|too few columns in row 2",
                "test,time s,pressure mbar/up,0,1013|neither fall nor rise in row 2",
                "time s,pressure mbar/0,NaN|no number in row 2",
                "time s,pressure parsecs/0,1013|not a reading"
            })
    void aTableThatCannotBeUsedIsSaidInOneSentence(String text, String says) throws IOException {
        Path csv = dir.resolve("bad.csv");
        Files.writeString(csv, text.replace('/', '\n') + "\n");
        Ran ran = Ran.of(words("--csv", csv.toString(), "--no-input"));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(says);
        assertThat(ran.err().lines()).hasSize(1);
    }

    @Test
    void aTableThatIsNoTextOrTooLargeIsRefused() throws IOException {
        Path binary = dir.resolve("binary.csv");
        Files.write(binary, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
        assertThat(Ran.of("kit", "--csv", binary.toString(), "--json").err()).contains("not UTF-8");
        Path large = dir.resolve("large.csv");
        Files.write(large, new byte[1_000_001]);
        assertThat(Ran.of("kit", "--csv", large.toString(), "--json").err()).contains("larger than one megabyte");
        assertThat(Ran.of("kit", "--csv", dir.resolve("none.csv").toString(), "--json")
                        .code())
                .isEqualTo(2);
    }

    @Test
    void unsafeStopsWithCodeOne() {
        assertThat(Ran.of("kit", "lid-state=cracked", "--no-input").code()).isEqualTo(1);
        assertThat(Ran.of("kit", "pump-oil=milky", "--no-input").code()).isZero();
        assertThat(Ran.of("kit", "pump-kind=piston", "--no-input").code()).isEqualTo(2);
    }

    @Test
    void pumpsAreSizedForWhatIsNamed() throws IOException {
        JsonNode out = json("--for", "tin-silicone,alginate", "--json").path("sizing");
        assertThat(out.path("materials").get(0).path("vacuum-helps").asBoolean())
                .isTrue();
        assertThat(out.path("materials").get(1).path("vacuum-helps").asBoolean())
                .isFalse();
        assertThat(out.path("pump").path("speed").path("value").asDouble()).isPositive();
        assertThat(out.path("kinds").size()).isGreaterThan(5);
    }

    @Test
    void fourTestsShowADriftAndFewerDoNot() throws IOException {
        String shop = dir.resolve("shop").toString();
        String[] bases = {"2.3", "3.4", "4.6", "5.9", "7.1"};
        JsonNode out = null;
        for (int i = 0; i < bases.length; i++) {
            double base = Double.parseDouble(bases[i]);
            StringBuilder fall = new StringBuilder();
            for (int t = 0; t <= 240; t += 20) {
                fall.append(t == 0 ? "" : "; ")
                        .append(t)
                        .append(" s ")
                        .append(Math.round((base + (1013 - base) * Math.exp(-1.3 * t / 20)) * 10) / 10.0)
                        .append(" mbar");
            }
            out = json(
                    "pump-down-readings=" + fall,
                    "--shop",
                    shop,
                    "--keep",
                    "--date",
                    "2026-0" + (i + 1) + "-01",
                    "--json");
            if (i == 2) {
                assertThat(out.path("drift").path("overall").asText()).isEqualTo("too-few");
            }
        }
        assertThat(out.path("drift").path("overall").asText()).isEqualTo("worse");
        assertThat(out.path("drift")
                        .path("base-pressure-measured")
                        .path("per-year")
                        .asDouble())
                .isBetween(1000.0, 2000.0);
        assertThat(Files.readAllLines(dir.resolve("shop/kit-tests.jsonl"))).hasSize(5);
    }

    @Test
    void aLineOfTheHistoryThatCannotBeReadIsKept() throws IOException {
        Files.writeString(dir.resolve("kit-tests.jsonl"), "{\"date\":\"2026-13-01\"}\nnot a test\n");
        Ran.of(words(
                "pump-down-readings=" + FALL, "--shop", dir.toString(), "--keep", "--date", "2026-03-01", "--json"));
        assertThat(Files.readAllLines(dir.resolve("kit-tests.jsonl")))
                .hasSize(3)
                .contains("not a test")
                .last()
                .asString()
                .contains("2026-03-01");
    }

    @Test
    void withoutADateTheClockTells() throws IOException {
        Clock clock = Clock.fixed(Instant.parse("2026-05-06T12:00:00Z"), ZoneOffset.UTC);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream print = new PrintStream(out, true, StandardCharsets.UTF_8);
        new Program(new ByteArrayInputStream(new byte[0]), print, print, Map.of(), clock)
                .run(words("pump-down-readings=" + FALL, "--shop", dir.toString(), "--keep", "--no-input"));
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("Kept as the test of 2026-05-06.");
        assertThat(Files.readString(dir.resolve("kit-tests.jsonl"))).contains("\"date\":\"2026-05-06\"");
    }

    @ParameterizedTest
    @CsvSource({"2026-02-30", "yesterday", "01.03.2026"})
    void aDayThatIsNoneIsRefused(String date) {
        Ran ran = Ran.of("kit", "pump-oil=milky", "--date", date, "--no-input");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("2026-03-01");
    }

    @Test
    void itIsTalkedThroughAndKept() throws IOException {
        String shop = dir.resolve("talk").toString();
        String said = "20 L\nabsolute\n0.1 mbar\n" + FALL + "\nenough\n\nreadings\nquit\n";
        Ran ran = Ran.with(said, Map.of("COLUMNS", "80"), "kit", "--shop", shop, "--date", "2026-03-01");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("GO. Nothing was found").contains("Kept as the test of 2026-03-01.");
        assertThat(ran.code()).isZero();
        assertThat(Files.readAllLines(dir.resolve("talk/kit-tests.jsonl"))).hasSize(1);
    }
}
