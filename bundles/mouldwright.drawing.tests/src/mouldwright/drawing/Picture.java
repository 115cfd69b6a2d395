package mouldwright.drawing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A grey picture as the readers of others render it (PGM, P5). */
record Picture(int width, int height, byte[] grey) {

    static Picture read(Path file) throws IOException {
        byte[] all = Files.readAllBytes(file);
        int[] head = new int[3];
        int at = 2;
        for (int found = 0; found < 3; found++) {
            while (Character.isWhitespace(all[at]))
                at++;
            while (!Character.isWhitespace(all[at]))
                head[found] = head[found] * 10 + all[at++] - '0';
        }
        byte[] grey = new byte[head[0] * head[1]];
        System.arraycopy(all, at + 1, grey, 0, grey.length);
        return new Picture(head[0], head[1], grey);
    }

    boolean dark(int x, int y) {
        return (grey[y * width + x] & 0xff) < 128;
    }

    /** Columns of which more than nine in ten pixels between two rows are at least greyish. */
    List<Integer> linesUp(int fromY, int toY) {
        return linesUp(fromY, toY, 0.9);
    }

    /** The same for another share of the pixels, such as that of a dashed line. */
    List<Integer> linesUp(int fromY, int toY, double share) {
        List<Integer> columns = new ArrayList<>();
        for (int x = 0; x < width; x++) {
            int n = 0;
            for (int y = fromY; y < toY; y++)
                if ((grey[y * width + x] & 0xff) < 220)
                    n++;
            if (n > share * (toY - fromY))
                columns.add(x);
        }
        return columns;
    }
}
