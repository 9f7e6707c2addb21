package pourwright.geometry;

import java.util.List;

/**
 * What was found while a mesh was read.
 *
 * @param triangles   triangles after repair
 * @param vertices    different vertices after repair
 * @param welded      vertices of the file that were made one with another at exactly the same place
 * @param dropped     triangles left out because two corners were the same vertex
 * @param flat        triangles without area that were kept, since their edges close the surface
 * @param doubled     triangles left out because the same triangle was there already, or its opposite
 * @param flipped     triangles that were turned over
 * @param split       edges split at a vertex that lay on them
 * @param manyFaced   edges shared by more than two triangles
 * @param shells      pieces of surface that share no vertex
 * @param buriedShells shells left out because both their sides are inside the solid
 * @param crossings   pairs of triangles that cross or lie on each other without sharing a vertex; counting stops at
 *                    {@link SelfCrossing#MOST}. Pairs that share a vertex are not checked.
 * @param low         lowest coordinates, m
 * @param high        highest coordinates, m
 * @param volumeM3    volume inside, m3; where parts overlap, the overlap counts twice
 * @param areaM2      surface, m2
 * @param notes       repairs and warnings as sentences, in the order found
 */
public record MeshReport(
        int triangles,
        int vertices,
        int welded,
        int dropped,
        int flat,
        int doubled,
        int flipped,
        int split,
        int manyFaced,
        int shells,
        int buriedShells,
        int crossings,
        Vec3 low,
        Vec3 high,
        double volumeM3,
        double areaM2,
        List<String> notes) {

    /** A report whose notes cannot change. */
    public MeshReport {
        notes = List.copyOf(notes);
    }
}
