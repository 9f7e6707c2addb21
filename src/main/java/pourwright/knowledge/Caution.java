package pourwright.knowledge;

/**
 * The usual caution for one hazard. It always defers to the safety data sheet.
 *
 * @param hazard what can hurt
 * @param say the caution in plain sentences
 * @param topic always {@code safety}
 * @param source a key of the sources
 * @param safety always true: a workshop cannot remove it
 * @param trait the trait a material must have for this hazard to be there, or null when any can have it
 */
public record Caution(String hazard, String say, String topic, String source, Boolean safety, String trait) {
    /** True when this class of material can bring the hazard; an unknown class can bring any. */
    public boolean concerns(MaterialClass material) {
        return trait == null || material == null || material.traits().contains(trait);
    }
}
