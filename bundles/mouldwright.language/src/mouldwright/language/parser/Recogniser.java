package mouldwright.language.parser;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import mouldwright.language.parser.antlr.internal.InternalPlugParser;
import mouldwright.language.services.PlugGrammarAccess;
import org.antlr.runtime.RecognitionException;
import org.antlr.runtime.Token;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EcoreFactory;
import org.eclipse.xtext.Grammar;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.SyntaxErrorMessage;
import org.eclipse.xtext.nodemodel.impl.NodeModelBuilder;
import org.eclipse.xtext.parser.IAstFactory;
import org.eclipse.xtext.parser.IParseResult;
import org.eclipse.xtext.parser.ParseResult;
import org.eclipse.xtext.parser.antlr.XtextTokenStream;

/**
 * Follows the grammar up to the first mistake and builds nothing on the way: a repair is tried some hundred times for each mistake, and all that is asked is how
 * far the parser gets. It counts what it is asked, so that a text full of mistakes can be given up on at the same place each time, however fast the machine is.
 */
final class Recogniser {

	private final String rule;
	private final Function<Tokens, XtextTokenStream> streams;
	private final PlugGrammarAccess grammar;
	private final FirstMistake mistakes = new FirstMistake();
	private final NoNodes nodes = new NoNodes();
	private final NoModel model = new NoModel();
	private int tries;

	/**
	 * @param rule    the rule a text is read by
	 * @param streams tokens as the parser takes them
	 */
	Recogniser(String rule, Function<Tokens, XtextTokenStream> streams, PlugGrammarAccess grammar) {
		this.rule = rule;
		this.streams = streams;
		this.grammar = grammar;
	}

	/** How often it was asked. */
	int tries() {
		return tries;
	}

	/** The first mistake in some tokens; empty if they have none. */
	Optional<Failure> firstMistake(Tokens tokens) {
		tries++;
		Follower parser = new Follower(streams.apply(tokens), grammar);
		parser.setSyntaxErrorProvider(mistakes);
		parser.setNodeModelBuilder(nodes);
		parser.setSemanticModelBuilder(model);
		try {
			parser.parse(rule);
			return Optional.empty();
		} catch (RecognitionException e) {
			throw new IllegalStateException(e);
		} catch (RuntimeException e) {
			return Optional.of(FirstMistake.in(e));
		}
	}

	/** The generated parser without the table of rules, which only a model asks for and which takes longer to make than most tries. */
	private static final class Follower extends InternalPlugParser {

		Follower(XtextTokenStream stream, PlugGrammarAccess grammar) {
			super(stream, grammar);
		}

		@Override
		protected void registerRules(Grammar rules) {
			// none is asked for
		}

		@Override
		protected void newLeafNode(Token token, EObject grammarElement) {
			// there are no nodes
		}

		@Override
		protected List<ILeafNode> appendSkippedTokens() {
			return List.of();
		}

		@Override
		protected void appendAllTokens() {
			// there are no nodes
		}

		@Override
		protected void appendTrailingHiddenTokens() {
			// there are no nodes
		}
	}

	/** One node stands for all, with one above it for those who ask for its parent. */
	private static final class NoNodes extends NodeModelBuilder {

		private final ICompositeNode root = super.newRootNode("");
		private final ICompositeNode any = super.newCompositeNode(null, 0, root);

		@Override
		public ICompositeNode newRootNode(String input) {
			return root;
		}

		@Override
		public ICompositeNode newCompositeNode(EObject grammarElement, int lookAhead, ICompositeNode parent) {
			return any;
		}

		@Override
		public ICompositeNode newCompositeNodeAsParentOf(EObject grammarElement, int lookAhead, ICompositeNode existing) {
			return any;
		}

		@Override
		public ILeafNode newLeafNode(int offset, int length, EObject grammarElement, boolean hidden, SyntaxErrorMessage message, ICompositeNode parent) {
			return null;
		}

		@Override
		public ICompositeNode compressAndReturnParent(ICompositeNode node) {
			return any;
		}

		@Override
		public void associateWithSemanticElement(ICompositeNode node, EObject element) {
			// there is no model
		}

		@Override
		public IParseResult createParseResult(EObject element, ICompositeNode node, boolean errors) {
			return new ParseResult(element, node, errors);
		}
	}

	/** One object stands for all. */
	private static final class NoModel implements IAstFactory {

		private final EObject any = EcoreFactory.eINSTANCE.createEObject();

		@Override
		public EObject create(EClassifier type) {
			return any;
		}

		@Override
		public void set(EObject object, String feature, Object value, String rule, INode node) {
			// there is no model
		}

		@Override
		public void add(EObject object, String feature, Object value, String rule, INode node) {
			// there is no model
		}
	}
}
