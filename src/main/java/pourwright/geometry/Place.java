package pourwright.geometry;

/** A place in a file, put into words only when there is a fault to tell. */
record Place(String what, long number) {
    @Override
    public String toString() {
        return what + " " + number;
    }
}
