package pourwright.console;

import pourwright.geometry.Mesh;

/** The way to the files that hold shapes. */
@FunctionalInterface
public interface Shapes {
    /**
     * Reads a mesh.
     *
     * @param file as it was typed
     * @param metresPerUnit length of one unit of the file, m
     * @throws pourwright.advice.BadAnswer when it cannot be opened or used, in one sentence
     */
    Mesh mesh(String file, double metresPerUnit);
}
