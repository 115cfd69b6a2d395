/* Generated from Plug.xtext */
package mouldwright.language;


/**
 * Use this class to register components to be used at runtime / without the Equinox extension registry.
 */
public class PlugRuntimeModule extends AbstractPlugRuntimeModule {
}
