package pourwright.geometry;

import java.nio.ByteBuffer;

/** The kinds of number that a PLY file may hold. */
enum PlyType {
    INT8(1),
    UINT8(1),
    INT16(2),
    UINT16(2),
    INT32(4),
    UINT32(4),
    FLOAT32(4),
    FLOAT64(8);

    final int size;

    PlyType(int size) {
        this.size = size;
    }

    static PlyType of(String word, int line) {
        return switch (word) {
            case "char", "int8" -> INT8;
            case "uchar", "uint8" -> UINT8;
            case "short", "int16" -> INT16;
            case "ushort", "uint16" -> UINT16;
            case "int", "int32" -> INT32;
            case "uint", "uint32" -> UINT32;
            case "float", "float32" -> FLOAT32;
            case "double", "float64" -> FLOAT64;
            default -> throw new MeshFault("Line " + line + " of the PLY header names an unknown type: " + word + ".");
        };
    }

    double get(ByteBuffer from) {
        return switch (this) {
            case INT8 -> from.get(0);
            case UINT8 -> from.get(0) & 0xFF;
            case INT16 -> from.getShort(0);
            case UINT16 -> from.getShort(0) & 0xFFFF;
            case INT32 -> from.getInt(0);
            case UINT32 -> from.getInt(0) & 0xFFFFFFFFL;
            case FLOAT32 -> from.getFloat(0);
            case FLOAT64 -> from.getDouble(0);
        };
    }
}
