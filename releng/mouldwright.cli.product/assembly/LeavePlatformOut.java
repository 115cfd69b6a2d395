import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Takes off a class path what only a running platform needs. EMF and Xtext would like to have it where it can be had, and the workbench brings it to the
 *  target; on a class path they never ask for it. */
public final class LeavePlatformOut {

    private static final List<String> PLATFORM = List.of("org.apache.felix.scr", "org.eclipse.core.contenttype", "org.eclipse.core.jobs", "org.eclipse.core.runtime",
            "org.eclipse.equinox.app", "org.eclipse.equinox.preferences", "org.eclipse.equinox.registry", "org.osgi.service.component", "org.osgi.service.prefs", "org.osgi.util.function",
            "org.osgi.util.promise");

    private LeavePlatformOut() { }

    /** @param arguments a folder; all jars in it and below are looked at */
    public static void main(String[] arguments) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(arguments[0]))) {
            for (Path jar : files.filter(LeavePlatformOut::isOfThePlatform).toList()) {
                Files.delete(jar);
            }
        }
    }

    private static boolean isOfThePlatform(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(".jar") && name.indexOf('_') > 0 && PLATFORM.contains(name.substring(0, name.indexOf('_')));
    }
}
