package pourwright.units;

import java.util.List;

/**
 * The text has more than one sensible meaning.
 *
 * @param sentence what is unclear and what to do
 * @param meanings full answers, each of which can be typed as it stands
 */
public record Ask(String sentence, List<String> meanings) implements Reading, RatioReading {
    public Ask {
        meanings = List.copyOf(meanings);
    }
}
