package mouldwright.language.resource;

import mouldwright.language.parser.Mend;
import org.eclipse.xtext.diagnostics.AbstractDiagnostic;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** A mistake of spelling or order, as a finding with its place. */
final class MendDiagnostic extends AbstractDiagnostic {

	/** Code of all findings about words that cannot stand where they stand. */
	static final String CODE = "MW901";

	private final Mend mend;
	private final INode root;

	MendDiagnostic(Mend mend, ICompositeNode root) {
		this.mend = mend;
		this.root = root;
	}

	@Override
	public String getCode() {
		return CODE;
	}

	@Override
	public String[] getData() {
		return mend.replace().isEmpty() ? new String[0] : new String[] { "write `" + mend.replace() + "`" };
	}

	@Override
	public String getMessage() {
		return mend.message();
	}

	@Override
	public int getOffset() {
		return mend.offset();
	}

	@Override
	public int getLength() {
		return mend.length();
	}

	@Override
	public int getLine() {
		return NodeModelUtils.getLineAndColumn(root, mend.offset()).getLine();
	}

	@Override
	public int getColumn() {
		return NodeModelUtils.getLineAndColumn(root, mend.offset()).getColumn();
	}

	@Override
	public int getColumnEnd() {
		return NodeModelUtils.getLineAndColumn(root, mend.offset() + mend.length()).getColumn();
	}

	@Override
	public int getLineEnd() {
		return NodeModelUtils.getLineAndColumn(root, mend.offset() + mend.length()).getLine();
	}

	@Override
	protected INode getNode() {
		return root;
	}
}
