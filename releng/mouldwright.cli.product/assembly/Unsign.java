import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/** Takes the signatures off the jars of a class path once they have been checked by the build. With them a JVM digests every
 *  class anew at each start, a tenth of the time of a short command, and keeps none of them in an archive of classes. */
public final class Unsign {

    private Unsign() { }

    /** @param arguments a folder; all jars in it and below are looked at */
    public static void main(String[] arguments) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(arguments[0]))) {
            files.filter(file -> file.toString().endsWith(".jar")).forEach(Unsign::unsign);
        }
    }

    private static void unsign(Path jar) {
        try {
            Path plain = jar.resolveSibling(jar.getFileName() + ".plain");
            try (JarFile file = new JarFile(jar.toFile(), false)) {
                List<JarEntry> entries = file.stream().toList();
                if (entries.stream().noneMatch(entry -> isSignature(entry.getName()))) {
                    return;
                }
                try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(plain))) {
                    for (JarEntry entry : entries) {
                        copy(file, entry, out);
                    }
                }
            }
            Files.move(plain, jar, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(jar.toString(), e);
        }
    }

    private static void copy(JarFile file, JarEntry entry, JarOutputStream out) throws IOException {
        if (isSignature(entry.getName())) {
            return;
        }
        JarEntry copy = new JarEntry(entry.getName());
        copy.setTime(entry.getTime());
        out.putNextEntry(copy);
        try (InputStream in = file.getInputStream(entry)) {
            if (entry.getName().equals(JarFile.MANIFEST_NAME)) {
                var manifest = new java.util.jar.Manifest(in);
                manifest.getEntries().clear();                  // digests of every file
                manifest.write(out);
            } else {
                in.transferTo(out);
            }
        }
        out.closeEntry();
    }

    private static boolean isSignature(String name) {
        return name.startsWith("META-INF/") && name.indexOf('/', "META-INF/".length()) < 0 && name.matches(".*\\.(SF|RSA|DSA|EC)");
    }
}
