package pourwright.geometry;

/**
 * A mesh, or a question about it, that cannot be used. The message is one plain sentence or two: what is wrong, where,
 * and what is accepted.
 */
public final class MeshFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * A fault.
     *
     * @param message what to tell the person
     */
    public MeshFault(String message) {
        super(message);
    }
}
