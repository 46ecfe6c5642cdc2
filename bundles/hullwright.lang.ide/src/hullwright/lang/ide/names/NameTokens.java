/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import hullwright.spec.Family;
import hullwright.spec.KeyValue;
import hullwright.spec.Message;
import hullwright.spec.Named;
import hullwright.spec.Option;
import hullwright.spec.Parameter;
import hullwright.spec.PartType;
import hullwright.spec.Port;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.SemanticTokensLegend;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.ide.server.Document;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.parser.IParseResult;

/**
 * What each name of a text stands for, for its colour: what comes from a catalog, an option, a port, or an element of the boat. It is
 * read from the grammar, so it costs no look at other files.
 */
public final class NameTokens {

	/** The kinds, in the terms of the language server protocol, by their numbers. */
	public static final SemanticTokensLegend LEGEND = new SemanticTokensLegend(List.of("type", "enumMember", "property", "variable"), List.of("declaration"));

	/** The number of names from a catalog. */
	public static final int FROM_CATALOG = 0;

	/** The number of options. */
	public static final int OPTION = 1;

	/** The number of ports. */
	public static final int PORT = 2;

	/** The number of all else that a series has. */
	public static final int ELEMENT = 3;

	/** How many numbers the protocol has for one name: lines and letters since the last, length, kind, and whether it is declared. */
	public static final int NUMBERS = 5;

	private final Document document;
	private final List<Integer> numbers = new ArrayList<>();
	private Position last = new Position(0, 0);

	private NameTokens(Document document) {
		this.document = document;
	}

	/**
	 * All names, as the protocol encodes them.
	 *
	 * @param read the text as it was parsed
	 * @param document the same text
	 */
	public static List<Integer> of(IParseResult read, Document document) {
		NameTokens tokens = new NameTokens(document);
		read.getRootNode().getAsTreeIterable().forEach(tokens::add);
		return tokens.numbers;
	}

	private void add(INode node) {
		EObject grammar = node.getGrammarElement();
		if (grammar instanceof CrossReference reference) {
			EObject from = NodeModelUtils.findActualSemanticObjectFor(node);
			EReference feature = from == null ? null : GrammarUtil.getReference(reference, from.eClass());
			Class<?> target = feature == null ? Named.class : feature.getEReferenceType().getInstanceClass();
			String written = NodeModelUtils.getTokenText(node);
			int point = written.indexOf('.') + 1;
			put(node.getOffset() + point, written.length() - point, kind(target), 0);
		} else if (grammar instanceof RuleCall && grammar.eContainer() instanceof Assignment assigned && "name".equals(assigned.getFeature())
				&& node.getSemanticElement() instanceof Named named && !(named instanceof Parameter)) {
			put(node.getOffset(), NodeModelUtils.getTokenText(node).length(), kind(named.getClass()), 1);
		}
	}

	private static int kind(Class<?> type) {
		for (Class<?> ofCatalogs : List.of(PartType.class, Family.class, Message.class, KeyValue.class)) {
			if (ofCatalogs.isAssignableFrom(type)) {
				return FROM_CATALOG;
			}
		}
		return Option.class.isAssignableFrom(type) ? OPTION : Port.class.isAssignableFrom(type) ? PORT : ELEMENT;
	}

	private void put(int offset, int length, int kind, int declared) {
		Position at = document.getPosition(offset);
		int lines = at.getLine() - last.getLine();
		numbers.addAll(List.of(lines, lines == 0 ? at.getCharacter() - last.getCharacter() : at.getCharacter(), length, kind, declared));
		last = at;
	}
}
