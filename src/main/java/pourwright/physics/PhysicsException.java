package pourwright.physics;

/**
 * Thrown when a physical quantity cannot be what it was said to be, such as a negative absolute pressure.
 * The message is one plain sentence that can be shown to a person, with the value and its unit.
 */
public class PhysicsException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param message one plain sentence with the value and its unit
     */
    public PhysicsException(String message) {
        super(message);
    }
}
