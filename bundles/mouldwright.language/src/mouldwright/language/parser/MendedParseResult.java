package mouldwright.language.parser;

import java.util.List;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.parser.ParseResult;
import org.eclipse.emf.ecore.EObject;

/** A parse result that knows where the text had to be mended to be read. */
public final class MendedParseResult extends ParseResult {

	private final List<Mend> mends;
	private final int tries;

	MendedParseResult(EObject root, ICompositeNode node, List<Mend> mends, int tries) {
		super(root, node, true);
		this.tries = tries;
		this.mends = List.copyOf(mends);
	}

	/** What was mended, in the order of the text. */
	public List<Mend> mends() {
		return mends;
	}

	/** How many repairs were tried for it; the measure of what a mistake costs that is the same on every machine. */
	public int tries() {
		return tries;
	}
}
