package mouldwright.geometry.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A sheet being filled: each part goes to the first place along the sheet where it clears what lies there. Across the sheet it is tried at a
 *  row of even steps and wherever it lines up with an edge of a part that lies there. */
final class SheetFilling {

    /** What makes one place better than another; ties go to the place nearest the sheet's first edge. */
    enum Favour {
        /** Where the part reaches least far along the sheet. */
        REACH(2, 2),
        /** Where its middle lies least far along. */
        MIDDLE(2, 1),
        /** Where it begins least far along. */
        BEGINNING(1, 0);

        private final int ofPlace, ofWidth;

        Favour(int ofPlace, int ofWidth) {
            this.ofPlace = ofPlace;
            this.ofWidth = ofWidth;
        }

        private long worth(long place, long width) {
            return ofPlace * place + ofWidth * width;
        }

        /** The last place with less than a worth. */
        private long lastBelow(long worth, long width) {
            return Math.floorDiv(worth - 1 - ofWidth * width, ofPlace);
        }
    }

    /** A part and where it begins, units from the sheet's usable corner. @param index of the part in the order */
    record Spot(int index, Silhouette shape, int x, int y) {
        int end() {
            return x + shape.width;
        }
    }

    private static final int STEPS = 40;

    private final SheetSize size;
    private final int length, width, step;
    private final List<Spot> laid = new ArrayList<>();
    private final List<List<Silhouette>> noRoom = new ArrayList<>();
    private int[] levels = new int[0];

    SheetFilling(SheetSize size) {
        this.size = size;
        this.length = size.length();
        this.width = size.width();
        this.step = Math.max(1, width / STEPS);
    }

    SheetSize size() {
        return size;
    }

    List<Spot> laid() {
        return laid;
    }

    /** The far end of what lies there, units. */
    int reach() {
        return laid.stream().mapToInt(Spot::end).max().orElse(0);
    }

    void lay(Spot spot) {
        laid.add(spot);
        int bottom = spot.y, top = spot.y + spot.shape.height;
        IntStream rooms = Arrays.stream(spot.shape.rooms).flatMapToInt(room -> IntStream.of(bottom + room.floor(), bottom + room.ceiling()));
        levels = IntStream.concat(IntStream.concat(Arrays.stream(levels), IntStream.of(bottom, top)), rooms).sorted().distinct().toArray();
    }

    /** Lays a part at its best place, if there is room.
     *  @param index  of the part
     *  @param turned the part at each of its angles; copies of a part share the list, and where one found no room no other will
     *  @return whether it lies there now */
    boolean take(int index, List<Silhouette> turned, Favour favour) {
        for (List<Silhouette> other : noRoom)
            if (other == turned)
                return false;
        Optional<Spot> spot = spot(index, turned, favour);
        if (spot.isEmpty())
            noRoom.add(turned);
        spot.ifPresent(this::lay);
        return spot.isPresent();
    }

    private Optional<Spot> spot(int index, List<Silhouette> turned, Favour favour) {
        Spot best = null;
        long worth = Long.MAX_VALUE;
        for (Silhouette shape : turned) {
            if (shape.width > length || shape.height > width)
                continue;
            for (int y : feet(shape)) {
                long last = Math.min(length - shape.width, worth == Long.MAX_VALUE ? length : favour.lastBelow(worth, shape.width));
                int x = first(shape, y, last);
                if (x >= 0) {
                    best = new Spot(index, shape, x, y);
                    worth = favour.worth(x, shape.width);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private int[] feet(Silhouette shape) {
        int highest = width - shape.height;
        int[] feet = new int[2 * levels.length + highest / step + 2];
        int count = 0;
        for (int level : levels) {
            feet[count++] = level;
            feet[count++] = level - shape.height;
        }
        for (int y = 0; y <= highest; y += step)
            feet[count++] = y;
        feet[count++] = highest;
        return Arrays.stream(feet, 0, count).filter(y -> y >= 0 && y <= highest).sorted().distinct().toArray();
    }

    /** The first free place along the sheet at a height; -1 if it is past the last one wanted. */
    private int first(Silhouette shape, int y, long last) {
        if (last < 0)
            return -1;
        int x = 0, quiet = 0, size = laid.size();
        for (int k = 0; quiet < size; k = k + 1 == size ? 0 : k + 1) {
            Spot there = laid.get(k);
            int moved = y >= there.y + there.shape.height || y + shape.height <= there.y ? x : shape.past(x, y, there.shape, there.x, there.y);
            if (moved > last)
                return -1;
            quiet = moved == x ? quiet + 1 : 0;
            x = moved;
        }
        return x;
    }
}
