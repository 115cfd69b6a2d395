package mouldwright.services;

import com.google.inject.Injector;
import mouldwright.language.PlugStandaloneSetup;
import mouldwright.project.ContentSource;
import org.eclipse.xtext.resource.IResourceFactory;
import org.eclipse.xtext.resource.XtextResourceSet;

/** Sets the language up: once in a process for files on the disk, and once more for every other source. */
final class LanguageSetup {

    private static final String EXTENSION = "plug";

    private LanguageSetup() { }

    /** Set up when it is first asked for. */
    private static final class OnDisk {
        private static final Injector INJECTOR = setUp();

        private static Injector setUp() {
            QuietLog.install();
            return new PlugStandaloneSetup().createInjectorAndDoEMFRegistration();
        }
    }

    /** The language for files on the disk. */
    static Injector onDisk() {
        return OnDisk.INJECTOR;
    }

    /** The language for files from another source. */
    static Injector over(ContentSource source) {
        QuietLog.install();
        return new PlugStandaloneSetup(source).createInjectorAndDoEMFRegistration();
    }

    /** An empty set whose texts are read by one set-up of the language, whichever registered itself last. */
    static XtextResourceSet resources(Injector injector) {
        XtextResourceSet set = injector.getInstance(XtextResourceSet.class);
        set.getResourceFactoryRegistry().getExtensionToFactoryMap().put(EXTENSION, injector.getInstance(IResourceFactory.class));
        return set;
    }
}
