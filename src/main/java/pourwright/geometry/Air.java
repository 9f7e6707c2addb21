package pourwright.geometry;

import java.util.BitSet;

/** The air spaces of one mould in one attitude: their tree, and what each measures. */
interface Air {
    JoinTree tree();

    Frame frame();

    /** Volume of a piece above its sealing height, m3. */
    double volumeM3(int piece);

    /** Height at which a piece is sealed, m above the mesh's origin; minus infinity when no outlet reaches it. */
    double sealH(int piece);

    /** Area of the level surface under a piece when it is sealed, m2. */
    double waterlineM2(int piece);

    /** Width of that area, m. */
    double mouthWidthM(int piece);

    /** The highest point of a piece, counted from the mesh's origin, m. */
    Vec3 peak(int piece);

    /** The place where a piece is sealed, counted from the mesh's origin, m. */
    Vec3 sealedAt(int piece);

    /** Whether the opening at the place of sealing is an outlet, rather than a join with another space. */
    boolean sealedAtOutlet(int piece);

    /** Area of flat ceilings that air can leave sideways, where a film may stay, m2. */
    double flatCeilingM2();

    /** The triangles that bound a piece above its sealing height, or null where the surface itself was not used. */
    BitSet touched(int piece);

    /** Hands the parts of the boundary that lie above the sealing height of a piece to a painter. */
    void show(int piece, Painter painter);

    /** Takes flat convex shapes. */
    interface Painter {
        /** One shape: coordinates from the mesh's origin, three for each corner, m. */
        void shape(double[] corners, int count);
    }
}
