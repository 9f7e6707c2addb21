package pourwright.kitfit;

/** What the rise of pressure in a closed chamber comes from. */
public enum RiseVerdict {

    /** The rise is straight as far as the readings show: a leak. */
    LEAK,

    /** The rise flattens, and no leak is left that matters beside it: outgassing, or vapour from something wet. */
    OUTGASSING,

    /** The rise flattens toward a straight line: a leak, and outgassing or vapour beside it. */
    BOTH,

    /** The rise flattens, but a leak below the given upper end may hide in it. */
    BENDS_LEAK_NOT_TOLD,

    /** Straight and bent both fit: the readings are too few, too coarse or too short. */
    CANNOT_TELL,

    /** The rise steepens, which neither a leak nor outgassing does: warming, a seal that gives way, or the gauge. */
    STEEPENS,

    /** The pressure does not rise by more than the gauge's own error; the leak has an upper end only. */
    NO_RISE_SEEN,

    /** The pressure falls: the pump valve is open, the chamber cools, or vapour settles. */
    FALLS,

    /** Fewer than four different times below half the local air pressure. */
    TOO_FEW_READINGS
}
