package pourwright.casebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Replaces a file whole: written beside, forced to disk, then renamed over. Whatever fails, the old file stands as it was
 * and nothing is left beside it; only a kill can leave a file ending in {@code .new}, which nobody reads.
 */
public final class WholeFile {
    /** How many files that kills left beside are stepped over. */
    private static final int MOST_BESIDE = 1000;

    private WholeFile() {}

    /** How a file is opened; another way than the usual one lets a test fill the disk. */
    @FunctionalInterface
    interface Opener {
        FileChannel open(Path file, OpenOption... options) throws IOException;
    }

    /** Writes text as UTF-8. */
    public static void write(Path file, String text) throws IOException {
        write(file, text, FileChannel::open);
    }

    static void write(Path file, String text, Opener opener) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        for (int n = 0; n < MOST_BESIDE; n++) {
            // A name of its own, so that two programs at one file do not write into each other's half.
            Path beside = folder.resolve(file.getFileName() + "." + n + ".new");
            FileChannel out;
            try {
                out = opener.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            } catch (FileAlreadyExistsException e) {
                continue;
            }
            replace(file, beside, out, bytes);
            force(folder);
            return;
        }
        throw new IOException("too many unfinished files beside");
    }

    private static void replace(Path file, Path beside, FileChannel opened, ByteBuffer bytes) throws IOException {
        boolean done = false;
        try {
            try (FileChannel out = opened) {
                while (bytes.hasRemaining()) {
                    out.write(bytes);
                }
                out.force(true);
            }
            // Never "copy over": that would pass through half a file where the rename cannot be done in one step.
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            done = true;
        } finally {
            if (!done) {
                remove(beside);
            }
        }
    }

    private static void remove(Path beside) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException ignored) {
            // The fault that led here is the one to tell.
            return;
        }
    }

    /** The rename itself is on disk only once the folder is; not every system lets a folder be opened for that. */
    private static void force(Path folder) {
        try (FileChannel f = FileChannel.open(folder, StandardOpenOption.READ)) {
            f.force(true);
        } catch (IOException ignored) {
            // The content is safe; after a loss of power the old file may stand once more.
            return;
        }
    }

    /**
     * Reads a file of bounded size, so that no file, whatever it is, can fill the memory.
     *
     * @throws IOException also when it is larger
     */
    static byte[] read(Path file, int mostBytes) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(mostBytes + 1);
            if (bytes.length > mostBytes) {
                throw new IOException("larger than " + mostBytes + " bytes");
            }
            return bytes;
        }
    }

    /** The same as text; what is not UTF-8 is not text. */
    static String text(Path file, int mostBytes) throws IOException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(read(file, mostBytes)))
                .toString();
    }

    /** Moves a file that cannot be used out of the way, where a person can still look at it. */
    static Path setAside(Path file) throws IOException {
        return Files.move(file, aside(file), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    static Path aside(Path file) {
        return file.resolveSibling(file.getFileName() + ".unreadable");
    }
}
