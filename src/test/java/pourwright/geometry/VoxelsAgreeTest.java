package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pockets of figures with ears and limbs against the independent labelling of {@link Voxels}, in four attitudes. One figure
 * is made by formula; the other comes from a package of open models and is left out where that is not on the class path.
 */
class VoxelsAgreeTest {
    /** A cube sees a narrow throat only when it is much smaller: the open model has thin joints. */
    private static final int CUBES = 140;

    private static final int CUBES_OF_OPEN_MODEL = 260;
    private static final String OPEN_MODEL = "Models/Oto/Oto.mesh.xml";
    private static final String ANIMAL = "animal by formula";

    private record Pose(String figure, int attitude, Domain domain) {}

    static Stream<Pose> poses() {
        List<Pose> all = new ArrayList<>();
        for (String figure : List.of(ANIMAL, OPEN_MODEL)) {
            for (int attitude = 0; attitude < 4; attitude++) {
                all.add(new Pose(figure, attitude, Domain.CAVITY));
                all.add(new Pose(figure, attitude, Domain.AROUND));
            }
        }
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("poses")
    void trappedAirAgrees(Pose pose) throws Exception {
        Figure figure = figure(pose.figure());
        Assumptions.assumeTrue(figure != null, "the package of open models is not on the class path");
        Figure turned = turned(figure, pose.attitude());
        boolean cavity = pose.domain() == Domain.CAVITY;
        double[] vent = cavity ? ventOf(turned) : null;
        Setup setup = Setup.of(pose.domain());
        if (cavity) {
            setup = setup.withVents(List.of(new Vec3(vent[0], vent[1], vent[2]).times(Figure.MM)));
        }
        Mesh mesh = turned.mesh();

        double exact = Pockets.find(mesh, setup).trappedM3() * 1e9;
        double voxels = Voxels.trapped(
                turned.corners, turned.triangles, vent, pose.figure().equals(ANIMAL) ? CUBES : CUBES_OF_OPEN_MODEL);

        double body = mesh.report().volumeM3() * 1e9;
        assertThat(voxels).isCloseTo(exact, Offset.offset(0.02 * exact + 0.0005 * body));
    }

    /** The point farthest to one side: a vent there traps what is above it. */
    private static double[] ventOf(Figure figure) {
        return figure.corners.stream()
                .max(java.util.Comparator.comparingDouble(c -> c[0]))
                .orElseThrow();
    }

    private static Figure turned(Figure figure, int attitude) {
        double a = 0.3 + 1.7 * attitude;
        double b = 0.2 + 1.1 * attitude;
        return figure.moved(v -> {
            Vec3 w = new Vec3(
                    Math.cos(a) * v.x() - Math.sin(a) * v.y(), Math.sin(a) * v.x() + Math.cos(a) * v.y(), v.z());
            return new Vec3(
                    w.x(), Math.cos(b) * w.y() - Math.sin(b) * w.z(), Math.sin(b) * w.y() + Math.cos(b) * w.z());
        });
    }

    private static Figure figure(String name) throws IOException, XMLStreamException {
        if (name.equals(ANIMAL)) {
            return animal();
        }
        try (InputStream in = VoxelsAgreeTest.class.getClassLoader().getResourceAsStream(name)) {
            return in == null ? null : fromXml(in);
        }
    }

    /** A body with four legs, a head, two ears, a tail and four hollows: one surface, swollen or dented along those directions. */
    private static Figure animal() {
        double[][] limbs = {
            {0.55, 0.4, -0.73, 1.3, 30},
            {0.55, -0.4, -0.73, 1.3, 30},
            {-0.55, 0.4, -0.73, 1.3, 30},
            {-0.55, -0.4, -0.73, 1.3, 30},
            {0.9, 0, 0.43, 0.9, 12},
            {0.75, 0.3, 0.6, 0.9, 60},
            {0.75, -0.3, 0.6, 0.9, 60},
            {-0.98, 0, 0.2, 0.8, 60},
            {0, 0, -1, -0.6, 25},
            {-0.3, 0.9, 0.2, -0.55, 25},
            {-0.2, -0.95, 0.25, -0.55, 25},
            {-0.3, 0, 0.95, -0.6, 25}
        };
        return Shapes.ball(1, 96).moved(v -> {
            double r = 20;
            for (double[] limb : limbs) {
                Vec3 way = new Vec3(limb[0], limb[1], limb[2]).unit();
                r += 20 * limb[3] * Math.exp(limb[4] * (v.dot(way) - 1));
            }
            return v.times(r);
        });
    }

    private static Figure fromXml(InputStream in) throws XMLStreamException {
        Figure out = new Figure();
        int first = 0;
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        XMLStreamReader xml = factory.createXMLStreamReader(in);
        List<int[]> faces = new ArrayList<>();
        // Coarser copies of the shape follow the levels of detail.
        boolean coarser = false;
        while (xml.hasNext() && !coarser) {
            if (xml.next() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            coarser = xml.getLocalName().equals("levelofdetail");
            switch (xml.getLocalName()) {
                case "submesh" -> first = out.corners.size();
                case "position" -> out.corner(number(xml, "x"), number(xml, "y"), number(xml, "z"));
                case "face" ->
                    faces.add(
                            new int[] {first, (int) number(xml, "v1"), (int) number(xml, "v2"), (int) number(xml, "v3")
                            });
                default -> {
                    // Textures, bones and the like say nothing about the shape.
                }
            }
        }
        faces.forEach(f -> out.triangle(f[0] + f[1], f[0] + f[2], f[0] + f[3]));
        double size =
                out.corners.stream().mapToDouble(c -> Math.abs(c[1])).max().orElseThrow();
        return out.moved(v -> v.times(50 / size));
    }

    private static double number(XMLStreamReader xml, String name) {
        return Double.parseDouble(xml.getAttributeValue(null, name));
    }
}
