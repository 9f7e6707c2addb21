package pourwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The project stands on its own: nothing in it points at papers that are not part of it. */
class WordsTest {
    private static final List<Pattern> FORBIDDEN = List.of(
            Pattern.compile("\\bseed[ -]?(?:document|transcript|text|video)", Pattern.CASE_INSENSITIVE),
            Pattern.compile("\\btranscripts? of (?:a|the) (?:video|talk|film)", Pattern.CASE_INSENSITIVE),
            Pattern.compile("\\bvideo[ -]?transcript", Pattern.CASE_INSENSITIVE),
            Pattern.compile("\\b(?:TRADE|CHECKS|CHECKS-GEOMETRY|DESIGN|LIBRARIES|STYLE|CONSOLE|TABLES)\\.md\\b"),
            Pattern.compile("(?:^|[^\\w])/?(?:work/)?shared/\\w"),
            Pattern.compile("/work/(?:main|shared)"));

    @Test
    void noFilePointsOutside() {
        List<String> found = new ArrayList<>();
        for (Path file : Tree.files()) {
            // A picture is no text; what it shows stands in the file it was drawn from.
            String text = file.toString().endsWith(".png") ? "" : Tree.text(file);
            for (Pattern p : FORBIDDEN) {
                Matcher m = p.matcher(text);
                while (m.find()) {
                    found.add(file + ": " + m.group().strip());
                }
            }
        }
        // This file spells the patterns; they do not match their own spelling, so it needs no exception.
        assertThat(found).isEmpty();
    }

    @Test
    void noFileNamePointsOutside() {
        assertThat(Tree.files().stream()
                        .map(f -> f.toString().replace('\\', '/'))
                        .filter(f ->
                                FORBIDDEN.stream().anyMatch(p -> p.matcher(f).find())))
                .isEmpty();
    }

    @Test
    void textFilesEndWithALineFeedAndHoldNoCarriageReturnOrTab() {
        assertThat(Tree.files().stream()
                        .filter(f -> f.toString().matches(".*\\.(java|drl|md|xml)"))
                        .filter(f -> {
                            String text = Tree.text(f);
                            return text.contains("\r") || text.contains("\t") || !text.endsWith("\n");
                        }))
                .isEmpty();
    }
}
