package pourwright.knowledge;

import java.util.List;

/**
 * A word of the trade.
 *
 * @param means what it means
 * @param also other words people use
 * @param source a key of the sources
 */
public record Term(String means, List<String> also, String source) {
    public Term {
        also = also == null ? List.of() : List.copyOf(also);
    }
}
