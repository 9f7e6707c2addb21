package pourwright.geometry;

/** The region that the liquid may fill. */
public enum Domain {
    /** The inside of the mesh: the mesh is the cavity, closed except at gates and vents. */
    CAVITY,
    /** Around the mesh in an open-top box, with the mesh held clear of floor and walls. The open top is an outlet. */
    AROUND,
    /** Around the mesh in an open-top box, with its lowest points on the floor. */
    AROUND_ON_FLOOR
}
