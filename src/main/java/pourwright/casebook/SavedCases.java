package pourwright.casebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.advice.BadAnswer;
import pourwright.advice.Nearest;
import pourwright.knowledge.Knowledge;

/** The cases of a workshop and those that came with the program, found by name. */
public final class SavedCases {
    private static final String END = ".case.json";

    private final Path own;
    private final Path examples;

    /**
     * @param shop the workshop's folder, or null
     * @param examples the folder of the cases that came with the program, or null
     */
    public SavedCases(Path shop, Path examples) {
        this.own = shop == null ? null : shop.resolve("cases");
        this.examples = examples;
    }

    /**
     * One case file.
     *
     * @param name what it was saved as
     * @param word what it is a case of
     * @param file where it lies
     * @param own true when it is the workshop's
     * @param read the case, or nothing when it cannot be read
     * @param trouble why it cannot be read, else empty
     */
    public record Saved(String name, String word, Path file, boolean own, Optional<CaseFile> read, String trouble) {}

    /** The workshop's own cases, by name. */
    public List<Saved> own(Knowledge knowledge) {
        return in(own, true, knowledge);
    }

    /** The cases of a word: the workshop's own, then the examples that came with the program. */
    public List<Saved> of(String word, Knowledge knowledge) {
        List<Saved> all = new ArrayList<>(own(knowledge));
        all.addAll(in(examples, false, knowledge));
        return all.stream().filter(s -> s.word().equals(word)).toList();
    }

    /** The cases of one folder, by name; none where there is no such folder. */
    static List<Saved> in(Path folder, boolean own, Knowledge knowledge) {
        if (folder == null || !Files.isDirectory(folder)) {
            return List.of();
        }
        try (var files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().endsWith(END))
                    .sorted()
                    .map(f -> saved(f, own, knowledge))
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static Saved saved(Path file, boolean own, Knowledge knowledge) {
        String word = CaseFile.wordOf(file);
        String full = file.getFileName().toString();
        String name = full.substring(0, full.length() - END.length());
        try {
            return new Saved(
                    name, word, file, own, Optional.of(CaseFile.read(file, word, new AnswersJson(knowledge))), "");
        } catch (BadAnswer e) {
            return new Saved(name, word, file, own, Optional.empty(), e.getMessage());
        }
    }

    /**
     * The file of one of the workshop's cases, by the name it was saved under.
     *
     * @throws BadAnswer when there is none, with the names that come near
     */
    public Path named(String name) {
        Path file = own == null ? null : own.resolve(Forgetting.plain(name) + END);
        if (file != null && Files.isRegularFile(file)) {
            return file;
        }
        List<String> names = names();
        Map<String, String> meanings = new LinkedHashMap<>();
        names.forEach(n -> meanings.put(n, n.replace('-', ' ')));
        List<String> near = Nearest.of(name, meanings);
        throw new BadAnswer(
                "case",
                "No case of yours is called \"" + name + "\"."
                        + (near.isEmpty()
                                ? names.isEmpty() ? " None is saved yet: \"save NAME\" keeps one." : ""
                                : " Near it: " + String.join(", ", near) + "."));
    }

    private List<String> names() {
        try {
            return own == null ? List.of() : Forgetting.cases(own.getParent());
        } catch (IOException e) {
            return List.of();
        }
    }
}
