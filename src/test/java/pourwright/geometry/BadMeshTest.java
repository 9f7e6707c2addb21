package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.testing.Generated;

/** Files that cannot be used end in one sentence; a fault that has one answer is repaired, and the repair is told. */
class BadMeshTest {
    private static final Figure BOX = Shapes.box(0, 0, 0, 60, 40, 30);
    private static final double BOX_M3 = 72000e-9;

    private static void faults(byte[] file, String name, String... says) {
        assertThatThrownBy(() -> Figure.read(file, name))
                .isInstanceOf(MeshFault.class)
                .hasMessageStartingWith(name + ": ")
                .satisfies(e -> assertThat(e.getMessage()).contains(says));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static void holds(Mesh mesh, double volumeM3) {
        assertThat(mesh.report().volumeM3()).isCloseTo(volumeM3, Percentage.withPercentage(1e-4));
    }

    private static byte[] counting(byte[] stl, int count) {
        ByteBuffer.wrap(stl).order(ByteOrder.LITTLE_ENDIAN).putInt(80, count);
        return stl;
    }

    @Test
    void countsThatLieAreNamed() {
        faults(Arrays.copyOf(BOX.stl(), 84 + 50 * 5 + 7), "cut.stl", "says 12 triangles", "holds 5");
        faults(counting(BOX.stl(), 11), "more.stl", "says 11 triangles", "more bytes");
        faults(counting(BOX.stl(), 0), "none.stl", "0 triangles");
        faults(counting(Arrays.copyOf(BOX.stl(), 134), -1), "huge.stl", "4294967295");
        byte[] bigEndian = BOX.stl();
        ByteBuffer.wrap(bigEndian).order(ByteOrder.BIG_ENDIAN).putInt(80, 12);
        faults(bigEndian, "wrong.stl", "triangles");
    }

    @Test
    void zeroBytesAfterTheLastTriangleAreOnlyNoted() {
        Mesh mesh = Figure.read(Arrays.copyOf(BOX.stl(), 84 + 50 * 12 + 4), "box.stl");

        holds(mesh, BOX_M3);
        assertThat(mesh.report().notes()).anyMatch(note -> note.contains("4 zero bytes"));
    }

    @Test
    void numbersThatAreNoneAreNamedWithTheirTriangle() {
        byte[] nan = BOX.stl();
        ByteBuffer.wrap(nan).order(ByteOrder.LITTLE_ENDIAN).putFloat(84 + 50 * 6 + 12, Float.NaN);
        faults(nan, "nan.stl", "triangle 7", "not a number");
        byte[] huge = BOX.stl();
        ByteBuffer.wrap(huge).order(ByteOrder.LITTLE_ENDIAN).putFloat(84 + 12, 1e38f);
        faults(huge, "huge.stl", "triangle 1", "too large");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ply/format ascii 1.0/element vertex 8/property float x/end_header/ | x, y and z",
                "ply/format ascii 1.0/element vertex 3/property float x/property float y/property float z/end_header/0 0 0/0 0 1/0 1 0/ | no face element",
                "ply/format ascii 1.0/element vertex 9999999999/property float x/property float y/property float z/end_header/ | most accepted",
                "ply/format ascii 1.0/element vertex 5/property float x/property float y/property float z/end_header/1 2 3/ | says 5 of vertex but holds 1",
                "ply/format ascii 1.0/element vertex 1/property quad x/ | unknown type",
                "ply/format morse 1.0/end_header/ | format morse",
                "ply/format ascii 1.0/element vertex 1/property float x/ | no end_header",
                "ply/element vertex 0/end_header/ | no format",
                "ply/format ascii 1.0/banana/ | banana",
                "ply/format ascii 1.0/element vertex -4/ | not a count",
            })
    void plyFaultsAreNamed(String file, String says) {
        faults(bytes(file.replace('/', '\n')), "a.ply", says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | list of 0",
                "3 0 1 99 | vertex 99",
                "3 0 1 -1 | cannot exist",
                "1000000000 0 1 2 | says 1 of face but holds 0",
            })
    void plyListsThatLieAreNamed(String face, String says) {
        String head = """
                ply
                format ascii 1.0
                element vertex 3
                property float x
                property float y
                property float z
                element face 1
                property list uint int vertex_indices
                end_header
                0 0 0
                1 0 0
                0 1 0
                """;
        faults(bytes(head + face + "\n"), "a.ply", says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "f 0 1 2 | they count from 1",
                "f 1 2 9 | there are 3",
                "f -9 1 2 | no vertex -9",
                "l 1 2 | no face",
                "f x y z | x",
            })
    void objFaultsAreNamed(String face, String says) {
        faults(bytes("v 0 0 0\nv 1 0 0\nv 0 1 0\n" + face + "\n"), "a.obj", says);
    }

    @Test
    void textStlCutInsideAFacetIsNamedWithItsLine() {
        String text = new String(BOX.textStl(), StandardCharsets.US_ASCII);
        faults(bytes(text.substring(0, text.lastIndexOf("vertex"))), "a.stl", "ends inside a facet", "line");
        faults(bytes("solid nothing\nendsolid\n"), "a.stl", "no triangle");
    }

    @Test
    void otherFilesAreRecognised(@TempDir Path folder) throws IOException {
        faults(new byte[0], "a.stl", "empty");
        faults(new byte[] {0x1F, (byte) 0x8B, 8, 0, 0}, "a.stl", "compressed");
        faults(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}, "a.stl", "picture");
        faults(bytes("What a nice day."), "a.txt", "STL, PLY and OBJ");
        assertThatThrownBy(() -> MeshFile.read(folder, Limits.USUAL, 1)).hasMessageContaining("folder");
        assertThatThrownBy(() -> MeshFile.read(folder.resolve("no.stl"), Limits.USUAL, 1))
                .isInstanceOf(MeshFault.class)
                .hasMessage("no.stl does not exist.");
        Path odd = folder.resolve("a part \u00e4\u4f60.stl");
        Files.write(odd, BOX.stl());
        holds(MeshFile.read(odd, Limits.USUAL, 0.001), BOX_M3);
        Path cut = folder.resolve("cut.stl");
        Files.write(cut, Arrays.copyOf(BOX.stl(), 200));
        assertThatThrownBy(() -> MeshFile.read(cut, Limits.USUAL, 0.001)).hasMessageContaining("holds 2");
    }

    @Test
    void limitsAreKept() {
        Limits few = new Limits(1000, 10, 100);
        assertThatThrownBy(() -> MeshReader.read(new java.io.ByteArrayInputStream(BOX.stl()), "a.stl", few, 1))
                .hasMessageContaining("most accepted is 10");
        assertThatThrownBy(() -> MeshReader.read(new java.io.ByteArrayInputStream(BOX.textStl()), "a.stl", few, 1))
                .isInstanceOf(MeshFault.class);
    }

    @Test
    void aHoleIsAFaultThatCountsItsEdgesAndSaysWhere() {
        Figure open = BOX.copy();
        open.triangles.remove(3);
        faults(open.stl(), "a.stl", "not closed", "3 open edges", "mm");
    }

    @Test
    void aFlatOrTinySetOfTrianglesIsAFault() {
        Figure flat = new Figure();
        flat.quad(flat.corner(0, 0, 0), flat.corner(1, 0, 0), flat.corner(1, 1, 0), flat.corner(0, 1, 0));
        faults(flat.stl(), "a.stl", "not closed");
        faults(flat.with(flat.reversed()).stl(), "a.stl", "at least 4");
        faults(Shapes.box(0, 0, 0, 10, 10, 0).stl(), "a.stl", "at least 4");
    }

    @Test
    void repairsWithOneAnswerAreMadeAndTold() {
        Mesh insideOut = BOX.reversed().mesh();
        holds(insideOut, BOX_M3);
        assertThat(insideOut.report().notes()).anyMatch(note -> note.contains("inside out"));

        Figure turned = BOX.copy();
        int[] t = turned.triangles.get(5);
        turned.triangles.set(5, new int[] {t[0], t[2], t[1]});
        holds(turned.mesh(), BOX_M3);
        assertThat(turned.mesh().report().flipped()).isEqualTo(1);

        Figure twice = BOX.copy();
        twice.triangles.add(BOX.triangles.get(4));
        holds(twice.mesh(), BOX_M3);
        assertThat(twice.mesh().report().doubled()).isEqualTo(1);

        Figure cancelling = BOX.copy();
        int[] s = BOX.triangles.get(4);
        cancelling.triangles.add(BOX.triangles.get(4));
        cancelling.triangles.add(new int[] {s[0], s[2], s[1]});
        holds(cancelling.mesh(), BOX_M3);

        Figure needle = BOX.copy();
        needle.triangles.add(new int[] {s[0], s[0], s[1]});
        holds(needle.mesh(), BOX_M3);
        assertThat(needle.mesh().report().dropped()).isEqualTo(1);
    }

    @Test
    void aSeamWithAVertexInTheMiddleOfAnEdgeIsClosed() {
        Figure seam = BOX.copy();
        int[] t = seam.triangles.remove(0);
        double[] a = seam.corners.get(t[0]);
        double[] b = seam.corners.get(t[1]);
        int middle = seam.corner((a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2);
        seam.triangle(t[0], middle, t[2]);
        seam.triangle(middle, t[1], t[2]);

        Mesh mesh = seam.mesh();

        holds(mesh, BOX_M3);
        assertThat(mesh.report().split()).isPositive();
        assertThat(Pockets.find(mesh, Setup.of(Domain.AROUND)).pockets()).isEmpty();
    }

    @Test
    void shellsInsideShellsAreVoidsOrSolidByTheirSense() {
        Figure inner = Shapes.box(20, 10, 10, 40, 30, 20);
        Mesh hollow = BOX.with(inner.reversed()).mesh();
        holds(hollow, BOX_M3 - 4000e-9);
        assertThat(hollow.report().shells()).isEqualTo(2);

        Mesh solid = BOX.with(inner).mesh();
        holds(solid, BOX_M3);
        assertThat(solid.report().buriedShells()).isEqualTo(1);

        holds(BOX.with(inner.reversed()).reversed().mesh(), BOX_M3 - 4000e-9);
        Mesh oneWrong = BOX.with(Shapes.box(100, 0, 0, 110, 10, 10).reversed()).mesh();
        holds(oneWrong, BOX_M3 + 1000e-9);
    }

    @Test
    void cubesThatShareAnEdgeOrACornerAreFine() {
        Mesh onEdge = Shapes.box(0, 0, 0, 10, 10, 10)
                .with(Shapes.box(10, 0, 10, 20, 10, 20))
                .mesh();
        holds(onEdge, 2000e-9);
        assertThat(onEdge.report().manyFaced()).isEqualTo(1);
        holds(
                Shapes.box(0, 0, 0, 10, 10, 10)
                        .with(Shapes.box(10, 10, 10, 20, 20, 20))
                        .mesh(),
                2000e-9);
    }

    @Test
    void unlikelySizesAndOffsetsAreNoted() {
        assertThat(BOX.moved(v -> v.times(1e-3)).mesh().report().notes()).anyMatch(note -> note.contains("unit"));
        assertThat(BOX.moved(v -> v.times(1e5)).mesh().report().notes()).anyMatch(note -> note.contains("unit"));
        Mesh far = BOX.shifted(1e6, 1e6, 0).mesh();
        assertThat(far.report().notes()).anyMatch(note -> note.contains("far from the origin"));
        holds(far, BOX_M3);
    }

    @Test
    void manySeparatePartsAndSliversAreFine() {
        Figure many = new Figure();
        for (int i = 0; i < 2000; i++) {
            int x = i % 50 * 20;
            int y = i / 50 * 20;
            Figure box = Shapes.box(x, y, 0, x + 10, y + 10, 10);
            int shift = many.corners.size();
            many.corners.addAll(box.corners);
            box.triangles.forEach(t -> many.triangle(t[0] + shift, t[1] + shift, t[2] + shift));
        }
        holds(many.mesh(), 2000e-6);
        holds(Shapes.box(0, 0, 0, 1e6, 1, 1).mesh(), 1e6 * 1e-9);
        holds(
                Shapes.turned(new double[][] {{0, 0}, {1e-5, 1e-6}, {20, 10}, {0, 20}}, 7)
                        .mesh(),
                7 * 0.5 * 400 * Math.sin(2 * Math.PI / 7) * 20 / 3 * 1e-9);
    }

    @Test
    void trashNeverEndsInAnythingButAFault() {
        byte[][] sound = {
            BOX.stl(), BOX.textStl(), BOX.obj(), BOX.ply(ByteOrder.LITTLE_ENDIAN), BOX.ply(ByteOrder.BIG_ENDIAN)
        };
        Stream<Generated> tries = Generated.tries(61, 4000);
        tries.forEach(g -> {
            byte[] file = spoiled(g, sound);
            try {
                Figure.read(file, "trash.stl");
            } catch (MeshFault e) {
                assertThat(e.getMessage())
                        .as(g.toString())
                        .startsWith("trash.stl: ")
                        .doesNotContain("Exception");
            }
        });
    }

    private static byte[] spoiled(Generated g, byte[][] sound) {
        byte[] file = g.pick(sound).clone();
        int flips = g.whole(0, 5);
        for (int i = 0; i < flips; i++) {
            file[g.whole(0, Math.min(file.length - 1, g.pick(100, 400, 100000)))] = (byte) g.whole(0, 255);
        }
        int cut = g.whole(0, 3) == 0 ? g.whole(1, file.length) : file.length;
        byte[] out = Arrays.copyOf(file, cut);
        if (g.whole(0, 4) == 0) {
            byte[] other = g.pick(sound);
            int from = g.whole(0, out.length - 1);
            int length = Math.min(out.length - from, g.whole(1, other.length));
            System.arraycopy(other, 0, out, from, length);
        }
        return out;
    }
}
