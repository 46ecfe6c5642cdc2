/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

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

/**
 * Divides a .hull text into comments, strings and the rest, so that a change inside a comment colours no more than it must.
 */
public final class HullPartitions implements IDocumentSetupParticipant {

	/** The name of this division, beside the default one that the generic editor uses. */
	public static final String PARTITIONING = "hullwright.workbench.partitioning";

	static final String COMMENT = "hullwright.workbench.comment";
	static final String STRING = "hullwright.workbench.string";

	@Override
	public void setup(IDocument document) {
		if (document instanceof IDocumentExtension3 divided && divided.getDocumentPartitioner(PARTITIONING) == null) {
			IDocumentPartitioner partitioner = new FastPartitioner(scanner(), new String[] { COMMENT, STRING });
			divided.setDocumentPartitioner(PARTITIONING, partitioner);
			partitioner.connect(document);
		}
	}

	private static RuleBasedPartitionScanner scanner() {
		Token comment = new Token(COMMENT);
		Token string = new Token(STRING);
		RuleBasedPartitionScanner scanner = new RuleBasedPartitionScanner();
		scanner.setPredicateRules(new IPredicateRule[] {
				new EndOfLineRule("//", comment),
				new MultiLineRule("/*", "*/", comment, (char) 0, true),
				new SingleLineRule("\"", "\"", string, '\\') });
		return scanner;
	}
}
