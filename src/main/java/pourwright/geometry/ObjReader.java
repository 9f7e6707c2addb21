package pourwright.geometry;

/** Vertices and faces from an OBJ file; colours, groups, materials, normals, lines and points are passed over. */
final class ObjReader {

    private ObjReader() {}

    static void read(TextFeed words, Limits limits, Soup soup) {
        Polygons polygons = new Polygons(limits);
        do {
            if (!words.nextInLine()) {
                continue;
            }
            if (words.is("v")) {
                polygons.vertex(coordinate(words), coordinate(words), coordinate(words));
            } else if (words.is("f")) {
                face(words, polygons);
            } else if (words.byteAt(0) == 0) {
                throw new MeshFault("Line " + words.line() + " is not text.");
            }
        } while (skipLine(words));
        polygons.into(soup, "vertex", "line");
    }

    /** Passes over the rest of a line, backslashes included. */
    private static boolean skipLine(TextFeed words) {
        while (words.nextInLine()) {
            // Nothing in the rest of the line is needed.
        }
        return words.endLine();
    }

    private static double coordinate(TextFeed words) {
        if (!words.nextInLine()) {
            throw new MeshFault("Line " + words.line() + ": a vertex needs three numbers.");
        }
        return words.coordinate();
    }

    private static void face(TextFeed words, Polygons polygons) {
        polygons.begin(words.line());
        while (words.nextInLine()) {
            if (words.byteAt(0) == '#') {
                return;
            }
            polygons.corner(index(words, polygons.vertices()));
        }
    }

    /** The vertex of a corner such as 5, 5/1, 5//2 or -1, counted from 0. */
    private static int index(TextFeed words, int vertices) {
        int at = 0;
        boolean negative = words.byteAt(0) == '-';
        if (negative || words.byteAt(0) == '+') {
            at++;
        }
        long value = 0;
        int digits = 0;
        for (; at < words.length() && words.byteAt(at) != '/'; at++) {
            int digit = words.byteAt(at) - '0';
            if (digit < 0 || digit > 9 || ++digits > 10) {
                throw new MeshFault("Line " + words.line() + ": " + words.text() + " is not the number of a vertex.");
            }
            value = value * 10 + digit;
        }
        long index = negative ? vertices - value : value - 1;
        if (digits == 0 || value == 0 || index < 0 || index > Integer.MAX_VALUE) {
            throw new MeshFault(
                    "Line " + words.line() + ": there is no vertex " + words.text() + "; they count from 1.");
        }
        return (int) index;
    }
}
