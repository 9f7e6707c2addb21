package pourwright.casebook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.OpenOption;
import java.nio.file.Path;

/** A disk with room for so many bytes: what does not fit is written in part, and then refused, as a real one does. */
final class FullDisk implements WholeFile.Opener {
    private int freeBytes;

    /** False when the disk takes the bytes and fails to store them for good. */
    boolean forces = true;

    FullDisk(int freeBytes) {
        this.freeBytes = freeBytes;
    }

    void free(int bytes) {
        freeBytes = bytes;
    }

    @Override
    public FileChannel open(Path file, OpenOption... options) throws IOException {
        return new Channel(FileChannel.open(file, options));
    }

    private final class Channel extends FileChannel {
        private final FileChannel real;

        Channel(FileChannel real) {
            this.real = real;
        }

        @Override
        public int write(ByteBuffer bytes) throws IOException {
            if (bytes.hasRemaining() && freeBytes == 0) {
                throw new IOException("No space left on device");
            }
            ByteBuffer part = bytes.slice();
            part.limit(Math.min(part.limit(), freeBytes));
            int written = real.write(part);
            bytes.position(bytes.position() + written);
            freeBytes -= written;
            return written;
        }

        @Override
        public void force(boolean metaData) throws IOException {
            if (!forces) {
                throw new IOException("Input/output error");
            }
            real.force(metaData);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            real.close();
        }

        @Override
        public long size() throws IOException {
            return real.size();
        }

        @Override
        public long position() throws IOException {
            return real.position();
        }

        @Override
        public int read(ByteBuffer to) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long read(ByteBuffer[] to, int offset, int length) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long write(ByteBuffer[] from, int offset, int length) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileChannel position(long to) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileChannel truncate(long size) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long transferTo(long position, long count, WritableByteChannel to) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long transferFrom(ReadableByteChannel from, long position, long count) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int read(ByteBuffer to, long position) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int write(ByteBuffer from, long position) {
            throw new UnsupportedOperationException();
        }

        @Override
        public MappedByteBuffer map(MapMode mode, long position, long size) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileLock lock(long position, long size, boolean shared) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) {
            throw new UnsupportedOperationException();
        }
    }
}
