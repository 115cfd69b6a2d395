package mouldwright.workbench.editor;

import org.eclipse.core.filebuffers.IDocumentSetupParticipant;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentExtension3;
import org.eclipse.jface.text.IDocumentPartitioner;
import org.eclipse.jface.text.rules.EndOfLineRule;
import org.eclipse.jface.text.rules.FastPartitioner;
import org.eclipse.jface.text.rules.IPredicateRule;
import org.eclipse.jface.text.rules.MultiLineRule;
import org.eclipse.jface.text.rules.RuleBasedPartitionScanner;
import org.eclipse.jface.text.rules.SingleLineRule;
import org.eclipse.jface.text.rules.Token;

/** Tells comments and texts from the spec proper, so that a change inside a long comment is coloured right and at once. */
public final class SpecPartitions implements IDocumentSetupParticipant {

    /** How this division of a document is named. */
    static final String NAME = "mouldwright.partitions";
    /** A comment that describes what follows it. */
    static final String DOC = "mouldwright.doc";
    /** Any other comment. */
    static final String COMMENT = "mouldwright.comment";
    /** What stands between quotation marks. */
    static final String TEXT = "mouldwright.text";
    /** All kinds but the spec proper. */
    static final String[] KINDS = {DOC, COMMENT, TEXT};

    @Override
    public void setup(IDocument document) {
        RuleBasedPartitionScanner scanner = new RuleBasedPartitionScanner();
        scanner.setPredicateRules(new IPredicateRule[] {
            new EndOfLineRule("//", new Token(COMMENT)),
            new SingleLineRule("\"", "\"", new Token(TEXT), '\\', true),
            new MultiLineRule("/**", "*/", new Token(DOC), (char) 0, true),
            new MultiLineRule("/*", "*/", new Token(COMMENT), (char) 0, true)
        });
        IDocumentPartitioner partitioner = new FastPartitioner(scanner, KINDS);
        partitioner.connect(document);
        ((IDocumentExtension3) document).setDocumentPartitioner(NAME, partitioner);
        Bridge.start();
    }
}
