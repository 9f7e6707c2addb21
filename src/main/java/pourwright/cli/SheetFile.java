package pourwright.cli;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.casebook.Trouble;
import pourwright.casebook.WholeFile;
import pourwright.console.Shapes;
import pourwright.console.SheetPage;
import pourwright.console.VentsJob;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.sheet.MouldOnSheet;
import pourwright.sheet.Sheet;
import pourwright.sheet.SheetHtml;
import pourwright.sheet.SheetMaker;
import pourwright.vents.MeshRequest;

/** Writes a plan as a sheet: HTML or text, as the name of the file ends. */
final class SheetFile {
    private static final int LONGEST_TITLE = 90;

    private final Knowledge knowledge;
    private final Shapes shapes;
    private final String version;

    /**
     * @param shapes reads the mesh that a plan names
     * @param version what made the sheet
     */
    SheetFile(Knowledge knowledge, Shapes shapes, String version) {
        this.knowledge = knowledge;
        this.shapes = shapes;
        this.version = version;
    }

    /** What a person typed after "sheet": a file, and the title after it. Says what became of it. */
    String typed(Consultation c, String rest) {
        String[] parts = rest.strip().split("\\s+", 2);
        try {
            if (parts[0].isEmpty()) {
                throw new BadAnswer("sheet", "Say where it goes, for example \"sheet ear.html Left ear\".");
            }
            write(c, file(parts[0]), parts.length > 1 ? parts[1] : "");
            return "The sheet is in " + parts[0] + ". Print it, or open it in a browser.";
        } catch (BadAnswer e) {
            return e.getMessage();
        }
    }

    /**
     * The name of a file that can hold a sheet.
     *
     * @throws BadAnswer when it does not end in .html or .txt
     */
    static Path file(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        if (!small.endsWith(".html") && !small.endsWith(".htm") && !small.endsWith(".txt")) {
            throw new BadAnswer(
                    "sheet", "A sheet goes into a file that ends in .html or .txt, and \"" + name + "\" does not.");
        }
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new BadAnswer("sheet", "\"" + name + "\" cannot be the name of a file. For example ear.html.");
        }
    }

    /**
     * Writes the sheet of a plan, over a file that is there.
     *
     * @throws BadAnswer when the title is too long, the mesh cannot be read or the file not be written
     */
    void write(Consultation c, Path file, String title) {
        Sheet sheet = SheetMaker.of(c, knowledge, title(title), mould(c.answers()), version);
        boolean text = file.toString().toLowerCase(Locale.ROOT).endsWith(".txt");
        try {
            WholeFile.write(file, text ? String.join("\n", SheetPage.lines(sheet)) + "\n" : SheetHtml.of(sheet));
        } catch (IOException e) {
            throw new BadAnswer("sheet", "The sheet " + file + " cannot be written: " + Trouble.why(file, e) + ".");
        }
    }

    /** @throws BadAnswer when it is too long for a page */
    static String title(String title) {
        if (title.length() > LONGEST_TITLE) {
            throw new BadAnswer("title", "The title is too long: at most " + LONGEST_TITLE + " letters fit the page.");
        }
        return title;
    }

    private Optional<MouldOnSheet> mould(Answers answers) {
        if (MeshRequest.of(answers).isEmpty()) {
            return Optional.empty();
        }
        VentsJob vents = new VentsJob(knowledge, shapes, advice -> {});
        return Optional.of(vents.page(vents.advise(answers), answers, 80, true).onSheet());
    }
}
