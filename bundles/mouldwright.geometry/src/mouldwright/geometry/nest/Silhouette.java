package mouldwright.geometry.nest;

import java.util.Arrays;
import java.util.Optional;

/** A part at one angle, grown by half a kerf, as strips across the sheet: each strip holds the stretches along the sheet the part takes up
 *  anywhere in it. Stretches are exact, strips are safe: what they show free is free. Whole tenths of a micrometre, so that parts which fill a
 *  sheet to the last digit are found to fit; the lower left corner of the grown part is at 0, 0. */
final class Silhouette {
    /** Units in a metre. */
    static final double UNIT = 1e7;

    /** The part is turned by. */
    final int degrees;
    final int width;
    final int height;
    final int strip;
    /** Where in {@link #low} the stretches of a strip begin; one more than there are strips. */
    final int[] begins;
    final int[] low;
    final int[] high;
    /** What another part may lie in. */
    final Room[] rooms;
    /** What is added to the turned part so that it starts at 0, 0, metres, the grown rim not counted. */
    final double shiftX;
    final double shiftY;
    /** The same without openings, for parts that lie in none: it has fewer stretches. */
    private final Silhouette solid;

    /** The box round an opening. @param floor its lowest level @param ceiling its highest one @param width along the sheet */
    record Room(int floor, int ceiling, int width) { }

    Silhouette(int degrees, int width, int height, int strip, int[] begins, int[] low, int[] high, Room[] rooms, double shiftX, double shiftY,
            Optional<Silhouette> solid) {
        this.degrees = degrees;
        this.width = width;
        this.height = height;
        this.strip = strip;
        this.begins = begins;
        this.low = low;
        this.high = high;
        this.rooms = rooms;
        this.shiftX = shiftX;
        this.shiftY = shiftY;
        this.solid = solid.orElse(this);
    }

    /** Whether another takes up the same: a part that looks alike turned is tried once. */
    boolean sameAs(Silhouette other) {
        return width == other.width && height == other.height && Arrays.equals(begins, other.begins) && Arrays.equals(low, other.low)
                && Arrays.equals(high, other.high);
    }

    private boolean hasRoomFor(Silhouette other) {
        for (Room room : rooms)
            if (other.width <= room.width && other.height <= room.ceiling - room.floor)
                return true;
        return false;
    }

    /** Moved along the sheet, if need be, past whatever of another it meets, strip by strip. Having been moved in a late strip it may
     *  meet the other in an early one: it is clear of it once this moves it no more.
     *  @param x     where this begins
     *  @param y     where its foot is
     *  @param other what lies there
     *  @param atX   where that begins
     *  @param atY   where its foot is
     *  @return where this begins then */
    int past(int x, int y, Silhouette other, int atX, int atY) {
        if (x >= atX + other.width || x + width <= atX)
            return x;
        Silhouette mine = hasRoomFor(other) ? this : solid, theirs = other.hasRoomFor(this) ? other : other.solid;
        int to = Math.min(y + height, atY + other.height), at = x;
        for (int level = Math.max(y, atY); level < to;) {
            int i = (level - y) / strip, j = (level - atY) / strip;
            at = mine.pastStrip(at, i, theirs, j, atX);
            level = Math.min(y + (i + 1) * strip, atY + (j + 1) * strip);
        }
        return at;
    }

    private int pastStrip(int x, int mine, Silhouette other, int theirs, int atX) {
        int at = x;
        for (int j = other.begins[theirs]; j < other.begins[theirs + 1]; j++) {
            int begin = atX + other.low[j], end = atX + other.high[j];
            for (int i = begins[mine]; i < begins[mine + 1]; i++)
                if (at + low[i] < end && at + high[i] > begin)
                    at = end - low[i];
        }
        return at;
    }
}
