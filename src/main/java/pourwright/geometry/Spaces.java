package pourwright.geometry;

import java.util.BitSet;

/** The spaces behind a result, kept so that a picture can show them. */
public final class Spaces {
    private final Air air;
    private final int[] pieceOfPocket;

    Spaces(Air air, int[] pieceOfPocket) {
        this.air = air;
        this.pieceOfPocket = pieceOfPocket.clone();
    }

    /** The triangles that bound a pocket, or null where columns were used instead of the surface. */
    BitSet touched(Pocket pocket) {
        return air.touched(pieceOfPocket[pocket.id() - 1]);
    }

    /** Paints the parts of the surface that bound a pocket. */
    void show(Pocket pocket, Air.Painter painter) {
        air.show(pieceOfPocket[pocket.id() - 1], painter);
    }
}
