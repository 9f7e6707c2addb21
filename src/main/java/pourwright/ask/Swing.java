package pourwright.ask;

import java.util.List;
import pourwright.advice.Difference;
import pourwright.advice.Finding;
import pourwright.advice.Strength;

/**
 * How much the advice hangs on one answer that is not known well.
 *
 * @param question id of the question
 * @param why what makes it uncertain
 * @param trials the plan with that answer at each end of what it could be
 * @param marginS how far the time to spare moves between them, seconds; 0 where there is none
 * @param marginShare the same as a share of the working time
 */
public record Swing(String question, Why why, List<Trial> trials, double marginS, double marginShare) {
    public Swing {
        trials = List.copyOf(trials);
    }

    /** What makes an answer uncertain. */
    public enum Why {
        /** It was given as a range, or with "about". */
        RANGE("your answer is a range"),
        /** The range of the class stood in. */
        CLASS("the range of the class stood in"),
        /** A usual value stood in. */
        USUAL("a usual value stood in"),
        /** Nobody has said. */
        OPEN("nobody has said");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        /** The same in words. */
        public String words() {
            return words;
        }
    }

    /**
     * One value of the answer, tried.
     *
     * @param setting the answer
     * @param difference that plan against the one as it is
     */
    public record Trial(Setting setting, Difference difference) {}

    /** True when the verdict is another at one of them. */
    public boolean turnsVerdict() {
        return trials.stream()
                .anyMatch(t -> t.difference().after().verdict()
                        != t.difference().before().verdict());
    }

    /** How many pieces of advice that ask for something come or go. */
    public long moved() {
        return trials.stream()
                .mapToLong(t -> t.difference().fresh().stream()
                                .filter(Swing::asks)
                                .count()
                        + t.difference().gone().stream().filter(Swing::asks).count())
                .sum();
    }

    /** True for advice that asks for something. */
    public static boolean asks(Finding f) {
        return f.strength().compareTo(Strength.DO) <= 0;
    }

    /** True when nothing a person would act on differs. */
    public boolean idle() {
        return !turnsVerdict() && moved() == 0 && marginShare < LEAST_SHARE;
    }

    /** A smaller move of the time to spare is lost among all else. */
    private static final double LEAST_SHARE = 0.01;
}
