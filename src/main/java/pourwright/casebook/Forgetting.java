package pourwright.casebook;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a workshop's folder holds of a person's work, by what they call it. Only files that this program writes or reads are
 * named: a folder that was named by mistake loses nothing else.
 */
public final class Forgetting {
    private static final String CASES = "cases";
    private static final String CASE_END = ".case.json";
    private static final String LEARNER = "learner ";

    /** What each kind of thing is kept in: a folder, or nothing for the workshop's own, and the form of the names. */
    private static final Map<String, List<String[]>> KINDS = Map.of(
            "history",
            List.<String[]>of(
                    new String[] {"", "unfinished{,-[0-9]*}.jsonl"},
                    new String[] {"", "unfinished.jsonl.*"},
                    new String[] {"", "{runs,kit-tests}.jsonl"}),
            "all",
            List.<String[]>of(
                    new String[] {"", "unfinished{,-[0-9]*}.jsonl"},
                    new String[] {"", "unfinished.jsonl.*"},
                    new String[] {"", "{runs,kit-tests}.jsonl"},
                    new String[] {"", "kit.json*"},
                    new String[] {"", "stock.json"},
                    new String[] {"", "guidelines.json"},
                    new String[] {CASES, "*" + CASE_END},
                    new String[] {Learners.FOLDER, "*" + Learners.END},
                    new String[] {"materials", "*.json"}));

    private Forgetting() {}

    /**
     * The files of a kind.
     *
     * @param what {@code history}, {@code all}, {@code learner NAME}, or the name of a case as it was saved
     * @return existing files; none when there is no such thing
     * @throws IOException when the folder cannot be read
     */
    public static List<Path> files(Path shop, String what) throws IOException {
        List<Path> files = new ArrayList<>();
        List<String[]> places = KINDS.get(what);
        if (what.startsWith(LEARNER)) {
            Path file = new Learners(shop).file(what.substring(LEARNER.length()));
            if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                files.add(file);
            }
            for (Path f : replaced(shop)) {
                if (f.getFileName().equals(file.getFileName())
                        && f.getParent().getFileName().toString().equals(Learners.FOLDER)) {
                    files.add(f);
                }
            }
            return files;
        }
        if (places == null) {
            Path file = shop.resolve(CASES).resolve(plain(what) + CASE_END);
            if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                files.add(file);
            }
            return files;
        }
        for (String[] place : places) {
            Path folder = place[0].isEmpty() ? shop : shop.resolve(place[0]);
            if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
                continue;
            }
            try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, place[1])) {
                for (Path f : found) {
                    if (Files.isRegularFile(f, LinkOption.NOFOLLOW_LINKS) && !files.contains(f)) {
                        files.add(f);
                    }
                }
            }
        }
        if (what.equals("all")) {
            files.addAll(replaced(shop));
        }
        files.sort(null);
        return files;
    }

    /** Files that imports replaced and set aside. */
    private static List<Path> replaced(Path shop) throws IOException {
        List<Path> files = new ArrayList<>();
        if (!Files.isDirectory(shop)) {
            return files;
        }
        try (DirectoryStream<Path> asides = Files.newDirectoryStream(shop, ShopPack.ASIDE + "*")) {
            for (Path aside : asides) {
                if (Files.isDirectory(aside, LinkOption.NOFOLLOW_LINKS)) {
                    ShopPack.files(aside).keySet().forEach(name -> files.add(aside.resolve(name)));
                }
            }
        }
        return files;
    }

    /** Names of the cases that are kept. */
    public static List<String> cases(Path shop) throws IOException {
        List<String> names = new ArrayList<>();
        Path folder = shop.resolve(CASES);
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*" + CASE_END)) {
                for (Path f : found) {
                    String name = f.getFileName().toString();
                    names.add(name.substring(0, name.length() - CASE_END.length()));
                }
            }
        }
        names.sort(null);
        return names;
    }

    /** The name of a case's file, as saving makes it. */
    public static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }

    /**
     * Deletes files.
     *
     * @return those that could not be deleted
     */
    public static List<Path> delete(List<Path> files) {
        List<Path> left = new ArrayList<>();
        for (Path f : files) {
            try {
                Files.deleteIfExists(f);
            } catch (IOException e) {
                left.add(f);
            }
        }
        return left;
    }
}
