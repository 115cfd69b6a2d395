package mouldwright.language;

import com.google.inject.Guice;
import com.google.inject.Injector;
import com.google.inject.util.Modules;
import java.util.Optional;
import mouldwright.model.PlugPackage;
import mouldwright.project.ContentSource;
import org.eclipse.emf.ecore.EPackage;

/** Sets the language up where no platform does it: for the command line, the language server and tests. */
public class PlugStandaloneSetup extends PlugStandaloneSetupGenerated {

	private final Optional<ContentSource> source;

	/** For files on the disk. */
	public PlugStandaloneSetup() {
		source = Optional.empty();
	}

	/** For files from elsewhere.
	 *  @param source where they come from */
	public PlugStandaloneSetup(ContentSource source) {
		this.source = Optional.of(source);
	}

	@Override
	public Injector createInjectorAndDoEMFRegistration() {
		EPackage.Registry.INSTANCE.putIfAbsent(PlugPackage.eNS_URI, PlugPackage.eINSTANCE);
		return super.createInjectorAndDoEMFRegistration();
	}

	@Override
	public Injector createInjector() {
		return source.isEmpty() ? super.createInjector()
				: Guice.createInjector(Modules.override(new PlugRuntimeModule()).with(binder -> binder.bind(ContentSource.class).toInstance(source.get())));
	}
}
