package pourwright.casebook;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.advice.BadAnswer;
import pourwright.knowledge.Knowledge;
import pourwright.teach.Told;

/** The cases that exercises are drawn from: those that came with the program, and the workshop's own. */
public final class CaseLibrary {
    private static final String END = ".case.json";

    private CaseLibrary() {}

    /**
     * The plans and diagnoses of a folder, by name. A file that cannot be used teaches nothing and is passed over.
     *
     * @param knowledge with the questions of a diagnosis
     * @param own true for the workshop's own cases
     */
    public static List<Told> read(Path folder, Knowledge knowledge, boolean own) {
        List<Told> all = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return all;
        }
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*" + END)) {
            found.forEach(files::add);
        } catch (IOException e) {
            return all;
        }
        files.sort(null);
        files.forEach(f -> told(f, knowledge, own).ifPresent(all::add));
        return all;
    }

    private static Optional<Told> told(Path file, Knowledge knowledge, boolean own) {
        String word = CaseFile.wordOf(file);
        if (!word.equals("plan") && !word.equals("diagnose")) {
            return Optional.empty();
        }
        String name = file.getFileName().toString();
        try {
            CaseFile c = CaseFile.read(file, word, new AnswersJson(knowledge));
            return Optional.of(new Told(name.substring(0, name.length() - END.length()), word, c.answers(), own));
        } catch (BadAnswer e) {
            // Saved under other rules, or by hand; "check" says what is wrong with it.
            return Optional.empty();
        }
    }
}
