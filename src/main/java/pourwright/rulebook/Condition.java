package pourwright.rulebook;

import java.util.List;

/** One condition of a rule, as it was written. */
public sealed interface Condition {
    /**
     * There is a fact of this type that passes every test.
     *
     * @param bind the name other conditions know the fact by, such as {@code $seen}; empty when none does
     * @param type the fact: {@code Said}, {@code Figure}, {@code Material} and so on
     * @param tests what it must pass; none when any will do
     */
    record Fact(String bind, String type, List<Test> tests) implements Condition {
        public Fact {
            tests = List.copyOf(tests);
        }
    }

    /**
     * These do not hold together.
     *
     * @param all the conditions that must not all hold
     */
    record Not(List<Condition> all) implements Condition {
        public Not {
            all = List.copyOf(all);
        }
    }

    /** What a fact must pass. */
    sealed interface Test {}

    /**
     * A part of the fact is, or is not, one of these.
     *
     * @param field the part, such as {@code question}
     * @param not true when it must be none of them
     * @param values the values
     */
    record OneOf(String field, boolean not, List<String> values) implements Test {
        public OneOf {
            values = List.copyOf(values);
        }
    }

    /**
     * A word about the fact, such as {@code likelyAbove( "tall-cup-depth" )}.
     *
     * @param of the bound fact whose word it is; empty for the fact itself
     * @param word the word
     * @param argument a trait or a guideline; empty when it takes none
     * @param other the fact it is compared with: a bound one, or {@code this}; empty when none
     * @param not true when it must not hold
     */
    record Is(String of, String word, String argument, String other, boolean not) implements Test {}

    /**
     * At least one of these.
     *
     * @param some the tests
     */
    record Any(List<Test> some) implements Test {
        public Any {
            some = List.copyOf(some);
        }
    }
}
