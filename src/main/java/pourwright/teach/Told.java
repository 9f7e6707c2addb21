package pourwright.teach;

import pourwright.facts.Answers;

/**
 * A case that exercises are drawn from.
 *
 * @param name what it is called
 * @param word {@code plan} or {@code diagnose}
 * @param answers its answers
 * @param own true when it is the workshop's own
 */
public record Told(String name, String word, Answers answers, boolean own) {}
