package mouldwright.language.parser;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import mouldwright.language.parser.antlr.PlugParser;
import mouldwright.language.parser.antlr.PlugTokens;
import org.antlr.runtime.ANTLRStringStream;
import org.antlr.runtime.CharStream;
import org.antlr.runtime.CommonToken;
import org.antlr.runtime.RecognitionException;
import org.antlr.runtime.Token;
import org.antlr.runtime.TokenSource;
import org.eclipse.xtext.nodemodel.SyntaxErrorMessage;
import org.eclipse.xtext.nodemodel.impl.NodeModelBuilder;
import org.eclipse.xtext.parser.IParseResult;
import org.eclipse.xtext.parser.antlr.AbstractInternalAntlrParser;
import org.eclipse.xtext.parser.antlr.ISyntaxErrorMessageProvider;
import org.eclipse.xtext.parser.antlr.XtextTokenStream;

/**
 * Reads on after a mistake. Where the generated parser stumbles, single slips are tried (a word misspelt, left out, put in) on a
 * window of the text round the place; the one with which the parser gets furthest is taken, said once, and everything after it is
 * read as if it had been written right. The method is that of Burke and Fisher, "A practical method for LR and LL syntactic error
 * diagnosis and recovery", ACM TOPLAS 9 (1987), with whole reparses in place of a deferred parser.
 */
public final class RepairingParser extends PlugParser {

	/** Mistakes said of one text; what follows is better read when these are mended. */
	private static final int MOST = 20;

	/** Words read on after a slip that show that it was mended rightly. */
	private static final int FAR_ENOUGH = 8;

	private Words words;

	@Override
	protected IParseResult doParse(String ruleName, CharStream text, NodeModelBuilder builder, int initialLookAhead) {
		Tokens tokens = new Tokens(PlugTokens.of(lexer(text)));
		Optional<Failure> failure;
		try {
			IParseResult faultless = run(ruleName, tokens, text, builder, new FirstMistake());
			if (!faultless.hasSyntaxErrors())
				return faultless;
			failure = Optional.empty();
		} catch (RuntimeException e) {
			failure = Optional.of(stumbledAt(e));
		}
		if (failure.isEmpty())
			return run(ruleName, tokens, text, createNodeModelBuilder(), getSyntaxErrorProvider());
		List<Mend> mends = new ArrayList<>();
		while (failure.isPresent() && mends.size() < MOST) {
			Mended mended = mend(ruleName, tokens, failure.get());
			mends.add(mended.mend());
			tokens = mended.tokens();
			failure = attempt(ruleName, tokens);
		}
		IParseResult result = run(ruleName, tokens, text, createNodeModelBuilder(), getSyntaxErrorProvider());
		mends.sort(Comparator.comparingInt(Mend::offset));
		return new MendedParseResult(result.getRootASTElement(), result.getRootNode(), mends);
	}

	/** The words of a text as the lexer reads them, hidden ones too, units told from words; nothing is mended. */
	public List<Word> words(String text) {
		List<Word> result = new ArrayList<>();
		for (CommonToken token : PlugTokens.of(lexer(new ANTLRStringStream(text)))) {
			String kind = getTokenDefProvider().getTokenDefMap().getOrDefault(token.getType(), "ANY_OTHER");
			result.add(new Word(kind.startsWith("RULE_") ? kind.substring("RULE_".length()) : kind, token.getStartIndex(), text.substring(token.getStartIndex(), token.getStopIndex() + 1)));
		}
		return result;
	}

	private record Mended(Tokens tokens, Mend mend) {
	}

	private Mended mend(String ruleName, Tokens all, Failure failure) {
		int mistake = all.visibleAt(failure.index());
		Window window = Window.around(all, mistake, words());
		Tokens part = window.tokens();
		int at = mistake < all.size() ? part.indexOfOffset(all.offset(mistake)) : part.size();
		Choice choice = new Choice(all.offset(mistake), part.offset(Math.min(part.size(), at + FAR_ENOUGH)));
		new Completion(part, words(), at, tried -> attempt(ruleName, tried)).find(failure.expected(), false)
				.ifPresent(repair -> choice.offer(repair, reach(ruleName, window, repair)));
		for (Repair repair : new Candidates(part, words(), at, failure.expected()).all())
			choice.offer(repair, reach(ruleName, window, repair));
		if (choice.isPoor())
			new Completion(part, words(), at, tried -> attempt(ruleName, tried)).find(0, true).ifPresent(repair -> choice.offer(repair, reach(ruleName, window, repair)));
		if (choice.isPoor())
			for (Repair repair : new Candidates(part, words(), at, failure.expected()).anyWord())
				choice.offer(repair, reach(ruleName, window, repair));
		Repair best = choice.best().orElseGet(() -> part.size() == 0 ? new Repair(t -> t, 0, "nothing can be read here", 0, 0, "")
				: new Candidates(part, words(), at, 0).leaveOutLine());
		return new Mended(carryOver(all, part, best), said(part, best));
	}

	/** Does to the whole text what a repair does to the window. */
	private static Tokens carryOver(Tokens all, Tokens part, Repair repair) {
		if (part.size() == 0)
			return all;
		return all.replaced(part, repair.applied(part));
	}

	private static Mend said(Tokens part, Repair repair) {
		if (part.size() == 0)
			return new Mend(0, 0, repair.message(), "");
		CommonToken from = part.get(Math.min(repair.from(), part.size() - 1));
		CommonToken to = part.get(Math.min(repair.to(), part.size() - 1));
		return new Mend(from.getStartIndex(), Math.max(1, to.getStopIndex() + 1 - from.getStartIndex()), repair.message(), repair.replace());
	}

	/** How far the parser gets in the window with a repair: an offset of the text. */
	private int reach(String ruleName, Window window, Repair repair) {
		Tokens tried = repair.applied(window.tokens());
		Optional<Failure> failure = attempt(ruleName, tried);
		if (failure.isEmpty())
			return Integer.MAX_VALUE;
		int mistake = tried.visibleAt(failure.get().index());
		if (mistake >= tried.size())
			return window.truncated() ? Integer.MAX_VALUE : tried.offset(mistake) - 1;
		return tried.offset(mistake);
	}

	private Words words() {
		if (words == null)
			words = new Words(getTokenDefProvider());
		return words;
	}

	private TokenSource lexer(CharStream text) {
		org.eclipse.xtext.parser.antlr.Lexer lexer = getLexerProvider().get();
		lexer.setCharStream(text);
		return lexer;
	}

	/** Runs the generated parser up to its first mistake. */
	private Optional<Failure> attempt(String ruleName, Tokens tokens) {
		try {
			run(ruleName, tokens, null, createNodeModelBuilder(), new FirstMistake());
			return Optional.empty();
		} catch (RuntimeException e) {
			return Optional.of(stumbledAt(e));
		}
	}

	/** Where a run stopped; anything else that ended it goes on. */
	private static Failure stumbledAt(RuntimeException e) {
		for (Throwable cause = e; cause != null; cause = cause.getCause())
			if (cause instanceof Stumbled stumbled)
				return stumbled.failure;
		throw e;
	}

	private IParseResult run(String ruleName, Tokens tokens, CharStream text, NodeModelBuilder builder, ISyntaxErrorMessageProvider errors) {
		XtextTokenStream stream = new Stream(tokens.copies(), text);
		stream.initCurrentLookAhead(0);
		setInitialHiddenTokens(stream);
		AbstractInternalAntlrParser parser = createParser(stream);
		parser.setTokenTypeMap(getTokenDefProvider().getTokenDefMap());
		parser.setSyntaxErrorProvider(errors);
		parser.setNodeModelBuilder(builder);
		parser.setSemanticModelBuilder(getElementFactory());
		try {
			return parser.parse(ruleName);
		} catch (RecognitionException e) {
			throw new IllegalStateException(e);
		}
	}

	/** Tokens from a list; the text they came from for the node model. */
	private final class Stream extends XtextTokenStream {

		private final CharStream text;

		Stream(List<CommonToken> tokens, CharStream text) {
			super(new Replay(tokens), getTokenDefProvider());
			this.text = text;
		}

		@Override
		public String toString() {
			return text == null || text.size() == 0 ? "" : text.substring(0, text.size() - 1);
		}
	}

	private record Replay(Iterator<CommonToken> tokens) implements TokenSource {

		Replay(List<CommonToken> tokens) {
			this(tokens.iterator());
		}

		@Override
		public Token nextToken() {
			return tokens.hasNext() ? tokens.next() : Token.EOF_TOKEN;
		}

		@Override
		public String getSourceName() {
			return "";
		}
	}

	/** Stops a run at its first mistake. */
	private static final class FirstMistake implements ISyntaxErrorMessageProvider {

		@Override
		public SyntaxErrorMessage getSyntaxErrorMessage(IParserErrorContext context) {
			RecognitionException e = context.getRecognitionException();
			int expected = e instanceof org.antlr.runtime.MismatchedTokenException mismatch ? Math.max(0, mismatch.expecting) : 0;
			throw new Stumbled(new Failure(e.index, expected));
		}

		@Override
		public SyntaxErrorMessage getSyntaxErrorMessage(IValueConverterErrorContext context) {
			return new SyntaxErrorMessage(context.getDefaultMessage(), null);
		}
	}

	private static final class Stumbled extends RuntimeException {

		private static final long serialVersionUID = 1L;
		private final transient Failure failure;

		Stumbled(Failure failure) {
			super(null, null, false, false);
			this.failure = failure;
		}
	}
}
