package mouldwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.util.jar.Manifest;

/** The version of the program, as its own bundle states it. */
final class Version {

    private static final String UNBUILT = "from sources";

    private Version() { }

    static String words() {
        String self = String.valueOf(Version.class.getResource("Version.class"));
        int root = self.lastIndexOf("/mouldwright/cli/");
        if (root < 0) {
            return UNBUILT;
        }
        try (InputStream in = URI.create(self.substring(0, root) + "/META-INF/MANIFEST.MF").toURL().openStream()) {
            String version = new Manifest(in).getMainAttributes().getValue("Bundle-Version");
            return version == null ? UNBUILT : version;
        } catch (IOException | IllegalArgumentException e) {
            return UNBUILT;
        }
    }
}
