package pourwright.knowledge;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.zip.CRC32;

/**
 * The build checks the shipped knowledge against its schemas and seals it with a checksum over every file. While the
 * seal fits, a start need not check the shape again; one changed byte and it does. It guards against slips, not malice.
 */
public final class Seal {
    private static final String FILE = "checked.sum";

    private Seal() {}

    /** Writes the seal of a folder that was checked. */
    public static void write(Path dir) throws IOException {
        Files.writeString(dir.resolve(FILE), digest(dir) + "\n", StandardCharsets.UTF_8);
    }

    /** True when the folder is byte for byte the one that was sealed. */
    static boolean fits(Path dir) {
        Path seal = dir.resolve(FILE);
        try {
            return Files.isRegularFile(seal)
                    && Files.readString(seal, StandardCharsets.UTF_8).strip().equals(digest(dir));
        } catch (IOException e) {
            return false;
        }
    }

    private static String digest(Path dir) throws IOException {
        // Plain names in a plain list: a stream over the tree takes longer than reading all the files.
        List<String> names = new ArrayList<>();
        collect(dir.toFile(), "", names);
        Collections.sort(names);
        CRC32 sum = new CRC32();
        long bytes = 0;
        for (String name : names) {
            byte[] content = Files.readAllBytes(dir.resolve(name));
            sum.update(name.getBytes(StandardCharsets.UTF_8));
            sum.update(content);
            bytes += content.length;
        }
        return names.size() + " files, " + bytes + " bytes, sum " + Long.toHexString(sum.getValue());
    }

    private static void collect(File folder, String prefix, List<String> names) throws IOException {
        File[] files = folder.listFiles();
        if (files == null) {
            throw new IOException("the folder " + folder + " cannot be read");
        }
        for (File f : files) {
            String name = prefix + f.getName();
            if (f.isDirectory()) {
                collect(f, name + "/", names);
            } else if (!name.endsWith(FILE)) {
                names.add(name);
            }
        }
    }
}
