package mouldwright.language;

import java.time.Clock;
import mouldwright.language.formatting.SpecFormatter;
import mouldwright.language.linking.NameNotFoundMessages;
import mouldwright.language.linking.PlugScopes;
import mouldwright.language.parser.RepairingParser;
import mouldwright.language.resource.PlugResource;
import mouldwright.language.resource.StationRows;
import mouldwright.language.validation.PlugValidator;
import mouldwright.language.validation.SpecResourceValidator;
import mouldwright.language.validation.SpecValidator;
import mouldwright.project.ContentSource;
import mouldwright.project.DiskSource;
import org.eclipse.emf.ecore.EValidator;
import org.eclipse.emf.ecore.impl.EValidatorRegistryImpl;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.documentation.IEObjectDocumentationProvider;
import org.eclipse.xtext.formatting2.IFormatter2;
import org.eclipse.xtext.linking.ILinkingDiagnosticMessageProvider;
import org.eclipse.xtext.parser.IParser;
import org.eclipse.xtext.resource.IDerivedStateComputer;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.scoping.IScopeProvider;
import org.eclipse.xtext.service.SingletonBinding;
import org.eclipse.xtext.validation.IResourceValidator;

/** Says which classes do the work of the language; those not named here are Xtext's own. */
public class PlugRuntimeModule extends AbstractPlugRuntimeModule {

	@Override
	public Class<? extends IParser> bindIParser() {
		return RepairingParser.class;
	}

	@Override
	public Class<? extends XtextResource> bindXtextResource() {
		return PlugResource.class;
	}

	/** Stations of a row are worked out after parsing. */
	public Class<? extends IDerivedStateComputer> bindIDerivedStateComputer() {
		return StationRows.class;
	}

	@Override
	public Class<? extends IScopeProvider> bindIScopeProvider() {
		return PlugScopes.class;
	}

	@Override
	public Class<? extends IValueConverterService> bindIValueConverterService() {
		return PlugValues.class;
	}

	@Override
	@SingletonBinding(eager = true)
	public Class<? extends PlugValidator> bindPlugValidator() {
		return SpecValidator.class;
	}

	/** Checks of its own for each injector: those of another would read files from another source. */
	@Override
	public EValidator.Registry bindEValidatorRegistry() {
		return new EValidatorRegistryImpl();
	}

	/** Findings in the order of the text, one a line that could not be read. */
	public Class<? extends IResourceValidator> bindIResourceValidator() {
		return SpecResourceValidator.class;
	}

	/** Where files are read: the disk, unless a front has open editors or another tree. */
	public Class<? extends ContentSource> bindContentSource() {
		return DiskSource.class;
	}

	/** What day it is, for acceptances that end. */
	public Clock bindClockToInstance() {
		return Clock.systemDefaultZone();
	}

	/** The one layout of a spec. */
	public Class<? extends IFormatter2> bindIFormatter2() {
		return SpecFormatter.class;
	}

	/** Hovers say what a declaration is. */
	public Class<? extends IEObjectDocumentationProvider> bindIEObjectDocumentationProvider() {
		return PlugDocumentation.class;
	}

	/** A name that is not found is told with the nearest one. */
	public Class<? extends ILinkingDiagnosticMessageProvider.Extended> bindILinkingDiagnosticMessageProvider() {
		return NameNotFoundMessages.class;
	}
}
