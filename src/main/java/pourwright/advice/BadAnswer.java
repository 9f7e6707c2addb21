package pourwright.advice;

/** An answer that cannot be true. The message is one plain sentence for the person. */
public final class BadAnswer extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String field;

    public BadAnswer(String field, String message) {
        super(message);
        this.field = field;
    }

    /** Id of the question whose answer it is. */
    public String field() {
        return field;
    }
}
