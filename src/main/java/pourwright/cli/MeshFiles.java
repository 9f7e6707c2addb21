package pourwright.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import pourwright.advice.BadAnswer;
import pourwright.console.Shapes;
import pourwright.geometry.Limits;
import pourwright.geometry.Mesh;
import pourwright.geometry.MeshFault;
import pourwright.geometry.MeshFile;

/** Reads meshes from files named by a person: as typed, or else beside the case that names them. */
final class MeshFiles implements Shapes {
    private final Path beside;

    /** @param beside a folder to look in when the name alone finds nothing, or null */
    MeshFiles(Path beside) {
        this.beside = beside;
    }

    /** Beside a case file. */
    static MeshFiles besideCase(Path caseFile) {
        return new MeshFiles(caseFile == null ? null : caseFile.toAbsolutePath().getParent());
    }

    @Override
    public Mesh mesh(String file, double metresPerUnit) {
        try {
            Path path = Path.of(file);
            if (!Files.exists(path) && beside != null && Files.exists(beside.resolve(path))) {
                path = beside.resolve(path);
            }
            return MeshFile.read(path, Limits.USUAL, metresPerUnit);
        } catch (InvalidPathException e) {
            throw new BadAnswer("mesh-file", "\"" + file + "\" cannot be the name of a file. For example ear.stl.");
        } catch (MeshFault e) {
            throw new BadAnswer("mesh-file", e.getMessage());
        }
    }
}
