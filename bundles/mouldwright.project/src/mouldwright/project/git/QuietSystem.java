package mouldwright.project.git;

import java.util.concurrent.TimeUnit;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.lib.ConfigConstants;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/** Keeps the git library to the repository it is shown: no settings of the user or the machine are read, no program is started for them, and nothing is written
 *  to find out how fine the clock of a drive is. */
final class QuietSystem extends SystemReader.Delegate {

    private QuietSystem(SystemReader system) {
        super(system);
    }

    static synchronized void install() {
        if (!(SystemReader.getInstance() instanceof QuietSystem))
            SystemReader.setInstance(new QuietSystem(SystemReader.getInstance()));
    }

    @Override
    public FileBasedConfig openUserConfig(Config parent, FS fs) {
        return new Empty(parent, fs);
    }

    @Override
    public FileBasedConfig openSystemConfig(Config parent, FS fs) {
        return new Empty(parent, fs);
    }

    @Override
    public FileBasedConfig openJGitConfig(Config parent, FS fs) {
        return new Empty(parent, fs);
    }

    /** Settings that say nothing, but for the clock of the drive: unless it is told, the library writes files beside the repository to measure it. */
    private static final class Empty extends FileBasedConfig {
        /** As coarse as clocks of drives are, so that a change is never missed. */
        private static final long CLOCK_SECONDS = 2;

        Empty(Config parent, FS fs) {
            super(parent, null, fs);
        }

        @Override
        public long getTimeUnit(String section, String subsection, String name, long otherwise, TimeUnit unit) {
            return section.equals(ConfigConstants.CONFIG_FILESYSTEM_SECTION) ? unit.convert(CLOCK_SECONDS, TimeUnit.SECONDS) : super.getTimeUnit(section, subsection, name, otherwise, unit);
        }

        @Override
        public void load() { }

        @Override
        public void save() { }

        @Override
        public boolean isOutdated() {
            return false;
        }
    }
}
