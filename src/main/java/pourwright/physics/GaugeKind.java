package pourwright.physics;

/** What the zero of a pressure gauge means. */
public enum GaugeKind {

    /** Zero is a perfect vacuum; the reading does not depend on the weather or the altitude. */
    ABSOLUTE,

    /** Zero is the air around the gauge, and the reading grows as the vacuum deepens: the usual vacuum dial. */
    BELOW_LOCAL_AIR,

    /** Zero is the air around the gauge, and the reading grows with pressure: the usual pressure-pot dial. */
    ABOVE_LOCAL_AIR
}
