package pourwright.geometry;

/** The spaces behind a result, kept so that a picture can show them. */
public final class Spaces {
    private final Air air;
    private final int[] pieceOfPocket;

    Spaces(Air air, int[] pieceOfPocket) {
        this.air = air;
        this.pieceOfPocket = pieceOfPocket.clone();
    }

    /** Paints the parts of the surface that bound a pocket. */
    void show(Pocket pocket, Air.Painter painter) {
        air.show(pieceOfPocket[pocket.id() - 1], painter);
    }
}
