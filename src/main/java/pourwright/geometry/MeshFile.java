package pourwright.geometry;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Opens a mesh file; the only class of this package that touches files. */
public final class MeshFile {

    private MeshFile() {}

    /**
     * Reads and checks a mesh file.
     *
     * @param path          where it lies
     * @param limits        how much is accepted
     * @param metresPerUnit length of one unit of the file, m
     * @return the mesh in metres
     * @throws MeshFault when it cannot be opened or used, with one sentence that names the file
     */
    public static Mesh read(Path path, Limits limits, double metresPerUnit) {
        String name = String.valueOf(path.getFileName());
        if (Files.isDirectory(path)) {
            throw new MeshFault(name + " is a folder; a mesh file is needed.");
        }
        if (!Files.exists(path)) {
            throw new MeshFault(name + " does not exist.");
        }
        if (!Files.isRegularFile(path)) {
            throw new MeshFault(name + " is not a plain file.");
        }
        if (!Files.isReadable(path)) {
            throw new MeshFault(name + " may not be read: no permission.");
        }
        try (InputStream in = Files.newInputStream(path)) {
            long size = Files.size(path);
            if (size > limits.bytes()) {
                throw new MeshFault(name + " is larger than " + limits.bytes() + " bytes, which is the most accepted.");
            }
            return MeshReader.read(in, size, name, limits, metresPerUnit);
        } catch (IOException e) {
            throw new MeshFault(name + " cannot be read: " + e.getMessage() + ".");
        }
    }
}
