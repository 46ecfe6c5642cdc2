/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import hullwright.lang.HullLanguage;
import hullwright.lang.ide.EditorLanguage;
import java.io.StringReader;
import java.util.regex.Pattern;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.parser.IParser;

/**
 * Whether a word can be a name where one is declared: the grammar of the declaration says so.
 */
final class NewName {

	private static final Pattern WORD = Pattern.compile("[\\p{L}_\u00b0][\\p{L}\\p{N}_\u00b0\u00b2]*");
	private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}");

	private NewName() {
	}

	/** Refuses what cannot stand in place of a name. */
	static void check(INode declaration, String name) throws RenameRefused {
		AbstractRule rule = declaration.getGrammarElement() instanceof RuleCall call ? call.getRule() : null;
		boolean numbered = rule != null && rule.getName().equals("PgnNumber");
		if (name.isBlank()) {
			throw new RenameRefused("A name is needed");
		}
		if (numbered && !NUMBER.matcher(name).matches()) {
			throw new RenameRefused("'" + name + "' is no number of a PGN, such as 127250");
		}
		if (!numbered && !WORD.matcher(name).matches() && !(NUMBER.matcher(name).matches() && isRead(rule, name))) {
			throw new RenameRefused("'" + name + "' is no name: a name is one word of letters, digits and _ and begins with a letter");
		}
		if (!isRead(rule, name)) {
			throw new RenameRefused("'" + name + "' is a word of the language and cannot be a name here");
		}
	}

	private static boolean isRead(AbstractRule rule, String name) {
		return rule instanceof ParserRule parsed
				? !HullLanguage.services().getInstance(IParser.class).parse(parsed, new StringReader(name)).hasSyntaxErrors()
				: !EditorLanguage.keywords().contains(name);
	}
}
