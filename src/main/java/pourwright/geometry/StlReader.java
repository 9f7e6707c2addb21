package pourwright.geometry;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Triangles from an STL file, text or binary. Stored normals are ignored: the order of the corners says the same. */
final class StlReader {
    static final int HEADER = 80;
    private static final int RECORD = 50;
    private static final int BLOCK = 1000;
    private static final long UNSIGNED = 0xFFFFFFFFL;

    private StlReader() {}

    /**
     * Reads the binary kind: 80 bytes of header, a count, and 50 bytes for each triangle.
     *
     * @param size length of the file in bytes, or -1 when not known before reading
     */
    static void binary(ByteFeed bytes, long size, Limits limits, Soup soup) {
        byte[] head = new byte[HEADER + 4];
        if (bytes.readFully(head, head.length) < head.length) {
            throw new MeshFault("The file is too short for a mesh; STL, PLY and OBJ are accepted.");
        }
        long count = ByteBuffer.wrap(head).order(ByteOrder.LITTLE_ENDIAN).getInt(HEADER) & UNSIGNED;
        if (count == 0) {
            throw new MeshFault("The STL file says it holds 0 triangles; a closed part needs at least 4.");
        }
        if (size >= 0 && (size - head.length) / RECORD < count) {
            throw cutShort(count, (size - head.length) / RECORD);
        }
        if (count > limits.triangles()) {
            throw new MeshFault(
                    "The STL file says " + count + " triangles; the most accepted is " + limits.triangles() + ".");
        }
        byte[] block = new byte[RECORD * BLOCK];
        ByteBuffer numbers = ByteBuffer.wrap(block).order(ByteOrder.LITTLE_ENDIAN);
        long done = 0;
        while (done < count) {
            int wanted = (int) Math.min(BLOCK, count - done) * RECORD;
            int got = bytes.readFully(block, wanted);
            for (int at = 0; at + RECORD <= got; at += RECORD) {
                triangle(numbers, at + 12, ++done, soup);
            }
            if (got < wanted) {
                throw cutShort(count, done);
            }
        }
        afterTheLast(bytes, count, soup);
    }

    private static void triangle(ByteBuffer numbers, int at, long number, Soup soup) {
        int a = vertex(numbers, at, number, soup);
        int b = vertex(numbers, at + 12, number, soup);
        int c = vertex(numbers, at + 24, number, soup);
        soup.triangle(a, b, c);
    }

    private static int vertex(ByteBuffer numbers, int at, long number, Soup soup) {
        float x = numbers.getFloat(at);
        float y = numbers.getFloat(at + 4);
        float z = numbers.getFloat(at + 8);
        return soup.vertex(x, y, z, new Place("triangle", number));
    }

    private static MeshFault cutShort(long says, long holds) {
        return new MeshFault("The STL file says " + says + " triangles but holds " + holds
                + "; it may be cut short, or it is no STL file.");
    }

    private static void afterTheLast(ByteFeed bytes, long count, Soup soup) {
        long extra = 0;
        for (int c = bytes.read(); c >= 0; c = bytes.read()) {
            extra++;
            if (c != 0) {
                throw new MeshFault("The STL file says " + count + " triangles but holds more bytes after them.");
            }
        }
        if (extra > 0) {
            soup.notes.add("The file ends with " + extra + " zero bytes that belong to no triangle.");
        }
    }

    /** Reads the text kind, any number of solids. */
    static void text(TextFeed words, Soup soup) {
        boolean solid = false;
        long number = 0;
        while (words.nextWord()) {
            if (words.is("solid") || words.is("endsolid")) {
                solid = true;
                words.endLine();
            } else if (words.is("facet")) {
                facet(words, ++number, soup);
            } else {
                throw new MeshFault(
                        "Line " + words.line() + ": expected facet or endsolid, found " + words.text() + ".");
            }
        }
        if (!solid || number == 0) {
            throw new MeshFault("The STL file holds no triangle; a closed part needs at least 4.");
        }
    }

    private static void facet(TextFeed words, long number, Soup soup) {
        expect(words, "normal");
        for (int i = 0; i < 3; i++) {
            next(words);
        }
        expect(words, "outer");
        expect(words, "loop");
        int[] corners = new int[3];
        for (int i = 0; i < 3; i++) {
            expect(words, "vertex");
            next(words);
            double x = words.coordinate();
            next(words);
            double y = words.coordinate();
            next(words);
            double z = words.coordinate();
            corners[i] = soup.vertex(x, y, z, new Place("triangle " + number + ", line", words.line()));
        }
        expect(words, "endloop");
        expect(words, "endfacet");
        soup.triangle(corners[0], corners[1], corners[2]);
    }

    private static void next(TextFeed words) {
        if (!words.nextWord()) {
            throw new MeshFault("The STL file ends inside a facet, at line " + words.line() + ".");
        }
    }

    private static void expect(TextFeed words, String expected) {
        next(words);
        if (!words.is(expected)) {
            throw new MeshFault("Line " + words.line() + ": expected " + expected + ", found " + words.text() + ".");
        }
    }
}
