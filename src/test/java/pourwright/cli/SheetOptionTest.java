package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetOptionTest {
    @TempDir
    private Path dir;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String input, String... args) {
        List<String> all = new ArrayList<>(List.of("plan", "--knowledge", "knowledge"));
        all.addAll(List.of(args));
        return new Program(
                        new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        Map.of())
                .run(all.toArray(String[]::new));
    }

    private String said() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private static final String[] JOB = {"material=tin-silicone", "batch-mass=900 g", "mix-ratio=10:1", "kit=vacuum"};

    private int plan(String... more) {
        List<String> all = new ArrayList<>(List.of(JOB));
        all.addAll(List.of(more));
        return run("", all.toArray(String[]::new));
    }

    @Test
    void bothFormsAreWrittenWithTitleAndVersion() throws Exception {
        for (String name : List.of("ear.html", "EAR.TXT", "ear.htm")) {
            Path file = dir.resolve(name);
            assertThat(plan("--sheet", file.toString(), "--title", "Left ear"))
                    .as(said())
                    .isZero();
            String text = Files.readString(file);
            assertThat(text).contains("Left ear", "rule book ", "knowledge ");
            assertThat(text.contains("<html")).isEqualTo(!name.endsWith("TXT"));
        }
    }

    @Test
    void aMeshBringsItsVentsAndItsPicture() throws Exception {
        Path file = dir.resolve("ear.html");
        int code = run(
                "",
                "--mesh",
                "transcripts-of-cases/meshes/goat-ear.ply",
                "--unit",
                "mm",
                "material=fast-polyurethane",
                "mesh-gate=0,-38,6",
                "--sheet",
                file.toString());
        assertThat(code).as(said()).isLessThan(2);
        assertThat(Files.readString(file)).contains("<svg", "Vent V1 at", "Stand it with");
    }

    @Test
    void whatCannotBeAFileOfASheetIsSaid() {
        assertThat(plan("--sheet", dir.resolve("ear.pdf").toString())).isEqualTo(2);
        assertThat(said()).contains(".html or .txt");
        assertThat(plan("--sheet", dir.resolve("ear.html").toString(), "--title", "x".repeat(91)))
                .isEqualTo(2);
        assertThat(said()).contains("at most 90 letters");
    }

    @Test
    void aFolderThatIsAFileIsSaid() throws Exception {
        Path file = Files.writeString(dir.resolve("taken"), "x");
        assertThat(plan("--sheet", file.resolve("ear.html").toString())).isEqualTo(2);
        assertThat(said()).contains("cannot be written");
    }

    @Test
    void oneFileHoldsOneJob() {
        String job = "{\"material\": \"tin-silicone\", \"batch-mass\": \"900 g\"}\n";
        assertThat(run(
                        job + job,
                        "--answers",
                        "-",
                        "--json",
                        "--sheet",
                        dir.resolve("ear.html").toString()))
                .isEqualTo(2);
        assertThat(said()).contains("One file holds one job");
        assertThat(dir.resolve("ear.html")).exists();
    }
}
