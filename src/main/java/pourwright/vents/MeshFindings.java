package pourwright.vents;

import java.util.ArrayList;
import java.util.List;
import pourwright.geometry.Attitude;
import pourwright.geometry.Mesh;
import pourwright.geometry.Setup;
import pourwright.geometry.Trapped;
import pourwright.geometry.Vec3;
import pourwright.geometry.VentPlan;

/**
 * What a mesh showed.
 *
 * @param mesh      the mesh
 * @param setup     how it stands, with the gates and vents that were given
 * @param trapped   what stays as it stands
 * @param vents     the fewest vents, and what stays with them
 * @param attitudes ways to stand it, best first, measured exactly; empty when none was looked for
 * @param tried     how many directions were tried
 */
public record MeshFindings(
        Mesh mesh, Setup setup, Trapped trapped, VentPlan vents, List<Attitude> attitudes, int tried) {
    public MeshFindings {
        attitudes = List.copyOf(attitudes);
    }

    /** The setup with the vents that were placed, for a picture. */
    public Setup vented() {
        Setup all =
                setup.gates().isEmpty() && trapped.gate() != null ? setup.withGates(List.of(trapped.gate())) : setup;
        List<Vec3> places = new ArrayList<>(all.vents());
        vents.vents().forEach(v -> places.add(v.place()));
        return all.withVents(places);
    }
}
