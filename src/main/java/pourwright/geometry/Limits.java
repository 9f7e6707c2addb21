package pourwright.geometry;

/**
 * How much of a mesh file is read at most. A file that says or holds more is refused before memory is taken for it.
 *
 * @param bytes     most bytes in the file
 * @param triangles most triangles
 * @param vertices  most vertices that a file may list
 */
public record Limits(long bytes, int triangles, int vertices) {

    /** Enough for 5 million triangles as text; about 600 MB of memory at the most. */
    public static final Limits USUAL = new Limits(2_000_000_000L, 5_000_000, 6_000_000);
}
