package mouldwright.workbench.editor;

import org.eclipse.jface.text.rules.ICharacterScanner;
import org.eclipse.jface.text.rules.IRule;
import org.eclipse.jface.text.rules.IToken;
import org.eclipse.jface.text.rules.Token;

/** A number or a date, with the exponent it may have. */
final class FigureRule implements IRule {

    private final IToken figure;

    FigureRule(IToken figure) {
        this.figure = figure;
    }

    @Override
    public IToken evaluate(ICharacterScanner scanner) {
        int c = scanner.read();
        if (!isDigit(c)) {
            scanner.unread();
            return Token.UNDEFINED;
        }
        while (isDigit(c) || c == '.' || c == ',' || c == '-')
            c = scanner.read();
        if (c == 'e' || c == 'E')
            exponent(scanner);
        else
            scanner.unread();
        return figure;
    }

    /** Takes `e6` or `e-6` with it; an `e` that begins a word is left. */
    private static void exponent(ICharacterScanner scanner) {
        int c = scanner.read();
        boolean sign = c == '+' || c == '-';
        if (sign)
            c = scanner.read();
        if (!isDigit(c)) {
            scanner.unread();
            scanner.unread();
            if (sign)
                scanner.unread();
            return;
        }
        while (isDigit(c))
            c = scanner.read();
        scanner.unread();
    }

    private static boolean isDigit(int c) {
        return c >= '0' && c <= '9';
    }
}
