/**
 * Where air is trapped when a mould fills from below: from a surface mesh to pockets, vents and the attitude that needs
 * fewest. Pure functions in SI units; only {@link pourwright.geometry.MeshFile} opens a file.
 *
 * <p>The model: the liquid rises with one level everywhere, and air leaves only through outlets that are still above it.
 * The air over a top of the cavity is sealed at the lowest level at which that top still shares an air space with an
 * outlet. What stays above its sealing height is a pocket. This is the join tree of superlevel sets (Carr, Snoeyink, Axen,
 * Computing contour trees in all dimensions, Computational Geometry 24, 2003) over the domain the liquid may fill.
 */
package pourwright.geometry;
