package mouldwright.services;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;

/** The fingerprint of a set of texts: twelve figures of their SHA-256, whatever the line ends and wherever they lie. */
final class Revision {

    private static final int BYTES = 6;

    private Revision() { }

    static String of(Map<Path, String> texts, ProjectNames names) {
        Map<String, String> sorted = new TreeMap<>();
        texts.forEach((file, text) -> sorted.put(names.of(file), text.replace("\r\n", "\n")));
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            sorted.forEach((name, text) -> {
                digest.update((name + "\0" + text + "\0").getBytes(StandardCharsets.UTF_8));
            });
            return HexFormat.of().formatHex(digest.digest(), 0, BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
