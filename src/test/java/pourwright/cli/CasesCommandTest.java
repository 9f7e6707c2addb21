package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.knowledge.Json;

/** Saved cases from the shell and in a conversation. */
class CasesCommandTest {
    private static final String JOB = "enough\n\n";

    @TempDir
    private Path shop;

    private Ran talk(String typed) {
        return Ran.with(
                JOB + typed,
                Map.of(),
                "plan",
                "material=fast-polyurethane",
                "job=open-mould",
                "pot-life=5 min",
                "batch-mass=300 g",
                "kit=vacuum",
                "chamber-volume=20 L",
                "pump-speed=7 cfm",
                "cup-volume=1 L",
                "--shop",
                shop.toString());
    }

    @Test
    void aCaseIsSavedToldAndFoundAgain() throws Exception {
        Ran first = talk("outcome good\ncases\nsave the hoof\noutcome bad froth in the heel\nquit\n");
        assertThat(first.out().replaceAll("\\s+", " "))
                .contains("Say the case and how it came out", "outcome the-hoof good")
                .contains("Kept: bad: froth in the heel (");
        Ran second = talk("cases\noutcome nothing good\nquit\n");
        assertThat(second.out().replaceAll("\\s+", " "))
                .contains("1. the-hoof: the same job (distance 0 of 100)", "how it came out: bad: froth in the heel (")
                .contains("No case of yours is called \"nothing\".");
        Ran list = Ran.of("cases", "--shop", shop.toString());
        assertThat(list.out()).startsWith("the-hoof: plan, change; bad: froth in the heel (");
        Ran more = Ran.of("outcome", "the", "hoof", "good", "--shop", shop.toString());
        assertThat(more.code()).isZero();
        assertThat(more.out()).contains("bad: froth in the heel (").contains("; good (");
        var json =
                Json.read(Ran.of("cases", "--json", "--shop", shop.toString()).out());
        assertThat(json.path("cases").path(0).path("verdict").asText()).isEqualTo("change");
    }

    @Test
    void badInputGetsASentence() {
        assertThat(Ran.of("outcome", "the", "hoof", "--shop", shop.toString()).code())
                .isEqualTo(2);
        Ran none = Ran.of("cases", "--like", "none", "--shop", shop.toString());
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("No case of yours is called \"none\"").doesNotContain("Exception");
        assertThat(Ran.of("cases", "--shop", shop.toString()).out()).contains("No case is saved yet");
    }
}
