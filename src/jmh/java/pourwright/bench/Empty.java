package pourwright.bench;

/** A program that does nothing: how long Java itself takes to start and end. */
public final class Empty {
    private Empty() {}

    /** Nothing. */
    public static void main(String[] args) {}
}
