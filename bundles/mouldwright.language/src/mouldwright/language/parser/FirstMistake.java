package mouldwright.language.parser;

import org.antlr.runtime.MismatchedTokenException;
import org.antlr.runtime.RecognitionException;
import org.eclipse.xtext.nodemodel.SyntaxErrorMessage;
import org.eclipse.xtext.parser.antlr.ISyntaxErrorMessageProvider;

/** Stops a run of the generated parser at its first mistake. */
final class FirstMistake implements ISyntaxErrorMessageProvider {

	@Override
	public SyntaxErrorMessage getSyntaxErrorMessage(IParserErrorContext context) {
		RecognitionException e = context.getRecognitionException();
		int expected = e instanceof MismatchedTokenException mismatch ? Math.max(0, mismatch.expecting) : 0;
		throw new Stumbled(new Failure(e.index, expected));
	}

	@Override
	public SyntaxErrorMessage getSyntaxErrorMessage(IValueConverterErrorContext context) {
		return new SyntaxErrorMessage(context.getDefaultMessage(), null);
	}

	/** Where a run stopped; anything else that ended it goes on. */
	static Failure in(RuntimeException e) {
		for (Throwable cause = e; cause != null; cause = cause.getCause())
			if (cause instanceof Stumbled stumbled)
				return stumbled.failure;
		throw e;
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
