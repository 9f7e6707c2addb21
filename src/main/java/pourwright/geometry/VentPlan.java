package pourwright.geometry;

import java.util.List;

/**
 * Vents in the order in which to add them.
 *
 * @param vents  the vents
 * @param left   what stays trapped with all of them
 * @param enough whether no pocket is left that needs a vent; false when the most allowed were not enough
 */
public record VentPlan(List<Vent> vents, Trapped left, boolean enough) {

    /** A plan whose list cannot change. */
    public VentPlan {
        vents = List.copyOf(vents);
    }

    /**
     * One vent.
     *
     * @param place   where it opens into the mould, in the mesh's coordinates, m
     * @param heightM height u.x of that place, m
     * @param freedM3 air that it lets out, m3
     * @param riseM   how far it must rise to reach the height of the liquid when all is filled, m; lower, liquid runs out of it
     */
    public record Vent(Vec3 place, double heightM, double freedM3, double riseM) {}
}
