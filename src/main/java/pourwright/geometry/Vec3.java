package pourwright.geometry;

/**
 * A point or a direction in space. As a point its parts are metres.
 *
 * @param x along the first axis
 * @param y along the second axis
 * @param z along the third axis
 */
public record Vec3(double x, double y, double z) {

    /** The direction up when nothing else is said. */
    public static final Vec3 UP = new Vec3(0, 0, 1);

    /** This plus another. */
    public Vec3 plus(Vec3 other) {
        return new Vec3(x + other.x, y + other.y, z + other.z);
    }

    /** This less another. */
    public Vec3 minus(Vec3 other) {
        return new Vec3(x - other.x, y - other.y, z - other.z);
    }

    /** This, so many times as long. */
    public Vec3 times(double factor) {
        return new Vec3(x * factor, y * factor, z * factor);
    }

    /** The scalar product. */
    public double dot(Vec3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /** The vector product, at right angles to both by the right-hand rule. */
    public Vec3 cross(Vec3 other) {
        return new Vec3(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** The length. */
    public double length() {
        // Scaled first, so that neither tiny nor huge parts are lost when squared.
        double most = Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z)));
        if (most == 0 || !Double.isFinite(most)) {
            return most;
        }
        double a = x / most;
        double b = y / most;
        double c = z / most;
        return most * Math.sqrt(a * a + b * b + c * c);
    }

    /** Whether all three parts are numbers. */
    public boolean isFinite() {
        return Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z);
    }

    /**
     * The same direction with length one. A direction along an axis stays exact.
     *
     * @throws MeshFault when the direction has no length or a part is not a number
     */
    public Vec3 unit() {
        double length = length();
        if (!isFinite() || length == 0) {
            throw new MeshFault("A direction needs three numbers that are not all zero, such as 0,0,1.");
        }
        return new Vec3(x / length, y / length, z / length);
    }

    /** Any direction at right angles to this one, of length one; the same for the same input. */
    public Vec3 anyNormal() {
        double ax = Math.abs(x);
        double ay = Math.abs(y);
        double az = Math.abs(z);
        Vec3 helper = ax <= ay && ax <= az ? new Vec3(1, 0, 0) : ay <= az ? new Vec3(0, 1, 0) : new Vec3(0, 0, 1);
        return helper.minus(times(dot(helper) / dot(this))).unit();
    }
}
