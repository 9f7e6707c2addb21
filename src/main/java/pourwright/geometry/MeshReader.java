package pourwright.geometry;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Reads a mesh from bytes: STL text or binary, PLY text or binary, OBJ. The content decides the kind, not the name. */
public final class MeshReader {
    private static final int FIRST_LOOK = 1024;

    private MeshReader() {}

    /**
     * Reads and checks a mesh.
     *
     * @param in            the file's bytes; not closed here
     * @param name          the file's name, which leads every fault and helps where the content leaves the kind open
     * @param limits        how much is accepted
     * @param metresPerUnit length of one unit of the file, m; 0.001 when it is in millimetres
     * @return the mesh in metres
     * @throws MeshFault when it is no closed mesh, with one sentence that says what and where
     */
    public static Mesh read(InputStream in, String name, Limits limits, double metresPerUnit) {
        return read(in, -1, name, limits, metresPerUnit);
    }

    static Mesh read(InputStream in, long size, String name, Limits limits, double metresPerUnit) {
        try {
            return MeshBuilder.build(soup(in, size, name, limits), metresPerUnit);
        } catch (MeshFault e) {
            throw new MeshFault(name + ": " + e.getMessage());
        } catch (UncheckedIOException e) {
            throw new MeshFault(name + " cannot be read: " + reason(e.getCause()) + ".");
        }
    }

    private static String reason(IOException e) {
        return e.getMessage() == null ? "the system gave no reason" : e.getMessage();
    }

    static Soup soup(InputStream in, long size, String name, Limits limits) {
        ByteFeed bytes = new ByteFeed(in, limits.bytes());
        byte[] start = bytes.peek(FIRST_LOOK);
        if (start.length == 0) {
            throw new MeshFault("The file is empty; STL, PLY and OBJ are accepted.");
        }
        if (begins(start, 0, 0xEF, 0xBB, 0xBF)) {
            bytes.skip(3);
            start = bytes.peek(FIRST_LOOK);
        }
        refuseOtherKinds(start);
        Soup soup = new Soup(limits);
        String text = new String(start, StandardCharsets.ISO_8859_1);
        String lower = text.toLowerCase(Locale.ROOT);
        if (lower.startsWith("ply\n") || lower.startsWith("ply\r") || lower.startsWith("ply ")) {
            PlyReader.read(bytes, limits, soup);
        } else if (isTextStl(lower, start)) {
            StlReader.text(new TextFeed(bytes, false), soup);
        } else if (isObj(lower, start, name)) {
            ObjReader.read(new TextFeed(bytes, true), limits, soup);
        } else {
            StlReader.binary(bytes, size, limits, soup);
        }
        return soup;
    }

    private static boolean begins(byte[] bytes, int at, int... expected) {
        if (bytes.length < at + expected.length) {
            return false;
        }
        for (int i = 0; i < expected.length; i++) {
            if ((bytes[at + i] & 0xFF) != expected[i]) {
                return false;
            }
        }
        return true;
    }

    private static void refuseOtherKinds(byte[] start) {
        if (begins(start, 0, 0x1F, 0x8B) || begins(start, 0, 'P', 'K', 3, 4)) {
            throw new MeshFault("The file is compressed; unpack it first. STL, PLY and OBJ are accepted.");
        }
        if (begins(start, 0, 0x89, 'P', 'N', 'G')
                || begins(start, 0, 0xFF, 0xD8, 0xFF)
                || begins(start, 0, 'G', 'I', 'F')) {
            throw new MeshFault("The file is a picture, not a mesh; STL, PLY and OBJ are accepted.");
        }
    }

    /** Text STL begins with the word solid; so do some binary files, but those hold other than text after the header. */
    private static boolean isTextStl(String lower, byte[] start) {
        String trimmed = lower.stripLeading();
        if (trimmed.startsWith("facet")) {
            return isText(start, 0);
        }
        if (!trimmed.startsWith("solid")) {
            return false;
        }
        int lineEnd = trimmed.indexOf('\n');
        String rest = lineEnd < 0 ? "" : trimmed.substring(lineEnd).stripLeading();
        boolean goesOn = rest.startsWith("facet") || rest.startsWith("endsolid") || rest.startsWith("solid");
        boolean inTheName = lineEnd < 0 && isText(start, 0);
        int body = Math.max(StlReader.HEADER, start.length - trimmed.length() + Math.max(lineEnd, 0));
        return (goesOn || inTheName) && isText(start, body) || isText(start, 0) && trimmed.contains("facet");
    }

    private static boolean isText(byte[] bytes, int from) {
        for (int i = from; i < bytes.length; i++) {
            int c = bytes[i] & 0xFF;
            if (c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != 0x0B && c != '\f') {
                return false;
            }
        }
        return true;
    }

    private static boolean isObj(String lower, byte[] start, String name) {
        if (!isText(start, 0)) {
            return false;
        }
        if (name.toLowerCase(Locale.ROOT).endsWith(".obj")) {
            return true;
        }
        return lower.lines().anyMatch(line -> {
            String trimmed = line.strip();
            return trimmed.startsWith("v ") || trimmed.startsWith("v\t") || trimmed.startsWith("mtllib ");
        });
    }
}
