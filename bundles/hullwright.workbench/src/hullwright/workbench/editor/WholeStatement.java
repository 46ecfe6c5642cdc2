/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.templates.DocumentTemplateContext;
import org.eclipse.jface.text.templates.GlobalTemplateVariables;
import org.eclipse.jface.text.templates.Template;
import org.eclipse.jface.text.templates.TemplateContext;
import org.eclipse.jface.text.templates.TemplateContextType;
import org.eclipse.jface.text.templates.TemplateProposal;
import org.eclipse.jface.text.templates.TemplateVariable;
import org.eclipse.jface.text.templates.TemplateVariableResolver;

/**
 * A statement that the server offers whole, as the platform's template: after it is inserted, the tabulator goes from one place
 * to fill in to the next.
 */
final class WholeStatement {

	private static final Pattern PLACE = Pattern.compile("\\$\\{(\\d+):([^}]*)}|\\$0");

	private static final String CONTEXT = "hullwright.workbench.statement";

	private WholeStatement() {
	}

	/** The proposal that inserts a snippet of the protocol over a region. */
	static ICompletionProposal proposal(IDocument document, IRegion over, String snippet, String label, String title) throws BadLocationException {
		TemplateContextType type = new TemplateContextType(CONTEXT);
		type.addResolver(new GlobalTemplateVariables.Cursor());
		type.addResolver(new PlaceToFillIn());
		DocumentTemplateContext context = new DocumentTemplateContext(type, document, over.getOffset(), over.getLength());
		Template template = new Template(label, title, CONTEXT, pattern(indented(document, over, snippet)), true);
		return new TemplateProposal(template, context, over, null) {
			@Override
			public String getDisplayString() {
				return label + "  " + title;
			}
		};
	}

	/** The lines below the first are indented as the first is. */
	private static String indented(IDocument document, IRegion over, String snippet) throws BadLocationException {
		int start = document.getLineInformationOfOffset(over.getOffset()).getOffset();
		String before = document.get(start, over.getOffset() - start);
		String indent = before.substring(0, before.length() - before.stripLeading().length());
		return snippet.replace("\n", "\n" + indent);
	}

	/** In the platform's notation: each place is a variable with what it proposes. */
	private static String pattern(String snippet) {
		Matcher places = PLACE.matcher(snippet);
		StringBuilder pattern = new StringBuilder();
		int done = 0;
		while (places.find()) {
			pattern.append(snippet.substring(done, places.start()).replace("$", "$$"));
			pattern.append(places.group(1) == null ? "${cursor}" : "${p" + places.group(1) + ":place('" + places.group(2).replace("'", "''") + "')}");
			done = places.end();
		}
		return pattern.append(snippet.substring(done).replace("$", "$$")).toString();
	}

	/** A place shows what it proposes until something is typed over it. */
	private static final class PlaceToFillIn extends TemplateVariableResolver {

		PlaceToFillIn() {
			super("place", "A place to fill in");
		}

		@Override
		public void resolve(TemplateVariable variable, TemplateContext context) {
			variable.setValue((String) variable.getVariableType().getParams().get(0));
			variable.setUnambiguous(false);
			variable.setResolved(true);
		}
	}
}
