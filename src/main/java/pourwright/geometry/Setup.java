package pourwright.geometry;

import java.util.List;

/**
 * How a mould stands and where it is open.
 *
 * @param domain      the region to fill
 * @param up          direction up; its length does not matter
 * @param gates       where liquid comes in, in the mesh's coordinates, m; none: the lowest point
 * @param vents       openings for air, in the mesh's coordinates, m
 * @param resolutionM width of a column, m; used only where parts of the mesh overlap, and for how far an opening may lie
 *                    off the surface; 0 chooses it from the size
 * @param pourLevelM  height of the liquid when all is filled (u.x of the sprue's mouth), m; not a number: the top of the part
 * @param ignoreM3    pockets smaller than this are only counted, m3
 */
public record Setup(
        Domain domain,
        Vec3 up,
        List<Vec3> gates,
        List<Vec3> vents,
        double resolutionM,
        double pourLevelM,
        double ignoreM3) {

    /** A setup with what cannot be meant refused. */
    public Setup {
        gates = List.copyOf(gates);
        vents = List.copyOf(vents);
        up = up.unit();
        if (!(resolutionM >= 0) || Double.isInfinite(resolutionM)) {
            throw new MeshFault("The resolution must be a length above zero.");
        }
        if (!(ignoreM3 >= 0)) {
            throw new MeshFault("The smallest volume that counts cannot be negative.");
        }
        for (List<Vec3> places : List.of(gates, vents)) {
            for (Vec3 place : places) {
                if (!place.isFinite()) {
                    throw new MeshFault("A gate or vent needs three numbers, such as 0,0,12.5.");
                }
            }
        }
    }

    /** Up along the third axis, the gate at the lowest point, no vent. */
    public static Setup of(Domain domain) {
        return new Setup(domain, Vec3.UP, List.of(), List.of(), 0, Double.NaN, 0);
    }

    /** The same with another direction up. */
    public Setup withUp(Vec3 direction) {
        return new Setup(domain, direction, gates, vents, resolutionM, pourLevelM, ignoreM3);
    }

    /** The same with these gates. */
    public Setup withGates(List<Vec3> places) {
        return new Setup(domain, up, places, vents, resolutionM, pourLevelM, ignoreM3);
    }

    /** The same with these vents. */
    public Setup withVents(List<Vec3> places) {
        return new Setup(domain, up, gates, places, resolutionM, pourLevelM, ignoreM3);
    }

    /** The same with another width of a column, m. */
    public Setup withResolution(double metres) {
        return new Setup(domain, up, gates, vents, metres, pourLevelM, ignoreM3);
    }

    /** The same with the height of the liquid when all is filled, m. */
    public Setup withPourLevel(double metres) {
        return new Setup(domain, up, gates, vents, resolutionM, metres, ignoreM3);
    }

    /** The same with another smallest volume that counts, m3. */
    public Setup withIgnored(double cubicMetres) {
        return new Setup(domain, up, gates, vents, resolutionM, pourLevelM, cubicMetres);
    }
}
