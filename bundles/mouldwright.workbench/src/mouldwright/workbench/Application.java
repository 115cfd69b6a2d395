package mouldwright.workbench;

import java.io.IOException;
import java.net.URL;
import java.nio.file.Path;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** Starts the workbench in a data area of the user's own, without asking where; one process at a time may use it. */
public final class Application implements IApplication {

    @Override
    public Object start(IApplicationContext context) throws IOException {
        Display display = PlatformUI.createDisplay();
        try {
            if (!claimDataArea())
                return EXIT_OK;
            int code = PlatformUI.createAndRunWorkbench(display, new PlugWorkbench());
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

    /** Takes the data area named on the command line, else the user's own, and locks it. */
    private static boolean claimDataArea() throws IOException {
        Location area = Platform.getInstanceLocation();
        if (area.isSet())
            return area.lock();
        URL place = userArea().toUri().toURL();
        return area.set(place, true);
    }

    /** Where the system keeps what programs remember of a user. */
    private static Path userArea() {
        String home = System.getProperty("user.home");
        String state = System.getenv("XDG_DATA_HOME");
        return switch (Platform.getOS()) {
            case Platform.OS_WIN32 -> Path.of(System.getenv().getOrDefault("LOCALAPPDATA", home), "Mouldwright");
            case Platform.OS_MACOSX -> Path.of(home, "Library", "Application Support", "Mouldwright");
            default -> (state == null || state.isBlank() ? Path.of(home, ".local", "share") : Path.of(state)).resolve("mouldwright");
        };
    }
}
