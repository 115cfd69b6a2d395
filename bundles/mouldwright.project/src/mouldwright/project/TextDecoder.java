package mouldwright.project;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

import mouldwright.project.ContentSource.Found;
import mouldwright.project.ReadResult.Reason;
import mouldwright.project.ReadResult.Refused;

/** Bytes to text: UTF-8 without exception, a byte order mark left off. */
final class TextDecoder {

    private TextDecoder() { }

    static ReadResult decode(Found found, String name) {
        byte[] bytes = found.bytes();
        if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
            return new Refused(Reason.NOT_UTF8, "\"" + name + "\" is written in UTF-16; save it as UTF-8");
        }
        int start = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        for (int i = start; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                return new Refused(Reason.BINARY, "\"" + name + "\" is not text: a zero byte at offset " + i + "; save it as text");
            }
        }
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(bytes.length - start);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            return new Refused(Reason.NOT_UTF8, "\"" + name + "\" is not UTF-8: byte 0x"
                    + "%02X".formatted(bytes[in.position()]) + " at offset " + in.position() + ", line "
                    + line(bytes, in.position()) + "; save it as UTF-8");
        }
        decoder.flush(out);
        return new ReadResult.Text(out.flip().toString(), found.file());
    }

    private static int line(byte[] bytes, int offset) {
        int line = 1;
        for (int i = 0; i < offset; i++) {
            boolean lineFeed = bytes[i] == '\n';
            boolean lonelyReturn = bytes[i] == '\r' && (i + 1 == bytes.length || bytes[i + 1] != '\n');
            line += lineFeed || lonelyReturn ? 1 : 0;
        }
        return line;
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
