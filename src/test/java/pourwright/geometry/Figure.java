package pourwright.geometry;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** A surface made by formula for tests: corners and triangles in millimetres, written as files of each kind. */
final class Figure {
    /** Length of a unit of these figures, m. */
    static final double MM = 0.001;

    final List<double[]> corners = new ArrayList<>();
    final List<int[]> triangles = new ArrayList<>();

    int corner(double x, double y, double z) {
        corners.add(new double[] {x, y, z});
        return corners.size() - 1;
    }

    void triangle(int a, int b, int c) {
        triangles.add(new int[] {a, b, c});
    }

    /** A four-cornered face, counter-clockwise seen from outside. */
    void quad(int a, int b, int c, int d) {
        triangle(a, b, c);
        triangle(a, c, d);
    }

    Figure with(Figure other) {
        Figure both = copy();
        int shift = corners.size();
        both.corners.addAll(other.corners);
        other.triangles.forEach(t -> both.triangle(t[0] + shift, t[1] + shift, t[2] + shift));
        return both;
    }

    Figure copy() {
        Figure copy = new Figure();
        copy.corners.addAll(corners);
        copy.triangles.addAll(triangles);
        return copy;
    }

    /** The same turned inside out, as for a void. */
    Figure reversed() {
        Figure out = new Figure();
        out.corners.addAll(corners);
        triangles.forEach(t -> out.triangle(t[0], t[2], t[1]));
        return out;
    }

    Figure moved(UnaryOperator<Vec3> move) {
        Figure out = new Figure();
        for (double[] c : corners) {
            Vec3 v = move.apply(new Vec3(c[0], c[1], c[2]));
            out.corner(v.x(), v.y(), v.z());
        }
        out.triangles.addAll(triangles);
        return out;
    }

    Figure shifted(double x, double y, double z) {
        return moved(v -> v.plus(new Vec3(x, y, z)));
    }

    /** Turned about the y axis: by 90 degrees the z axis comes to lie along x. */
    Figure turnedAboutY(double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        return moved(v -> new Vec3(c * v.x() + s * v.z(), v.y(), -s * v.x() + c * v.z()));
    }

    /** As the program reads it, with no digit lost. */
    Mesh mesh() {
        return read(ply(ByteOrder.LITTLE_ENDIAN), "figure.ply");
    }

    /** As it comes out of the usual file with its 32-bit numbers. */
    Mesh meshOfStl() {
        return read(stl(), "figure.stl");
    }

    static Mesh read(byte[] bytes, String name) {
        return MeshReader.read(new ByteArrayInputStream(bytes), name, Limits.USUAL, MM);
    }

    byte[] stl() {
        ByteBuffer out = ByteBuffer.allocate(84 + 50 * triangles.size()).order(ByteOrder.LITTLE_ENDIAN);
        out.position(80);
        out.putInt(triangles.size());
        for (int[] t : triangles) {
            out.putFloat(0).putFloat(0).putFloat(0);
            for (int v : t) {
                for (double x : corners.get(v)) {
                    out.putFloat((float) x);
                }
            }
            out.putShort((short) 0);
        }
        return out.array();
    }

    byte[] textStl() {
        StringBuilder out = new StringBuilder("solid figure\n");
        for (int[] t : triangles) {
            out.append(" facet normal 0 0 0\n  outer loop\n");
            for (int v : t) {
                out.append("   vertex");
                for (double x : corners.get(v)) {
                    out.append(' ').append((float) x);
                }
                out.append('\n');
            }
            out.append("  endloop\n endfacet\n");
        }
        return out.append("endsolid figure\n").toString().getBytes(StandardCharsets.US_ASCII);
    }

    byte[] obj() {
        StringBuilder out = new StringBuilder("# a figure\n");
        for (double[] c : corners) {
            out.append("v ")
                    .append((float) c[0])
                    .append(' ')
                    .append((float) c[1])
                    .append(' ')
                    .append((float) c[2])
                    .append('\n');
        }
        for (int[] t : triangles) {
            out.append("f ")
                    .append(t[0] + 1)
                    .append(' ')
                    .append(t[1] + 1)
                    .append(' ')
                    .append(t[2] + 1)
                    .append('\n');
        }
        return out.toString().getBytes(StandardCharsets.US_ASCII);
    }

    byte[] ply(ByteOrder order) {
        String format = order == ByteOrder.BIG_ENDIAN ? "binary_big_endian" : "binary_little_endian";
        String header = "ply\nformat " + format + " 1.0\ncomment made by formula\nelement vertex " + corners.size()
                + "\nproperty double x\nproperty double y\nproperty double z\nelement face " + triangles.size()
                + "\nproperty list uchar int vertex_indices\nend_header\n";
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(header.getBytes(StandardCharsets.US_ASCII));
        ByteBuffer body =
                ByteBuffer.allocate(24 * corners.size() + 13 * triangles.size()).order(order);
        for (double[] c : corners) {
            body.putDouble(c[0]).putDouble(c[1]).putDouble(c[2]);
        }
        for (int[] t : triangles) {
            body.put((byte) 3).putInt(t[0]).putInt(t[1]).putInt(t[2]);
        }
        out.writeBytes(body.array());
        return out.toByteArray();
    }
}
