package pourwright.units;

/** What came of reading a typed mix ratio. */
public sealed interface RatioReading permits Ratio, Ask, Bad, DontKnow {}
