package mouldwright.exchange.mesh;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import mouldwright.units.Unit;

/** Writes meshes. The same mesh gives the same bytes. */
public final class MeshFiles {

    /** Bytes of the head of a binary STL. */
    private static final int HEAD = 80;
    /** Bytes of a triangle: a normal and three corners of three floats each, and two bytes of nothing. */
    private static final int TRIANGLE = 50;

    private MeshFiles() { }

    /** Binary STL: a head of 80 bytes, the count, 50 bytes a triangle, low bytes first. The format keeps no unit; the head names it in words.
     *  @param title of the body
     *  @param unit  of the figures */
    public static byte[] stl(TriangleMesh mesh, String title, Unit unit) {
        ByteBuffer out = ByteBuffer.allocate(HEAD + 4 + TRIANGLE * mesh.triangles()).order(ByteOrder.LITTLE_ENDIAN);
        byte[] head = ("Mouldwright, in " + unit.symbol() + ", x aft, y to starboard, z up: " + title).getBytes(StandardCharsets.US_ASCII);
        out.put(Arrays.copyOf(head, HEAD)).putInt(mesh.triangles());
        for (int t = 0; t < mesh.triangles(); t++) {
            double[] n = mesh.across(t);
            double length = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
            for (double figure : n)
                out.putFloat((float) (length == 0 ? 0 : figure / length));
            for (int c = 0; c < 3; c++)
                for (int axis = 0; axis < 3; axis++)
                    out.putFloat((float) unit.fromSi(mesh.at(mesh.corner(t, c), axis)));
            out.putShort((short) 0);
        }
        return out.array();
    }

    /** OBJ: places and faces in text. The format keeps no unit; a remark names it.
     *  @param title of the body, in one line
     *  @param unit  of the figures */
    public static byte[] obj(TriangleMesh mesh, String title, Unit unit) {
        StringBuilder out = new StringBuilder("# Mouldwright: ").append(title).append("\n# in ").append(unit.symbol()).append("; x aft, y to starboard, z up\n");
        for (int p = 0; p < mesh.places(); p++) {
            out.append('v');
            for (int axis = 0; axis < 3; axis++)
                out.append(' ').append(figure(unit.fromSi(mesh.at(p, axis)), unit));
            out.append('\n');
        }
        for (int t = 0; t < mesh.triangles(); t++)
            out.append("f ").append(mesh.corner(t, 0) + 1).append(' ').append(mesh.corner(t, 1) + 1).append(' ').append(mesh.corner(t, 2) + 1).append('\n');
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** To a tenth of a micrometre. */
    private static String figure(double value, Unit unit) {
        int decimals = Math.max(0, (int) Math.ceil(Math.log10(unit.factor() / 1e-7)));
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
