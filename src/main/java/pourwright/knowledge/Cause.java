package pourwright.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Something that can have gone wrong.
 *
 * @param id stable id, the file's name
 * @param name in the trade's words
 * @param families the only families of material that can have it; empty for all
 * @param notClasses material ids, or {@code trait:NAME}, that cannot have it
 * @param arises symptom to the group of base rates it belongs to there
 * @param is what it is
 * @param physics why it happens
 * @param test the quick test that confirms it
 * @param repair what to do with the part now
 * @param prevent what to change for the next pour
 * @param cautions ids of cautions that its test, repair or prevention call for
 * @param source where it comes from
 */
public record Cause(
        String id,
        String name,
        Set<String> families,
        Set<String> notClasses,
        Map<String, String> arises,
        String is,
        String physics,
        String test,
        String repair,
        List<Prevention> prevent,
        List<String> cautions,
        String source) {
    /**
     * One change for the next pour.
     *
     * @param say the change
     * @param set answers of the plan it sets, as a person types them
     * @param times answers of the plan it multiplies, where they are known
     */
    public record Prevention(String say, Map<String, String> set, Map<String, Double> times) {}

    /** True when this class of material cannot have it; never when the material is not known. */
    public boolean impossibleIn(MaterialClass material) {
        if (material == null) {
            return false;
        }
        return !families.isEmpty() && !families.contains(material.family())
                || notClasses.contains(material.id())
                || material.traits().stream().anyMatch(t -> notClasses.contains("trait:" + t));
    }
}
