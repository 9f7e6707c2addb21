package pourwright.geometry;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The bytes of a mesh file, counted and never more than the limit, with a first look that takes nothing. */
final class ByteFeed {
    private static final int BUFFER = 1 << 16;

    private final InputStream in;
    private final long limit;
    private final byte[] buffer = new byte[BUFFER];
    private int next;
    private int end;
    private long taken;

    ByteFeed(InputStream in, long limit) {
        this.in = in;
        this.limit = limit;
    }

    /** The next byte, or -1 at the end. */
    int read() {
        if (next == end && !fill(1)) {
            return -1;
        }
        return buffer[next++] & 0xFF;
    }

    /** Bytes read so far. */
    long position() {
        return taken - (end - next);
    }

    /** The next bytes without taking them, as many as there are up to a count of at most 4096. */
    byte[] peek(int count) {
        fill(count);
        return java.util.Arrays.copyOfRange(buffer, next, next + Math.min(count, end - next));
    }

    /** Fills a block wholly; says how many bytes there were. */
    int readFully(byte[] block, int count) {
        int done = 0;
        while (done < count) {
            if (next == end && !fill(1)) {
                return done;
            }
            int part = Math.min(count - done, end - next);
            System.arraycopy(buffer, next, block, done, part);
            next += part;
            done += part;
        }
        return done;
    }

    /** Takes a number of bytes without keeping them; false when the file ends before. */
    boolean skip(long count) {
        long left = count;
        while (left > 0) {
            if (next == end && !fill(1)) {
                return false;
            }
            int part = (int) Math.min(left, end - next);
            next += part;
            left -= part;
        }
        return true;
    }

    private boolean fill(int wanted) {
        if (end - next >= wanted) {
            return true;
        }
        System.arraycopy(buffer, next, buffer, 0, end - next);
        end -= next;
        next = 0;
        try {
            while (end < wanted) {
                int got = in.read(buffer, end, buffer.length - end);
                if (got < 0) {
                    break;
                }
                end += got;
                taken += got;
                if (taken > limit) {
                    throw new MeshFault("The file is larger than " + limit + " bytes, which is the most accepted.");
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return end >= wanted;
    }
}
