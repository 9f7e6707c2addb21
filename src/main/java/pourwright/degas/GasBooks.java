package pourwright.degas;

/**
 * Where all the gas came from and went, as pressure times volume at room temperature, Pa m3.
 *
 * @param startPaM3   in the chamber and in the bubbles at the start
 * @param leakedPaM3  through the leak
 * @param letInPaM3   let in by the operator: to hold the lowest pressure, and at the release; less what leaves an open chamber
 * @param vapourPaM3  boiled off from the mix
 * @param pumpedPaM3  taken away by the pump
 * @param chamberPaM3 in the chamber at the end
 * @param bubblesPaM3 in the bubbles at the end
 */
public record GasBooks(
        double startPaM3,
        double leakedPaM3,
        double letInPaM3,
        double vapourPaM3,
        double pumpedPaM3,
        double chamberPaM3,
        double bubblesPaM3) {

    /**
     * What came in less what went out and what is left, over what came in: zero but for rounding.
     *
     * @return share, no unit
     */
    public double gap() {
        double in = startPaM3 + leakedPaM3 + letInPaM3 + vapourPaM3;
        return (in - pumpedPaM3 - chamberPaM3 - bubblesPaM3) / in;
    }
}
