package pourwright.knowledge;

import java.util.List;
import java.util.Optional;

/**
 * A question the console may ask.
 *
 * @param id stable id, also the name of the answer on the command line
 * @param section which part of the job it belongs to
 * @param ask the question as a person hears it
 * @param kind {@code material}, {@code choice}, {@code quantity}, {@code ratio}, {@code text} or {@code places}
 * @param help how to find the answer
 * @param quantity the dimension of a quantity
 * @param unit the unit of a bare number
 * @param min least plausible value, in {@code unit}
 * @param max greatest plausible value
 * @param example an answer as a person types it
 * @param bare set when a bare number is read in {@code unit} on the command line although a prompt asks about it
 * @param choices the choices of a choice question
 * @param unknown what stands in when nobody knows, or null when nothing can
 * @param asked false for what no interview about a plan asks
 * @param several true when more than one choice can hold at once
 * @param fact what the answer is about: observations of one fact count as evidence once; the id itself unless said
 * @param effort how an answer is found: {@code look}, {@code recall} or {@code test}
 * @param picture lines of a small text picture; its meaning also stands in the help
 * @param families the only families of material it is asked about; empty for all
 * @param tries answers to a quantity that a diagnosis tries, to learn whether asking would settle anything
 * @param together the questions that may be answered along with it at a prompt, in this order: "20 x 15 x 12 cm"
 */
public record Question(
        String id,
        String section,
        String ask,
        String kind,
        String help,
        String quantity,
        String unit,
        Double min,
        Double max,
        String example,
        String bare,
        List<Choice> choices,
        Fallback unknown,
        Boolean asked,
        boolean several,
        String fact,
        String effort,
        List<String> picture,
        List<String> families,
        List<String> tries,
        List<String> together) {
    public Question {
        choices = choices == null ? List.of() : List.copyOf(choices);
        asked = asked == null || asked;
        fact = fact == null ? id : fact;
        picture = List.copyOf(picture);
        families = List.copyOf(families);
        tries = List.copyOf(tries);
        together = List.copyOf(together);
    }

    /** The same question in other words. */
    public Question asking(String words) {
        return new Question(
                id, section, words, kind, help, quantity, unit, min, max, example, bare, choices, unknown, asked,
                several, fact, effort, picture, families, tries, together);
    }

    /** True when it makes sense for this class of material; one for some families only never does for an unknown one. */
    public boolean suits(MaterialClass material) {
        return families.isEmpty() || material != null && families.contains(material.family());
    }

    /** The same question with these choices. */
    public Question withChoices(List<Choice> offered) {
        return new Question(
                id, section, ask, kind, help, quantity, unit, min, max, example, bare, offered, unknown, asked, several,
                fact, effort, picture, families, tries, together);
    }

    /**
     * One choice.
     *
     * @param id stable id
     * @param text what a person reads
     * @param says words people type for it
     */
    public record Choice(String id, String text, List<String> says) {
        public Choice {
            says = says == null ? List.of() : List.copyOf(says);
        }
    }

    /** The range taken when nobody knows, in the question's unit. */
    public record Fallback(double low, double typical, double high, String source, String note) {}

    /** The choice with that id. */
    public Optional<Choice> choice(String choiceId) {
        return choices.stream().filter(c -> c.id().equals(choiceId)).findFirst();
    }
}
