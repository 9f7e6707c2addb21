package pourwright.geometry;

/**
 * One way to stand a mould.
 *
 * @param up          direction up in the mesh's coordinates, of length one
 * @param vents       vents to add so that only pockets which need none are left
 * @param trappedM3   air that stays before they are added, m3; for a cavity that cannot fill at all, with the first in place
 * @param fillHeightM height to fill, m
 */
public record Attitude(Vec3 up, int vents, double trappedM3, double fillHeightM) {}
