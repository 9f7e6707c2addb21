package pourwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** Vertices and faces from a PLY file: text, or binary of either byte order; other elements and properties are skipped. */
final class PlyReader {
    private static final int MOST_ELEMENTS = 100;

    private record Property(String name, PlyType count, PlyType type) {}

    private record Element(String name, long count, List<Property> properties) {}

    private PlyReader() {}

    static void read(ByteFeed bytes, Limits limits, Soup soup) {
        TextFeed words = new TextFeed(bytes, false);
        List<Element> elements = new ArrayList<>();
        PlyValues values = header(words, bytes, elements);
        Polygons polygons = new Polygons(limits);
        boolean faces = false;
        for (Element element : elements) {
            boolean isVertex = element.name().equals("vertex");
            boolean isFace = element.name().equals("face") || element.name().equals("tristrips");
            long most = isVertex ? limits.vertices() : isFace ? limits.triangles() : limits.bytes();
            if (element.count() > most) {
                throw new MeshFault("The PLY file says " + element.count() + " of " + element.name()
                        + "; the most accepted is " + most + ".");
            }
            faces |= element.name().equals("face");
            body(element, values, polygons);
        }
        if (!faces) {
            throw new MeshFault("The PLY file has no face element; a surface of triangles or polygons is needed.");
        }
        polygons.into(soup, "vertex", "face");
    }

    private static PlyValues header(TextFeed words, ByteFeed bytes, List<Element> elements) {
        PlyValues values = null;
        line(words);
        while (true) {
            if (!words.endLine()) {
                throw new MeshFault("The PLY header has no end_header line.");
            }
            if (!words.nextInLine() || words.is("comment") || words.is("obj_info") || words.is("ply")) {
                continue;
            }
            if (words.is("end_header")) {
                break;
            } else if (words.is("format")) {
                values = PlyValues.of(need(words, "a format"), words, bytes);
            } else if (words.is("element")) {
                if (elements.size() == MOST_ELEMENTS) {
                    throw new MeshFault("The PLY header names more than " + MOST_ELEMENTS + " elements.");
                }
                String name = need(words, "the element's name");
                need(words, "the element's count");
                elements.add(new Element(name, count(words), new ArrayList<>()));
            } else if (words.is("property") && !elements.isEmpty()) {
                elements.get(elements.size() - 1).properties().add(property(words));
            } else {
                throw new MeshFault(
                        "Line " + words.line() + " of the PLY header is not understood: " + words.text() + ".");
            }
        }
        words.endLine();
        if (values == null) {
            throw new MeshFault("The PLY header names no format; ascii and binary of either byte order are accepted.");
        }
        return values;
    }

    private static void line(TextFeed words) {
        if (!words.nextInLine() || !words.is("ply")) {
            throw new MeshFault("The file does not begin with ply.");
        }
    }

    private static String need(TextFeed words, String what) {
        if (!words.nextInLine()) {
            throw new MeshFault("Line " + words.line() + " of the PLY header lacks " + what + ".");
        }
        return words.text();
    }

    private static long count(TextFeed words) {
        double count = words.number();
        if (!(count >= 0 && count <= 1e15 && count == Math.rint(count))) {
            throw new MeshFault("Line " + words.line() + ": " + words.text() + " is not a count.");
        }
        return (long) count;
    }

    private static Property property(TextFeed words) {
        String type = need(words, "the property's type");
        PlyType count = null;
        if (type.equals("list")) {
            count = PlyType.of(need(words, "the type of the list's count"), words.line());
            type = need(words, "the type of the list");
        }
        PlyType value = PlyType.of(type, words.line());
        return new Property(need(words, "the property's name"), count, value);
    }

    private static void body(Element element, PlyValues values, Polygons polygons) {
        boolean isVertex = element.name().equals("vertex");
        boolean isFace = element.name().equals("face");
        boolean located =
                element.properties().stream().filter(p -> isAxis(p.name())).count() == 3;
        if (isVertex && !located) {
            throw new MeshFault("The vertices of the PLY file need the properties x, y and z, once each.");
        }
        if (isFace && element.properties().stream().noneMatch(PlyReader::isRing)) {
            throw new MeshFault("The faces of the PLY file need a list named vertex_indices.");
        }
        if (element.properties().isEmpty()) {
            return;
        }
        double[] at = new double[3];
        for (long i = 0; i < element.count(); i++) {
            values.startElement(element.name(), element.count(), i);
            for (Property property : element.properties()) {
                if (property.count() != null) {
                    list(property, values, isFace && isRing(property) ? polygons : null, i);
                } else {
                    double value = values.next(property.type());
                    if (isVertex && isAxis(property.name())) {
                        at[property.name().charAt(0) - 'x'] = value;
                    }
                }
            }
            if (isVertex) {
                polygons.vertex(at[0], at[1], at[2]);
            }
        }
    }

    private static boolean isAxis(String name) {
        return name.equals("x") || name.equals("y") || name.equals("z");
    }

    private static boolean isRing(Property property) {
        return property.count() != null
                && (property.name().equals("vertex_indices") || property.name().equals("vertex_index"));
    }

    private static void list(Property property, PlyValues values, Polygons polygons, long number) {
        double length = values.next(property.count());
        if (!(length >= 0 && length == Math.rint(length)) || (polygons != null && length == 0)) {
            throw new MeshFault("Item " + (number + 1) + " of the PLY file has a list of " + length + " entries.");
        }
        if (polygons == null) {
            for (long i = 0; i < (long) length; i++) {
                values.next(property.type());
            }
            return;
        }
        polygons.begin((int) number + 1);
        for (long i = 0; i < (long) length; i++) {
            double index = values.next(property.type());
            if (!(index >= 0 && index <= Integer.MAX_VALUE && index == Math.rint(index))) {
                throw new MeshFault("Face " + (number + 1) + " of the PLY file asks for a vertex that cannot exist: "
                        + index + ".");
            }
            polygons.corner((int) index);
        }
    }
}
