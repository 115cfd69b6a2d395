package mouldwright.geometry.draft;

/** A direction or a place in space. */
record Vector(double x, double y, double z) {

    Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y, z - other.z);
    }

    Vector times(double factor) {
        return new Vector(factor * x, factor * y, factor * z);
    }

    double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    /** The same way, a metre long; itself where it has no length. */
    Vector unit() {
        double length = length();
        return length > 0 ? times(1 / length) : this;
    }

    boolean isFinite() {
        return Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z);
    }
}
