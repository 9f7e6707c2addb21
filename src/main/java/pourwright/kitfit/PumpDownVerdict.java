package pourwright.kitfit;

/** What the readings of a pump-down can tell. */
public enum PumpDownVerdict {

    /** Speed and base pressure are both told. */
    ENOUGH,

    /** Fewer than four different times: three numbers cannot be fitted with an error. */
    TOO_FEW_READINGS,

    /** A reading lies above the local air by more than the weather: barometer or kind of gauge is not what was said. */
    ABOVE_LOCAL_AIR,

    /** The pressure does not fall by more than the gauge's own error: pump off, valve shut, or long at its base. */
    DO_NOT_FALL,

    /** The gauge shows too few steps, or stands still and then jumps. */
    GAUGE_STEPS,

    /** The speed is told, but the fall does not level off, so the base pressure has only an upper limit. */
    RANGE_TOO_SMALL,

    /** The base pressure is told, but the fall itself was hardly read. */
    SPEED_NOT_TOLD,

    /** The readings bend in a way that no single speed and base pressure give: hose, boiling, or a load that changes. */
    NOT_ONE_SPEED
}
