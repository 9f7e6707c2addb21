package pourwright.casebook;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Why a folder takes no file, in words. Looked up, not quoted: the system's own words differ by system and language. */
public final class Trouble {
    /** Less free space than this is a full disk to a person: no file of ours is larger. */
    private static final long FULL_BYTES = 64_000;

    private Trouble() {}

    /** The reason, as part of a sentence. */
    public static String why(Path folder, IOException e) {
        Path there = folder.toAbsolutePath();
        while (!Files.exists(there) && there.getParent() != null) {
            there = there.getParent();
        }
        if (!Files.isDirectory(there)) {
            return there + " is a file, not a folder";
        }
        if (e instanceof NoSuchFileException missing && !Files.exists(folder)) {
            return "there is no folder " + missing.getFile();
        }
        if (!Files.isWritable(there)) {
            return there + " may only be read";
        }
        try {
            if (Files.getFileStore(there).getUsableSpace() < FULL_BYTES) {
                return "the disk is full";
            }
        } catch (IOException ignored) {
            return said(e);
        }
        return said(e);
    }

    private static String said(IOException e) {
        String words = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
        if (words == null || words.isBlank()) {
            return "the system gives no reason";
        }
        return "the system says \"" + words.replaceAll("\\p{Cntrl}", " ").strip() + "\"";
    }
}
