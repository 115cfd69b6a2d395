package mouldwright.language;

import com.google.inject.Injector;
import mouldwright.model.PlugPackage;
import org.eclipse.emf.ecore.EPackage;

/** Sets the language up where no platform does it: for the command line, the language server and tests. */
public class PlugStandaloneSetup extends PlugStandaloneSetupGenerated {

	@Override
	public Injector createInjectorAndDoEMFRegistration() {
		EPackage.Registry.INSTANCE.putIfAbsent(PlugPackage.eNS_URI, PlugPackage.eINSTANCE);
		return super.createInjectorAndDoEMFRegistration();
	}
}
