package mouldwright.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.formatting2.FormatterRequest;
import org.eclipse.xtext.formatting2.IFormatter2;
import org.eclipse.xtext.formatting2.regionaccess.ITextRegionAccess;
import org.eclipse.xtext.formatting2.regionaccess.TextRegionAccessBuilder;
import org.eclipse.xtext.resource.SaveOptions;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.serializer.ISerializer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every spec of the examples. */
class ExamplesTest {

	static List<Path> examples() {
		return Specs.examples();
	}

	@ParameterizedTest
	@MethodSource("examples")
	void hasNoFindings(Path file) {
		assertThat(Specs.findings(Specs.parse(file, Specs.read(file)))).isEmpty();
	}

	@ParameterizedTest
	@MethodSource("examples")
	void isFormatted(Path file) {
		assertThat(formatted(file, Specs.read(file))).isEqualTo(Specs.read(file));
	}

	@ParameterizedTest
	@MethodSource("examples")
	void formattedFromOneLongLineMeansTheSame(Path file) {
		String text = Specs.read(file);
		String squeezed = text.lines().map(line -> line.replaceAll("//.*", "").strip()).reduce("", (a, b) -> a + " " + b);
		String again = formatted(file, squeezed);
		assertThat(meaning(Specs.parse(file, again))).isEqualTo(meaning(Specs.parse(file, text)));
		assertThat(formatted(file, again)).as("formatting twice changes nothing").isEqualTo(again);
	}

	@ParameterizedTest
	@MethodSource("examples")
	void isTheSameAfterWritingItFromTheModel(Path file) {
		XtextResource read = Specs.parse(file, Specs.read(file));
		EcoreUtil.resolveAll(read);
		XtextResource copy = Specs.parse(file, "");
		copy.getContents().clear();
		copy.getContents().add(EcoreUtil.copy(read.getContents().get(0)));
		String written = Specs.INJECTOR.getInstance(ISerializer.class).serialize(copy.getContents().get(0), SaveOptions.newBuilder().format().getOptions());
		XtextResource again = Specs.parse(file, written);
		assertThat(Specs.findings(again)).isEmpty();
		assertThat(meaning(again)).isEqualTo(meaning(read));
	}

	static String formatted(Path file, String text) {
		XtextResource resource = Specs.parse(file, text);
		ITextRegionAccess access = Specs.INJECTOR.getInstance(TextRegionAccessBuilder.class).forNodeModel(resource).create();
		FormatterRequest request = Specs.INJECTOR.getInstance(FormatterRequest.class).setTextRegionAccess(access);
		return access.getRewriter().renderToString(Specs.INJECTOR.getInstance(IFormatter2.class).format(request));
	}

	/** Everything the model says, without layout. */
	static String meaning(XtextResource resource) {
		EcoreUtil.resolveAll(resource);
		StringBuilder text = new StringBuilder();
		tell(resource.getContents().get(0), 0, text);
		return text.toString();
	}

	private static void tell(EObject part, int depth, StringBuilder text) {
		text.append(" ".repeat(depth)).append(part.eClass().getName());
		part.eClass().getEAllAttributes().stream().filter(part::eIsSet).forEach(a -> text.append(' ').append(a.getName()).append('=').append(part.eGet(a)));
		part.eClass().getEAllReferences().stream().filter(r -> !r.isContainment() && !r.isContainer() && part.eIsSet(r))
				.forEach(r -> children(part, r).forEach(to -> text.append(' ').append(r.getName()).append("->").append(((mouldwright.model.Named) to).getName())));
		text.append('\n');
		for (var reference : part.eClass().getEAllContainments())
			for (EObject child : children(part, reference)) {
				text.append(" ".repeat(depth)).append(reference.getName()).append(":\n");
				tell(child, depth + 1, text);
			}
	}

	@SuppressWarnings("unchecked")
	private static List<EObject> children(EObject part, org.eclipse.emf.ecore.EReference reference) {
		Object value = part.eGet(reference);
		return value == null ? List.of() : reference.isMany() ? (List<EObject>) value : List.of((EObject) value);
	}
}
