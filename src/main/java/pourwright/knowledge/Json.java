package pourwright.knowledge;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;

/**
 * The one place that reads and writes JSON, strictly: doubled keys and trailing text are errors, and size and depth are
 * limited. It works on the library's streams and trees; its object mapper would take a tenth of every start.
 */
public final class Json {
    /** Largest document read, in characters. */
    public static final int MAX_CHARS = 5_000_000;

    private static final int MAX_DEPTH = 32;
    private static final int MAX_STRING = 64_000;
    private static final int MAX_TOKENS = 200_000;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MAX_DEPTH)
                    .maxDocumentLength(MAX_CHARS)
                    .maxStringLength(MAX_STRING)
                    .maxTokenCount(MAX_TOKENS)
                    .build())
            .build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Json() {}

    /** An empty object to fill. */
    public static ObjectNode object() {
        return NODES.objectNode();
    }

    /** An empty list to fill. */
    public static ArrayNode array() {
        return NODES.arrayNode();
    }

    /**
     * Reads exactly one value.
     *
     * @throws JsonProcessingException when the text is empty, broken, too large, too deep, or holds more than one value
     */
    public static JsonNode read(String text) throws JsonProcessingException {
        try (JsonParser in = FACTORY.createParser(text)) {
            if (in.nextToken() == null) {
                throw new JsonParseException(in, "there is no value");
            }
            JsonNode value = value(in);
            if (in.nextToken() != null) {
                throw new JsonParseException(in, "there is text after the value");
            }
            return value;
        } catch (JsonProcessingException e) {
            throw e;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode value(JsonParser in) throws IOException {
        return switch (in.currentToken()) {
            case START_OBJECT -> {
                ObjectNode object = NODES.objectNode();
                while (in.nextToken() != JsonToken.END_OBJECT) {
                    String name = in.currentName();
                    in.nextToken();
                    object.set(name, value(in));
                }
                yield object;
            }
            case START_ARRAY -> {
                ArrayNode array = NODES.arrayNode();
                while (in.nextToken() != JsonToken.END_ARRAY) {
                    array.add(value(in));
                }
                yield array;
            }
            case VALUE_STRING -> NODES.textNode(in.getText());
            case VALUE_TRUE -> NODES.booleanNode(true);
            case VALUE_FALSE -> NODES.booleanNode(false);
            case VALUE_NULL -> NODES.nullNode();
            case VALUE_NUMBER_INT ->
                in.getNumberType() == JsonParser.NumberType.INT
                        ? NODES.numberNode(in.getIntValue())
                        : NODES.numberNode(in.getDecimalValue());
            case VALUE_NUMBER_FLOAT -> NODES.numberNode(in.getDecimalValue());
            default -> throw new JsonParseException(in, "a value was expected");
        };
    }

    /** The line at which reading failed; 1 when the reader does not say. */
    public static int line(JsonProcessingException e) {
        return e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr());
    }

    /** The tree as one line. */
    public static String write(JsonNode tree) {
        return write(tree, false);
    }

    /** The tree with two spaces a level and line feeds, as a person edits it. */
    public static String pretty(JsonNode tree) {
        return write(tree, true);
    }

    private static String write(JsonNode tree, boolean pretty) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(text)) {
            if (pretty) {
                DefaultIndenter lines = new DefaultIndenter("  ", "\n");
                out.setPrettyPrinter(
                        new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines));
            }
            write(tree, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void write(JsonNode node, JsonGenerator out) throws IOException {
        if (node.isObject()) {
            out.writeStartObject();
            for (Map.Entry<String, JsonNode> e : node.properties()) {
                out.writeFieldName(e.getKey());
                write(e.getValue(), out);
            }
            out.writeEndObject();
        } else if (node.isArray()) {
            out.writeStartArray();
            for (JsonNode e : node) {
                write(e, out);
            }
            out.writeEndArray();
        } else if (node.isTextual()) {
            out.writeString(node.textValue());
        } else if (node.isBoolean()) {
            out.writeBoolean(node.booleanValue());
        } else if (node.isBigDecimal()) {
            out.writeNumber(node.decimalValue());
        } else if (node.isNumber()) {
            out.writeRawValue(node.asText());
        } else {
            out.writeNull();
        }
    }
}
