package pourwright.casebook;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * The right to keep a conversation in a workshop's folder: one console at a time has it. The system gives it back when the
 * program ends, however it ends, so a lock file that was left behind holds nobody up.
 */
public final class ShopLock implements AutoCloseable {
    private static final String FILE = "console.lock";
    private static final int TRIES = 5;
    private static final long PAUSE_MS = 40;

    private final FileChannel channel;

    private ShopLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Takes the lock; none when another console has it.
     *
     * @throws IOException when the folder cannot be written
     */
    public static Optional<ShopLock> take(Path shop) throws IOException {
        FileChannel channel = FileChannel.open(shop.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        // Another console that only looks whether the folder is free has the lock for a moment.
        for (int n = 0; n < TRIES; n++) {
            if (locks(channel)) {
                return Optional.of(new ShopLock(channel));
            }
            pause();
        }
        channel.close();
        return Optional.empty();
    }

    /** True when another console keeps its conversation in this folder now. */
    public static boolean isHeld(Path shop) {
        Path file = shop.resolve(FILE);
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            return !locks(channel);
        } catch (IOException e) {
            // Who may not write in the folder cannot be in anybody's way.
            return false;
        }
    }

    private static boolean locks(FileChannel channel) {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return false;
        } catch (IOException e) {
            // A file system without locks: better kept without one than not kept.
            return true;
        }
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
