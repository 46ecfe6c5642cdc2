/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.rulepage;

import hullwright.workbench.editor.ColouredText;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.graphics.Font;

/**
 * A page of Markdown as text with styles: what a text widget needs to show headings, lists, tables, code in its colours and links.
 */
final class RenderedPage extends AbstractVisitor {

	/**
	 * What a page is shown with.
	 *
	 * @param title the font of its title
	 * @param heading the font of its headings
	 * @param code the font of code
	 */
	record Fonts(Font title, Font heading, Font code) {
	}

	/**
	 * A piece of the page that leads somewhere.
	 *
	 * @param offset where it begins
	 * @param length how long it is
	 * @param target a web address, or the id of a rule
	 */
	record Reference(int offset, int length, String target) {
	}

	private static final Parser PARSER = Parser.builder().extensions(List.of(TablesExtension.create())).build();

	private final StringBuilder text = new StringBuilder();
	private final List<StyleRange> styles = new ArrayList<>();
	private final List<Reference> references = new ArrayList<>();
	private final Fonts fonts;
	private final Set<String> rules;
	private String indent = "";

	private RenderedPage(Fonts fonts, Set<String> rules) {
		this.fonts = fonts;
		this.rules = rules;
	}

	/**
	 * Renders a page. To be called by the UI thread.
	 *
	 * @param rules the ids of rules that have pages; where one is named, a reference leads there
	 */
	static RenderedPage of(String markdown, Fonts fonts, Set<String> rules) {
		RenderedPage page = new RenderedPage(fonts, rules);
		PARSER.parse(markdown).accept(page);
		return page;
	}

	String text() {
		return text.toString().stripTrailing() + "\n";
	}

	/** The styles in order, none overlapping another. */
	StyleRange[] styles() {
		int end = text().length();
		return styles.stream().filter(style -> style.length > 0 && style.start + style.length <= end).toArray(StyleRange[]::new);
	}

	List<Reference> references() {
		return references;
	}

	private void endBlock() {
		text.append("\n\n");
	}

	private void styled(int start, Font font, int fontStyle) {
		StyleRange style = new StyleRange(start, text.length() - start, null, null, fontStyle);
		style.font = font;
		styles.add(style);
	}

	@Override
	public void visit(Heading heading) {
		int start = text.length();
		int before = styles.size();
		visitChildren(heading);
		// code in a heading looks like the heading
		styles.subList(before, styles.size()).clear();
		styled(start, heading.getLevel() == 1 ? fonts.title : fonts.heading, SWT.NORMAL);
		endBlock();
	}

	@Override
	public void visit(Paragraph paragraph) {
		visitChildren(paragraph);
		if (paragraph.getParent() instanceof ListItem) {
			text.append('\n');
		} else {
			endBlock();
		}
	}

	@Override
	public void visit(BulletList list) {
		visitList(list);
	}

	@Override
	public void visit(OrderedList list) {
		visitList(list);
	}

	private void visitList(Node list) {
		String outer = indent;
		int number = 1;
		for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
			text.append(outer).append(list instanceof OrderedList ? number++ + ". " : "\u2022 ");
			indent = outer + "   ";
			visitChildren(item);
		}
		indent = outer;
		text.append('\n');
	}

	@Override
	public void visit(Text words) {
		text.append(words.getLiteral());
	}

	@Override
	public void visit(SoftLineBreak end) {
		text.append(' ');
	}

	@Override
	public void visit(HardLineBreak end) {
		text.append('\n');
	}

	@Override
	public void visit(Emphasis emphasis) {
		int start = text.length();
		visitChildren(emphasis);
		styled(start, null, SWT.ITALIC);
	}

	@Override
	public void visit(StrongEmphasis emphasis) {
		int start = text.length();
		visitChildren(emphasis);
		styled(start, null, SWT.BOLD);
	}

	@Override
	public void visit(Code code) {
		int start = text.length();
		text.append(code.getLiteral());
		if (rules.contains(code.getLiteral())) {
			reference(start, code.getLiteral());
		} else {
			styled(start, fonts.code, SWT.NORMAL);
		}
	}

	@Override
	public void visit(Link link) {
		int start = text.length();
		int before = styles.size();
		visitChildren(link);
		styles.subList(before, styles.size()).clear();
		reference(start, link.getDestination());
	}

	private void reference(int start, String target) {
		StyleRange style = new StyleRange(start, text.length() - start, null, null);
		style.underline = true;
		style.underlineStyle = SWT.UNDERLINE_LINK;
		styles.add(style);
		references.add(new Reference(start, text.length() - start, target));
	}

	@Override
	public void visit(FencedCodeBlock code) {
		code(code.getLiteral(), code.getInfo() != null && code.getInfo().startsWith("hull"));
	}

	@Override
	public void visit(IndentedCodeBlock code) {
		code(code.getLiteral(), false);
	}

	private void code(String code, boolean ours) {
		int start = text.length();
		text.append(code.stripTrailing());
		if (ours) {
			int at = start;
			for (StyleRange style : ColouredText.styles(code.stripTrailing())) {
				plain(at, start + style.start);
				style.start += start;
				style.font = style.fontStyle == SWT.NORMAL ? fonts.code : JFaceResources.getFontRegistry()
						.getBold(JFaceResources.TEXT_FONT);
				if ((style.fontStyle & SWT.ITALIC) != 0) {
					style.font = JFaceResources.getFontRegistry().getItalic(JFaceResources.TEXT_FONT);
				}
				styles.add(style);
				at = style.start + style.length;
			}
			plain(at, text.length());
		} else {
			styled(start, fonts.code, SWT.NORMAL);
		}
		endBlock();
	}

	private void plain(int from, int to) {
		if (to > from) {
			StyleRange style = new StyleRange(from, to - from, null, null);
			style.font = fonts.code;
			styles.add(style);
		}
	}

	@Override
	public void visit(CustomBlock block) {
		if (block instanceof TableBlock) {
			table(block);
		} else {
			visitChildren(block);
		}
	}

	/** Tables are set in the font of code, so that their columns stand below each other. */
	private void table(Node table) {
		List<List<String>> rows = new ArrayList<>();
		table.accept(new AbstractVisitor() {
			@Override
			public void visit(CustomNode node) {
				if (node instanceof TableRow) {
					rows.add(new ArrayList<>());
				}
				if (node instanceof TableCell) {
					RenderedPage cell = new RenderedPage(fonts, rules);
					cell.visitChildren(node);
					rows.get(rows.size() - 1).add(cell.text.toString().strip());
				} else {
					visitChildren(node);
				}
			}
		});
		int start = text.length();
		text.append(TableText.of(rows));
		styled(start, fonts.code, SWT.NORMAL);
		endBlock();
	}
}
