package pourwright.geometry;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Air spaces found on columns. It serves meshes whose parts overlap or touch, where the surface alone is not enough.
 * Heights along a column are exact; what happens between two columns is not seen. So sealing heights are then moved to the
 * place on the surface that explains them, and volumes are summed anew.
 */
final class ColumnAir implements Air {
    private final Mesh mesh;
    private final Frame frame;
    private final Columns columns;
    private final JoinTree tree;
    private final Outlets outlets;
    private final int firstOutlet;
    private final double[] sealH;
    private final double[] volume;
    private final double[] waterline;
    private final Vec3[] sealPlace;

    private ColumnAir(Mesh mesh, Frame frame, Columns columns, Outlets outlets, JoinTree tree) {
        this.mesh = mesh;
        this.frame = frame;
        this.columns = columns;
        this.tree = tree;
        this.outlets = outlets;
        this.firstOutlet = columns.high.length;
        sealH = Arrays.copyOf(tree.sealHeight, tree.pieces);
        volume = new double[tree.pieces];
        waterline = new double[tree.pieces];
        sealPlace = new Vec3[tree.pieces];
        measure();
        moveSeals();
        measure();
    }

    static ColumnAir find(Mesh mesh, Frame frame, Domain domain, Outlets outlets, double resolutionM) {
        Columns columns = Columns.of(mesh, frame, domain, resolutionM);
        double thin = mesh.noiseM();
        ColumnLinks links = new ColumnLinks(columns, thin);
        int[][] outletLinks = new int[outlets.count()][];
        double[] outletH = new double[outlets.count()];
        for (int i = 0; i < outletLinks.length; i++) {
            int stay = links.stayAt(outlets.place(i), frame);
            outletLinks[i] = new int[] {stay};
            outletH[i] = Math.min(outlets.place(i).dot(frame.up), columns.high[stay]);
        }
        JoinGraph graph = new JoinGraph(columns.high, links.first, links.neighbours, outletH, outletLinks);
        JoinTree.Tops tops = stay -> stay < columns.high.length && columns.high[stay] == Double.POSITIVE_INFINITY
                ? graph.openAir()
                : JoinTree.PEAK;
        JoinTree tree = JoinTree.build(graph, tops, thin, Double.NEGATIVE_INFINITY);
        return new ColumnAir(mesh, frame, columns, outlets, tree);
    }

    /** Width of a column, m. */
    double columnM() {
        return columns.cell;
    }

    /** Only joins between columns are moved; a join in one flat ceiling and an outlet's own height are exact already. */
    private void moveSeals() {
        SealSearch search = new SealSearch(mesh, frame, columns.cell);
        for (int piece = 0; piece < tree.pieces; piece++) {
            int stay = tree.seal[piece];
            if (stay >= firstOutlet) {
                sealPlace[piece] = outlets.place(stay - firstOutlet);
            }
            if (stay < 0 || stay >= firstOutlet || columns.ceiling[stay] < 0) {
                continue;
            }
            int column = columnOf(stay);
            double[] at = {columns.centreA(column), columns.centreB(column)};
            sealPlace[piece] = place(at[0], at[1], sealH[piece]);
            // The many small tops that columns make of a ridge are not worth a search.
            boolean small = volume[piece] < Pieces.CELLS * columns.cell * columns.cell * columns.cell;
            if (!small && search.find(at[0], at[1], sealH[piece], columns.ceiling[stay])) {
                sealH[piece] = search.height;
                sealPlace[piece] = search.place;
            }
        }
    }

    private int columnOf(int stay) {
        int at = Arrays.binarySearch(columns.firstStay, stay);
        int column = at >= 0 ? at : -at - 2;
        while (columns.firstStay[column + 1] <= stay) {
            column++;
        }
        return column;
    }

    private void measure() {
        double cellArea = columns.cell * columns.cell;
        double lowest = Double.POSITIVE_INFINITY;
        for (double h : frame.h) {
            lowest = Math.min(lowest, h);
        }
        double[] whole = new double[tree.pieces];
        Arrays.fill(volume, 0);
        Arrays.fill(waterline, 0);
        for (int stay = 0; stay < firstOutlet; stay++) {
            int piece = tree.label[stay];
            while (piece >= 0) {
                double level = Math.max(sealH[piece], lowest);
                if (columns.low[stay] >= level) {
                    whole[piece] += cellArea * (columns.high[stay] - columns.low[stay]);
                    break;
                }
                if (columns.high[stay] > level) {
                    volume[piece] += cellArea * (columns.high[stay] - level);
                    waterline[piece] += cellArea;
                }
                piece = tree.parent[piece];
            }
        }
        for (int piece = 0; piece < tree.pieces; piece++) {
            if (tree.parent[piece] >= 0) {
                whole[tree.parent[piece]] += whole[piece];
            }
            volume[piece] += whole[piece];
        }
    }

    private Vec3 place(double a, double b, double h) {
        return frame.right.times(a).plus(frame.ahead.times(b)).plus(frame.up.times(h));
    }

    @Override
    public JoinTree tree() {
        return tree;
    }

    @Override
    public Frame frame() {
        return frame;
    }

    @Override
    public double volumeM3(int piece) {
        return volume[piece];
    }

    @Override
    public double sealH(int piece) {
        return sealH[piece];
    }

    @Override
    public double waterlineM2(int piece) {
        return waterline[piece];
    }

    /** Taken as round: columns do not show the rim. */
    @Override
    public double mouthWidthM(int piece) {
        return 2 * Math.sqrt(waterline[piece] / Math.PI);
    }

    @Override
    public Vec3 peak(int piece) {
        int stay = tree.peak[piece];
        int column = columnOf(stay);
        return place(columns.centreA(column), columns.centreB(column), columns.high[stay]);
    }

    @Override
    public Vec3 sealedAt(int piece) {
        return sealPlace[piece];
    }

    @Override
    public boolean sealedAtOutlet(int piece) {
        return tree.seal[piece] >= firstOutlet;
    }

    @Override
    public double flatCeilingM2() {
        double sum = 0;
        for (int stay = 0; stay < firstOutlet; stay++) {
            int t = columns.ceiling[stay];
            if (t >= 0 && tree.label[stay] == JoinTree.VENTED && isFlat(t)) {
                sum += columns.cell * columns.cell;
            }
        }
        return sum;
    }

    private boolean isFlat(int t) {
        double p = frame.h[mesh.triangles[3 * t]];
        double q = frame.h[mesh.triangles[3 * t + 1]];
        double r = frame.h[mesh.triangles[3 * t + 2]];
        return Math.max(p, Math.max(q, r)) - Math.min(p, Math.min(q, r)) <= tree.tie();
    }

    @Override
    public BitSet touched(int piece) {
        return null;
    }

    @Override
    public void show(int piece, Painter painter) {
        double[] corners = new double[12];
        double half = columns.cell / 2;
        for (int stay = 0; stay < firstOutlet; stay++) {
            int at = tree.label[stay];
            while (at >= 0 && at != piece) {
                at = tree.parent[at];
            }
            double from = Math.max(columns.low[stay], sealH[piece]);
            if (at != piece || columns.high[stay] <= from) {
                continue;
            }
            int column = columnOf(stay);
            // Two upright walls through the middle of the column show it from both sides.
            for (int side = 0; side < 2; side++) {
                double da = side == 0 ? half : 0;
                double db = side == 0 ? 0 : half;
                double a = columns.centreA(column);
                double b = columns.centreB(column);
                put(corners, 0, place(a - da, b - db, from));
                put(corners, 1, place(a + da, b + db, from));
                put(corners, 2, place(a + da, b + db, columns.high[stay]));
                put(corners, 3, place(a - da, b - db, columns.high[stay]));
                painter.shape(corners, 4);
            }
        }
    }

    private static void put(double[] corners, int index, Vec3 p) {
        corners[3 * index] = p.x();
        corners[3 * index + 1] = p.y();
        corners[3 * index + 2] = p.z();
    }
}
