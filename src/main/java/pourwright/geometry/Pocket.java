package pourwright.geometry;

/**
 * Air that stays when the mould fills from below.
 *
 * @param id           1, 2, 3 ... by volume, largest first, a part after its whole
 * @param parent       the pocket that this one is a part of, or 0; never add parts to their whole
 * @param volumeM3     volume above the sealing height, m3
 * @param peak         highest point, in the mesh's coordinates, m; a vent belongs here
 * @param peakHeightM  height u.x of the highest point, m
 * @param saddleHeightM sealing height u.x, m; the air above it cannot get out
 * @param sealedAt     the place where the air is sealed, in the mesh's coordinates, m
 * @param waterlineM2  area of the liquid under the pocket when it is sealed, m2
 * @param mouthWidthM  width of that area, 4 x area / rim, m: the diameter of a round one, twice the width of a long slot;
 *                     an estimate of the mouth through which a bubble must leave
 * @param headM        height of the liquid above the sealing height when all is filled, m
 */
public record Pocket(
        int id,
        int parent,
        double volumeM3,
        Vec3 peak,
        double peakHeightM,
        double saddleHeightM,
        Vec3 sealedAt,
        double waterlineM2,
        double mouthWidthM,
        double headM) {

    /** Height of the pocket from its sealing height to its top, m. */
    public double depthM() {
        return peakHeightM - saddleHeightM;
    }
}
