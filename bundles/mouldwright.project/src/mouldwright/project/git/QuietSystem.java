package mouldwright.project.git;

import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/** Keeps the git library to the repository it is shown: no settings of the user or the machine are read, and no program is started for them. */
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

    /** Settings that say nothing. */
    private static final class Empty extends FileBasedConfig {
        Empty(Config parent, FS fs) {
            super(parent, null, fs);
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
