package pourwright.geometry;

import java.util.List;

/**
 * What stays in a mould that fills from below.
 *
 * @param pockets      the pockets, largest first, each followed by its parts
 * @param trappedM3    volume of all pockets, parts not counted again, m3
 * @param noOutlet     whether nothing can fill, because the only opening is the gate at the lowest point
 * @param unreachable  regions that touch neither gate nor outlet
 * @param lowPlaces    low places other than the gate's that fill over a sill, so that the level is not the same everywhere
 * @param gate         where the liquid comes in, in the mesh's coordinates, m; the lowest point when none was given
 * @param gateAssumed  whether the lowest point was taken because no gate was given
 * @param lowestM      lowest height u.x of the mesh, m
 * @param highestM     highest height u.x of the mesh, m
 * @param cavityM3     volume to fill for {@link Domain#CAVITY}, m3; the volume of the master otherwise
 * @param flatCeilingM2 area of flat ceilings that hold no pocket but may keep a film of air, m2
 * @param thinnestM    thinnest place found by rays across the solid, m; an estimate
 * @param ignored      pockets too small to count
 * @param ignoredM3    their volume, m3
 * @param columnM      width of the columns used, m; 0 when the surface itself was used and nothing was approximated
 * @param notes        warnings as sentences
 * @param spaces       the spaces behind this result, for pictures
 */
public record Trapped(
        List<Pocket> pockets,
        double trappedM3,
        boolean noOutlet,
        List<Region> unreachable,
        List<Region> lowPlaces,
        Vec3 gate,
        boolean gateAssumed,
        double lowestM,
        double highestM,
        double cavityM3,
        double flatCeilingM2,
        double thinnestM,
        int ignored,
        double ignoredM3,
        double columnM,
        List<String> notes,
        Spaces spaces) {

    /** A result whose lists cannot change. */
    public Trapped {
        pockets = List.copyOf(pockets);
        unreachable = List.copyOf(unreachable);
        lowPlaces = List.copyOf(lowPlaces);
        notes = List.copyOf(notes);
    }

    /**
     * A part of the domain.
     *
     * @param volumeM3 its volume, m3
     * @param place    its highest point, or for a low place its lowest, in the mesh's coordinates, m
     */
    public record Region(double volumeM3, Vec3 place) {}

    /** Pockets that are no part of another. */
    public List<Pocket> whole() {
        return pockets.stream().filter(pocket -> pocket.parent() == 0).toList();
    }

    /** Height to fill, m. */
    public double fillHeightM() {
        return highestM - lowestM;
    }
}
