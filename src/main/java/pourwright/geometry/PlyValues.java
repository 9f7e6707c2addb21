package pourwright.geometry;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** The numbers of a PLY body one after the other, from text or from bytes. */
final class PlyValues {
    private final TextFeed words;
    private final ByteFeed bytes;
    private final byte[] raw = new byte[8];
    private final ByteBuffer buffer;
    private String element = "";
    private long says;
    private long done;

    private PlyValues(TextFeed words, ByteFeed bytes, ByteOrder order) {
        this.words = words;
        this.bytes = bytes;
        this.buffer = ByteBuffer.wrap(raw).order(order);
    }

    static PlyValues of(String format, TextFeed words, ByteFeed bytes) {
        return switch (format) {
            case "ascii" -> new PlyValues(words, null, ByteOrder.LITTLE_ENDIAN);
            case "binary_little_endian" -> new PlyValues(null, bytes, ByteOrder.LITTLE_ENDIAN);
            case "binary_big_endian" -> new PlyValues(null, bytes, ByteOrder.BIG_ENDIAN);
            default ->
                throw new MeshFault("The PLY format " + format
                        + " is not known; ascii, binary_little_endian and binary_big_endian are accepted.");
        };
    }

    /** Says where reading is, for a fault. */
    void startElement(String name, long count, long number) {
        element = name;
        says = count;
        done = number;
    }

    double next(PlyType type) {
        if (words != null) {
            if (!words.nextWord()) {
                throw cutShort();
            }
            return type == PlyType.FLOAT32 ? words.coordinate() : words.number();
        }
        if (bytes.readFully(raw, type.size) < type.size) {
            throw cutShort();
        }
        return type.get(buffer);
    }

    private MeshFault cutShort() {
        return new MeshFault("The PLY file says " + says + " of " + element + " but holds " + done + ".");
    }
}
