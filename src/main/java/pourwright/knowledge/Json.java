package pourwright.knowledge;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;

/**
 * The one place that says how strictly JSON is read: unknown names, missing parts, doubled keys, trailing text and
 * silent coercions are errors, and size and depth are limited.
 */
public final class Json {
    /** Largest document read, in characters. */
    public static final int MAX_CHARS = 5_000_000;

    private static final int MAX_DEPTH = 32;
    private static final int MAX_STRING = 64_000;
    private static final int MAX_TOKENS = 200_000;

    private static final ObjectMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(MAX_DEPTH)
                            .maxDocumentLength(MAX_CHARS)
                            .maxStringLength(MAX_STRING)
                            .maxTokenCount(MAX_TOKENS)
                            .build())
                    .build())
            .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
            .enable(
                    DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES,
                    DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES,
                    DeserializationFeature.FAIL_ON_TRAILING_TOKENS,
                    DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS,
                    DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .build();

    private Json() {}

    /** The shared mapper. */
    public static ObjectMapper mapper() {
        return MAPPER;
    }
}
