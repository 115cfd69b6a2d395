package mouldwright.workbench;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/**
 * Starts the workbench in a data area of the user's own, without asking where. One process at a time may use that area: a second one
 * hands the files it was given to the first and ends.
 */
public final class Application implements IApplication {

    @Override
    public Object start(IApplicationContext context) throws IOException {
        List<Path> asked = paths((String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS));
        Location area = Platform.getInstanceLocation();
        boolean ours = area.isSet() ? area.lock() : area.set(DataArea.ofUser().toUri().toURL(), true);
        Doorbell bell = new Doorbell(folder(area.isSet() ? area.getURL() : DataArea.ofUser().toUri().toURL()));
        if (!ours) {
            bell.ring(asked);
            return EXIT_OK;
        }
        Display display = PlatformUI.createDisplay();
        try (bell) {
            int code = PlatformUI.createAndRunWorkbench(display, new PlugWorkbench(asked, bell));
            return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    @Override
    public void stop() {
        if (!PlatformUI.isWorkbenchRunning())
            return;
        Display display = PlatformUI.getWorkbench().getDisplay();
        display.syncExec(() -> {
            if (!display.isDisposed())
                PlatformUI.getWorkbench().close();
        });
    }

    /** Files and folders named on the command line; the platform's own options begin with a dash and come with at most one value. */
    private static List<Path> paths(String[] arguments) {
        int from = Arrays.asList(arguments).indexOf("--");
        return from < 0 ? List.of() : Arrays.stream(arguments).skip(from + 1L).map(one -> Path.of(one).toAbsolutePath().normalize()).toList();
    }

    private static Path folder(URL area) {
        try {
            return Path.of(area.toURI());
        } catch (URISyntaxException e) {
            return Path.of(area.getPath());
        }
    }
}
