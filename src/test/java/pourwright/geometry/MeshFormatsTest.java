package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every kind of file gives the same mesh, and odd but sound files are read. */
class MeshFormatsTest {
    private static final Figure BOX = Shapes.box(0, 0, 0, 60, 40, 30.5);

    private static Mesh text(String name, String content) {
        return Figure.read(content.getBytes(StandardCharsets.ISO_8859_1), name);
    }

    private static String boxText() {
        return new String(BOX.textStl(), StandardCharsets.US_ASCII);
    }

    private static void isTheBox(Mesh mesh) {
        Mesh expected = BOX.mesh();
        assertThat(mesh.xyz).containsExactly(expected.xyz);
        assertThat(mesh.triangles).containsExactly(expected.triangles);
    }

    @Test
    void allKindsOfFileGiveTheSameMesh() {
        isTheBox(Figure.read(BOX.stl(), "box.stl"));
        isTheBox(Figure.read(BOX.textStl(), "box.stl"));
        isTheBox(Figure.read(BOX.obj(), "box.obj"));
        isTheBox(Figure.read(BOX.ply(ByteOrder.BIG_ENDIAN), "box.ply"));
        isTheBox(Figure.read(BOX.obj(), "no ending"));
    }

    @Test
    void theContentDecidesAndNotTheName() {
        byte[] solid = BOX.stl();
        System.arraycopy("solid made by hand".getBytes(StandardCharsets.US_ASCII), 0, solid, 0, 18);
        isTheBox(Figure.read(solid, "box.stl"));
        byte[] tricky = BOX.stl();
        System.arraycopy("solid x\nfacet normal 0 0 0".getBytes(StandardCharsets.US_ASCII), 0, tricky, 0, 26);
        isTheBox(Figure.read(tricky, "box.stl"));
        byte[] coloured = BOX.stl();
        for (int i = 0; i < BOX.triangles.size(); i++) {
            coloured[84 + 50 * i + 48] = (byte) 0xA7;
        }
        isTheBox(Figure.read(coloured, "box.stl"));
        byte[] nanNormals = BOX.stl();
        ByteBuffer.wrap(nanNormals).order(ByteOrder.LITTLE_ENDIAN).putFloat(84, Float.NaN);
        isTheBox(Figure.read(nanNormals, "box.stl"));
    }

    @Test
    void textStlMayBeWrittenInManyWays() {
        isTheBox(text("a.stl", boxText().toUpperCase(Locale.ROOT)));
        isTheBox(text("a.stl", boxText().replace("\n", "\r\n")));
        isTheBox(text("a.stl", boxText().replace(" ", "\t")));
        isTheBox(text("a.stl", boxText().replace("solid figure", "solid")));
        isTheBox(text("a.stl", boxText().replace("endsolid figure\n", "")));
        isTheBox(text(
                "a.stl", "\u00ef\u00bb\u00bf" + boxText().replace("solid figure", "solid a name \u00e4 with spaces")));
        isTheBox(text(
                "a.stl",
                boxText().replace("60.0", "+6.E+01").replace("30.5", "305e-1").replace(" 0.0", " .0")));
        isTheBox(text("a.stl", boxText().replace("normal 0 0 0", "normal nan -nan 1.#QNAN")));
        int half = boxText().indexOf(" facet", boxText().length() / 2);
        isTheBox(text(
                "a.stl",
                boxText().substring(0, half) + "endsolid one\nsolid two\n"
                        + boxText().substring(half)));
    }

    @Test
    void textStlWhoseSizeFitsTheBinaryRuleIsStillText() {
        byte[] content = BOX.textStl();
        int bytes = content.length;
        int wanted = 84 + 50 * ((bytes - 84) / 50 + 1);
        byte[] padded = Arrays.copyOf(content, wanted);
        Arrays.fill(padded, bytes, wanted, (byte) ' ');
        isTheBox(Figure.read(padded, "a.stl"));
    }

    @Test
    void plyMayHoldOtherPropertiesAndElementsInAnyOrder() {
        StringBuilder ply = new StringBuilder(
                "ply\r\nformat ascii 1.0\r\ncomment x y\r\nelement camera 1\r\nproperty list uchar float view\r\n");
        ply.append("element vertex ").append(BOX.corners.size());
        ply.append("\r\nproperty uchar red\r\nproperty float z\r\nproperty double x\r\nproperty float y\r\n");
        ply.append("element face ").append(BOX.triangles.size());
        ply.append("\r\nproperty int flags\r\nproperty list ushort uint vertex_index\r\nend_header\r\n2 0.5 0.25\r\n");
        BOX.corners.forEach(c -> ply.append("7 ")
                .append(c[2])
                .append(' ')
                .append(c[0])
                .append(' ')
                .append(c[1])
                .append("\r\n"));
        BOX.triangles.forEach(t -> ply.append("0 3 ")
                .append(t[0])
                .append(' ')
                .append(t[1])
                .append(' ')
                .append(t[2])
                .append("\r\n"));
        isTheBox(text("a.ply", ply.toString()));
    }

    @Test
    void objMayUsePolygonsRelativeNumbersColoursAndContinuedLines() {
        String faces = "f -8/1 -6/2/3 \\\n  -5//4 -7\nf 5 6 8 7 # top\nf 1 2 6 5\nf 3 7 8 4\nf 1 5 7 3\nf 2 4 8 6\n";
        StringBuilder vertices = new StringBuilder("mtllib none.mtl\no box\n");
        for (int i = 0; i < 8; i++) {
            vertices.append("v ")
                    .append((i & 1) * 60)
                    .append(' ')
                    .append((i >> 1 & 1) * 40)
                    .append(' ')
                    .append((i >> 2 & 1) * 30.5)
                    .append(" 0.1 0.2 0.3\n");
        }
        Mesh mesh = text("a.obj", vertices + "vt 0 0\nvn 0 0 1\ng side\nusemtl red\ns off\n" + faces);

        assertThat(mesh.report().volumeM3())
                .isCloseTo(60 * 40 * 30.5e-9, org.assertj.core.data.Percentage.withPercentage(1e-9));
        // Faces may come before the vertices they name.
        Mesh swapped = text("a.obj", "f 1 3 4 2\n" + faces.substring(faces.indexOf("f 5")) + vertices);
        assertThat(swapped.triangles).hasSize(36);
    }

    @Test
    void aConcavePolygonIsCutRight() {
        StringBuilder obj = new StringBuilder();
        int corners = 100;
        for (int z = 0; z <= 1; z++) {
            for (int i = 0; i < corners; i++) {
                double r = i % 2 == 0 ? 50 : 20;
                double angle = 2 * Math.PI * i / corners;
                obj.append(String.format(
                        Locale.ROOT, "v %.9f %.9f %d%n", r * Math.cos(angle), r * Math.sin(angle), 10 * z));
            }
        }
        StringBuilder bottom = new StringBuilder("f");
        StringBuilder top = new StringBuilder("f");
        for (int i = 0; i < corners; i++) {
            bottom.append(' ').append(corners - i);
            top.append(' ').append(corners + 1 + i);
            int j = (i + 1) % corners;
            obj.append("f ")
                    .append(i + 1)
                    .append(' ')
                    .append(j + 1)
                    .append(' ')
                    .append(corners + j + 1)
                    .append(' ')
                    .append(corners + i + 1)
                    .append('\n');
        }
        Mesh star = text("star.obj", obj + bottom.toString() + "\n" + top + "\n");

        double area = corners * 0.5 * 50 * 20 * Math.sin(2 * Math.PI / corners);
        assertThat(star.report().volumeM3())
                .isCloseTo(area * 10e-9, org.assertj.core.data.Percentage.withPercentage(1e-5));
        assertThat(star.report().crossings()).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "1,5 | use a point for decimals",
                "abc | is not a number",
                "1e999 | not a number",
                "nan | not a number",
                "0x10 | is not a number",
                "1e20 | too large",
            })
    void aBadNumberIsAFaultWithItsLine(String number, String says) {
        String broken = boxText().replaceFirst("vertex 0.0", "vertex " + number);

        assertThatThrownBy(() -> text("a.stl", broken))
                .isInstanceOf(MeshFault.class)
                .hasMessageStartingWith("a.stl: ")
                .hasMessageContaining(says)
                .hasMessageMatching("(?s).*[Ll]ine \\d+.*");
    }
}
