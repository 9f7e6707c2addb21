package pourwright.vents;

import java.util.Comparator;
import java.util.Optional;
import pourwright.facts.Answers;
import pourwright.geometry.Domain;
import pourwright.geometry.Lump;
import pourwright.geometry.Mesh;
import pourwright.geometry.Pocket;
import pourwright.geometry.Pockets;
import pourwright.geometry.Trapped;
import pourwright.knowledge.Knowledge;
import pourwright.units.Dimension;

/** What a mesh tells about a job: answers that a person need not give. What the person said stands. */
public final class MeshAnswers {
    private MeshAnswers() {}

    /**
     * The answers of a plan, with what the mesh gives: the volume to fill or the volume of the master, the thinnest wall, the
     * thickest lump, and the hardest place for air to leave.
     *
     * @throws pourwright.geometry.MeshFault when a gate or vent lies off the surface
     */
    public static Answers ofPlan(Answers answers, Knowledge knowledge, MeshRequest request, Mesh mesh) {
        boolean cavity = request.setup().domain() == Domain.CAVITY;
        Answers all = amount(answers, mesh, cavity);
        if (!all.has("job")) {
            all = Typed.choice(all, "job", cavity ? "closed-mould" : "rubber-around-master");
        }
        Trapped trapped = Pockets.find(mesh, request.setup());
        if (cavity) {
            all = length(all, "thinnest-wall", trapped.thinnestM());
            all = length(all, "part-depth", Lump.thickestM(mesh));
        }
        return undercut(all, knowledge, trapped);
    }

    /** With the volume to fill, or that of the master, unless an amount was given. */
    static Answers amount(Answers answers, Mesh mesh, boolean cavity) {
        double volumeM3 = Math.abs(mesh.report().volumeM3());
        String question = cavity ? "part-volume" : "master-volume";
        boolean given = answers.has("batch-mass") || answers.has("part-volume") || answers.has(question);
        if (given || volumeM3 == 0) {
            return answers;
        }
        Answers all = Typed.quantity(answers, question, volumeM3, "mL", Dimension.VOLUME);
        String by = cavity ? "amount-by" : "master-by";
        return all.has(by) ? all : Typed.choice(all, by, "volume");
    }

    private static Answers undercut(Answers answers, Knowledge knowledge, Trapped trapped) {
        if (answers.has("undercuts") || trapped.noOutlet()) {
            return answers;
        }
        Optional<Pocket> worst = trapped.whole().stream().max(Comparator.comparingDouble(Pocket::volumeM3));
        if (worst.isEmpty()) {
            return Typed.choice(answers, "undercuts", "none");
        }
        Pocket pocket = worst.get();
        Answers all = Typed.choice(answers, "undercuts", UndercutClass.of(pocket.mouthWidthM(), knowledge));
        all = length(all, "undercut-width", pocket.mouthWidthM());
        all = length(all, "undercut-depth", pocket.depthM());
        if (!all.has("undercut-blind")) {
            all = Typed.choice(all, "undercut-blind", "yes");
        }
        if (!all.has("pocket-volume")) {
            all = Typed.quantity(all, "pocket-volume", pocket.volumeM3(), "mL", Dimension.VOLUME);
        }
        return length(all, "head-height", pocket.headM());
    }

    private static Answers length(Answers answers, String question, double metres) {
        return answers.has(question) || !(metres > 0) || Double.isInfinite(metres)
                ? answers
                : Typed.quantity(answers, question, metres, "mm", Dimension.LENGTH);
    }
}
