/* Generated from Plug.xtext */
package mouldwright.language;


/**
 * Initialization support for running Xtext languages without Equinox extension registry.
 */
public class PlugStandaloneSetup extends PlugStandaloneSetupGenerated {

	public static void doSetup() {
		new PlugStandaloneSetup().createInjectorAndDoEMFRegistration();
	}
}
