package mouldwright.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.function.BiFunction;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A zip archive written anew, so that it comes out the same each time. It is read by its directory at the end (APPNOTE 4.3.12), since the sizes before
 *  the entries may be left open. */
final class Archive {

    /** The first moment an entry can carry; a clock has no place in a file that comes out the same each time. */
    private static final LocalDateTime FIRST = LocalDateTime.of(1980, 1, 1, 0, 0);
    private static final int END = 22;
    private static final int DEFLATED = 8;

    private Archive() { }

    /** The same entries in the same order, all of the first moment.
     *  @param change what becomes of an entry's name and bytes */
    static byte[] again(byte[] archive, BiFunction<String, byte[], byte[]> change) throws IOException {
        ByteBuffer in = ByteBuffer.wrap(archive).order(ByteOrder.LITTLE_ENDIAN);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            int end = archive.length - END;
            int at = in.getInt(end + 16);
            for (int left = in.getShort(end + 10); left > 0; left--) {
                int name = in.getShort(at + 28);
                String words = new String(archive, at + 46, name, StandardCharsets.UTF_8);
                ZipEntry entry = new ZipEntry(words);
                entry.setTimeLocal(FIRST);
                out.putNextEntry(entry);
                out.write(change.apply(words, content(in, archive, at)));
                out.closeEntry();
                at += 46 + name + in.getShort(at + 30) + in.getShort(at + 32);
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] content(ByteBuffer in, byte[] archive, int at) throws IOException {
        int method = in.getShort(at + 10);
        int packed = in.getInt(at + 20);
        byte[] content = new byte[in.getInt(at + 24)];
        int local = in.getInt(at + 42);
        int begin = local + 30 + in.getShort(local + 26) + in.getShort(local + 28);
        if (method != DEFLATED) {
            System.arraycopy(archive, begin, content, 0, content.length);
            return content;
        }
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(archive, begin, packed);
            for (int done = 0; done < content.length;) {
                int read = inflater.inflate(content, done, content.length - done);
                if (read == 0) {
                    throw new IOException("an entry ends too soon");
                }
                done += read;
            }
            return content;
        } catch (DataFormatException e) {
            throw new IOException(e);
        } finally {
            inflater.end();
        }
    }
}
