package pourwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;

/** Counts the pages on which a browser prints an HTML file; whoever has no browser leaves such a test out. */
public final class PrintedPages {
    private static final Path BROWSER = Path.of("/usr/bin/chromium");
    private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page\\b(?!s)");

    private PrintedPages() {}

    /**
     * Prints.
     *
     * @param html a page whose style has an {@code @page} rule
     * @param paper {@code A4} or {@code letter}
     * @param dir where to put files
     */
    public static int of(String html, String paper, Path dir) throws IOException, InterruptedException {
        Assumptions.assumeTrue(Files.isExecutable(BROWSER), "no browser on this machine");
        Path page = Files.writeString(
                dir.resolve("page.html"), html.replace("@page { margin", "@page { size: " + paper + "; margin"));
        assertThat(Files.readString(page)).contains("size: " + paper);
        Path pdf = dir.resolve("page.pdf");
        Files.deleteIfExists(pdf);
        Process p = new ProcessBuilder(
                        BROWSER.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-background-networking",
                        "--user-data-dir=" + dir.resolve("profile"),
                        "--no-pdf-header-footer",
                        "--print-to-pdf=" + pdf,
                        page.toUri().toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            assertThat(p.waitFor(3, TimeUnit.MINUTES)).isTrue();
        } finally {
            p.destroyForcibly();
        }
        return (int) PAGE.matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1))
                .results()
                .count();
    }
}
