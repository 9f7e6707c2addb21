package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.knowledge.Json;

/** The course from the shell. */
class LearnCommandTest {
    @TempDir
    private Path shop;

    @Test
    void aLessonIsPrintedWithoutATalk() {
        Ran r = Ran.of("learn", "pressure", "--no-input", "--shop", shop.toString());
        assertThat(r.code()).isZero();
        assertThat(r.out()).startsWith("9. Pressure instead of vacuum").contains("pressure cure 4 bar:", "= 59 %");
        assertThat(Ran.of("learn", "9", "--no-input", "--shop", shop.toString()).out())
                .isEqualTo(r.out());
    }

    @Test
    void anUnknownLessonIsRefusedWithTheNames() {
        Ran r = Ran.of("learn", "knitting", "--shop", shop.toString());
        assertThat(r.code()).isEqualTo(2);
        assertThat(r.err())
                .contains("There is no lesson \"knitting\"", "pot-life")
                .doesNotContain("Exception");
    }

    @Test
    void theCourseAndTheProgressAreJson() throws Exception {
        assertThat(Json.read(Ran.of("learn", "--json", "--shop", shop.toString())
                                .out())
                        .path("lessons"))
                .hasSize(11);
        Ran talk = Ran.with(
                "no\nquit\n", Map.of(), "learn", "pressure", "--as", "Ida", "--seed", "1", "--shop", shop.toString());
        assertThat(talk.out()).contains("9. Pressure instead of vacuum");
        var people = Json.read(Ran.of("learn", "--trainer", "--json", "--shop", shop.toString())
                        .out())
                .path("people");
        assertThat(people).hasSize(1);
        assertThat(people.path(0).path("name").asText()).isEqualTo("Ida");
        assertThat(people.path(0)
                        .path("lessons")
                        .path("pressure")
                        .path("standing")
                        .asText())
                .isEqualTo("under-way");
    }

    @Test
    void theConsoleLeadsToTheCourse() {
        Ran r = Ran.with("learn\n\nquit\n", Map.of(), "--shop", shop.toString());
        assertThat(r.out()).contains("A course of 11", "Which lesson?");
    }
}
