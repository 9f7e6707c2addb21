package pourwright.units;

/** What came of reading a typed quantity. */
public sealed interface Reading permits Read, Ask, Bad, DontKnow {}
