package mouldwright.language;

import com.google.inject.Guice;
import com.google.inject.Injector;
import com.google.inject.util.Modules;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import mouldwright.model.Document;
import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.Issue;

/** Parses and checks spec texts for tests. */
final class Specs {

	static final Injector INJECTOR = setUp();
	static final Path EXAMPLES = Path.of("../../examples").toAbsolutePath().normalize();

	private Specs() {
	}

	/** On a day that stays, since some figures are to be looked at again by another. */
	private static Injector setUp() {
		org.apache.log4j.Logger.getRootLogger().setLevel(org.apache.log4j.Level.OFF);
		Clock day = Clock.fixed(Instant.parse("2027-03-01T12:00:00Z"), ZoneOffset.UTC);
		return new PlugStandaloneSetup() {
			@Override
			public Injector createInjector() {
				return Guice.createInjector(Modules.override(new PlugRuntimeModule()).with(binder -> binder.bind(Clock.class).toInstance(day)));
			}
		}.createInjectorAndDoEMFRegistration();
	}

	/** A text as if it stood in a file, which need not be there. */
	static XtextResource parse(Path file, String text) {
		XtextResource resource = (XtextResource) INJECTOR.getInstance(XtextResourceSet.class).createResource(URI.createFileURI(file.toString()));
		try {
			resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), Map.of());
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
		return resource;
	}

	/** A text in the folder of the examples, so that it can use their stock. */
	static XtextResource parse(String text) {
		return parse(EXAMPLES.resolve("tried.plug"), text);
	}

	static Document document(XtextResource resource) {
		return (Document) resource.getContents().get(0);
	}

	static List<Issue> findings(XtextResource resource) {
		return resource.getResourceServiceProvider().getResourceValidator().validate(resource, CheckMode.FAST_ONLY, CancelIndicator.NullImpl);
	}

	static List<Issue> findings(String text) {
		return findings(parse(text));
	}

	static String read(Path file) {
		try {
			return Files.readString(file);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** All specs of the examples, libraries too. */
	static List<Path> examples() {
		try (var files = Files.walk(EXAMPLES)) {
			return files.filter(f -> f.toString().endsWith(".plug") && !f.startsWith(EXAMPLES.resolve("faulty"))).sorted().toList();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
