package pourwright.remedy;

import pourwright.knowledge.Remedy;

/**
 * One change, with its new value.
 *
 * @param remedy what kind of change
 * @param typed the new answer as a person would type it
 * @param say what to do, with the value filled in
 * @param size how far it goes: the logarithm of new over old, or the degrees over ten; 0 for a choice
 */
public record Change(Remedy remedy, String typed, String say, double size) {
    /** The question whose answer it changes. */
    public String answer() {
        return remedy.answer();
    }
}
