package pourwright.knowledge;

/** A knowledge file that cannot be used. The message names the file, the place in it and what was expected. */
public final class KnowledgeFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public KnowledgeFault(String message) {
        super(message);
    }
}
