package pourwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Places vents one by one, each time on the air as it is with those before. */
public final class VentPlacer {

    private VentPlacer() {}

    /**
     * Places the fewest vents that leave only pockets which need none.
     *
     * @param mesh      the cavity or the master
     * @param setup     how it stands, with what openings it has already
     * @param needsVent which pockets need a vent; a larger pocket must need one whenever a smaller one does
     * @param most      most vents to add
     * @return the vents in order, and what is left
     * @throws MeshFault as {@link Pockets#find}
     */
    public static VentPlan place(Mesh mesh, Setup setup, Predicate<Pocket> needsVent, int most) {
        Frame frame = new Frame(mesh.xyz, setup.up());
        Setup now = Pockets.withGate(mesh, frame, setup);
        double high = Double.NEGATIVE_INFINITY;
        for (int v : mesh.triangles) {
            high = Math.max(high, frame.h[v]);
        }
        double base = mesh.origin.dot(frame.up);
        double pour = Double.isNaN(setup.pourLevelM()) ? high + base : setup.pourLevelM();
        List<VentPlan.Vent> vents = new ArrayList<>();
        boolean enough = false;
        while (true) {
            Air air = Pockets.air(mesh, frame, now, Outlets.of(mesh, now));
            VentNeeds needs = new VentNeeds(mesh, air, now, needsVent);
            int piece = needs.next();
            enough = piece < 0;
            if (enough || vents.size() >= most) {
                break;
            }
            Vec3 place = needs.place(piece);
            double height = place.dot(frame.up);
            double freed = needs.volumeM3(piece) - needs.leftAfterVent(piece);
            vents.add(new VentPlan.Vent(place, height, freed, Math.max(0, pour - height)));
            List<Vec3> places = new ArrayList<>(now.vents());
            places.add(place);
            now = now.withVents(places);
        }
        return new VentPlan(vents, Pockets.find(mesh, now), enough);
    }
}
