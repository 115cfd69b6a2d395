package mouldwright.language.resource;

import mouldwright.language.parser.Mend;
import mouldwright.language.parser.MendedParseResult;
import org.eclipse.xtext.resource.DerivedStateAwareResource;

/** A spec file in memory. What the parser had to mend is among its errors; the rest of it is as good as ever. */
public class PlugResource extends DerivedStateAwareResource {

	@Override
	protected void addSyntaxErrors() {
		if (getParseResult() instanceof MendedParseResult mended) {
			int lastLine = -1;
			for (Mend mend : mended.mends()) {
				MendDiagnostic diagnostic = new MendDiagnostic(mend, mended.getRootNode());
				if (diagnostic.getLine() != lastLine)
					getErrors().add(diagnostic);
				lastLine = diagnostic.getLine();
			}
		} else {
			super.addSyntaxErrors();
		}
	}
}
