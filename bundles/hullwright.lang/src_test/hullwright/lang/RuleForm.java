/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import hullwright.lang.messages.SpecWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Action;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.EnumLiteralDeclaration;
import org.eclipse.xtext.EnumRule;
import org.eclipse.xtext.Grammar;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.TerminalRule;

/**
 * How people read a rule of the grammar: words stand as they are written, {@code ‹…›} for something to fill in,
 * {@code [ ]} for what may be left out, {@code |} for a choice, {@code ...} for what may come again.
 */
final class RuleForm {

	/** A fragment that more rules than these share is described once instead of in each of them. */
	private static final int SHARED = 5;
	private static final int LINE = 112;

	private final Map<AbstractRule, Long> users;

	RuleForm(Grammar grammar) {
		users = EcoreUtil2.getAllContentsOfType(grammar, RuleCall.class).stream()
				.collect(Collectors.groupingBy(RuleCall::getRule, Collectors.counting()));
	}

	/** Whether a rule is a fragment whose content belongs into the rules that use it. */
	boolean isPartOfOthers(AbstractRule rule) {
		return rule instanceof ParserRule parser && parser.isFragment() && users.getOrDefault(rule, 0L) <= SHARED;
	}

	/** What a thing to fill in is called: the words of the rule's name. Variants that only add context share one. */
	static String label(AbstractRule rule) {
		String name = rule.getName().replaceFirst("^(Inner|Added)(?=[A-Z])", "");
		return name.equals("Pgn") ? "PGN" : name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
	}

	/** The form, several lines if need be. */
	String of(AbstractRule rule) {
		AbstractElement body = rule.getAlternatives();
		if (body instanceof Alternatives choice && body.getCardinality() == null) {
			return lines(choice).stream().map(line -> wrapped(line, "")).collect(Collectors.joining("\n| "));
		}
		if (body instanceof Alternatives choice) {
			return lines(choice).stream().map(line -> wrapped(line, "")).collect(Collectors.joining("\n"));
		}
		if (body instanceof Group group) {
			StringBuilder form = new StringBuilder();
			List<AbstractElement> parts = group.getElements();
			for (int i = 0; i < parts.size(); i++) {
				AbstractElement part = parts.get(i);
				boolean inBraces = i > 0 && parts.get(i - 1) instanceof Keyword open && open.getValue().equals("{");
				Alternatives properties = inBraces ? propertiesOf(part) : null;
				if (properties != null) {
					lines(properties).forEach(line -> form.append("\n\t").append(wrapped(line, "\t")));
					form.append('\n');
				} else {
					String text = text(part, parts.size() > 1);
					form.append(form.isEmpty() || form.charAt(form.length() - 1) == '\n' || text.isEmpty() ? "" : " ").append(text);
				}
			}
			String whole = form.toString().replace(" . ", ".").replace("› .]", "›.]");
			return whole.indexOf('\n') < 0 ? wrapped(whole, "") : whole;
		}
		return text(body, false);
	}

	/** The choice that is repeated in braces, or null if the element is none. */
	private static Alternatives propertiesOf(AbstractElement element) {
		if (!GrammarUtil.isMultipleCardinality(element)) {
			return null;
		}
		if (element instanceof Alternatives choice) {
			return choice;
		}
		return element instanceof Group group && group.getElements().get(0) instanceof Alternatives choice ? choice : null;
	}

	private List<String> lines(Alternatives choice) {
		List<String> lines = new ArrayList<>();
		for (AbstractElement one : choice.getElements()) {
			if (one instanceof Alternatives inner && inner.getCardinality() == null) {
				lines.addAll(lines(inner));
			} else if (one instanceof RuleCall call && isPartOfOthers(call.getRule()) && call.getRule().getAlternatives() instanceof Alternatives inner) {
				lines.addAll(lines(inner));
			} else {
				lines.add(text(one, false));
			}
		}
		return lines;
	}

	private static String wrapped(String line, String indent) {
		StringBuilder wrapped = new StringBuilder();
		String rest = line;
		while (rest.length() > LINE) {
			int at = rest.lastIndexOf(" [", LINE);
			at = at > LINE / 3 ? at : rest.lastIndexOf(' ', LINE);
			int opened = rest.lastIndexOf('‹', at);
			if (opened > rest.lastIndexOf('›', at)) {
				at = rest.lastIndexOf(' ', opened);
			}
			wrapped.append(rest, 0, at).append('\n').append(indent).append("    ");
			rest = rest.substring(at + 1);
		}
		return wrapped.append(rest).toString();
	}

	private String text(AbstractElement element, boolean inGroup) {
		String once = once(element);
		if (once.isEmpty()) {
			return "";
		}
		boolean optional = GrammarUtil.isOptionalCardinality(element);
		boolean again = GrammarUtil.isMultipleCardinality(element);
		if (optional) {
			return "[" + (again && once.contains(" | ") && isChoice(element) ? "(" + once + ")" : once) + (again ? " ..." : "") + "]";
		}
		boolean choice = once.contains(" | ") && isChoice(element);
		return (choice && (inGroup || again) ? "(" + once + ")" : once) + (again ? " ..." : "");
	}

	private boolean isChoice(AbstractElement element) {
		if (element instanceof RuleCall call) {
			return isPartOfOthers(call.getRule()) && isChoice(call.getRule().getAlternatives());
		} else if (element instanceof Assignment assignment) {
			return assignment.getTerminal() instanceof RuleCall call && call.getRule() instanceof EnumRule;
		}
		return element instanceof Alternatives;
	}

	private String once(AbstractElement element) {
		if (element instanceof Keyword keyword) {
			return keyword.getValue();
		} else if (element instanceof Action) {
			return "";
		} else if (element instanceof Alternatives choice) {
			return choice.getElements().stream().map(one -> text(one, false)).collect(Collectors.joining(" | "));
		} else if (element instanceof Group group) {
			return group.getElements().stream().map(part -> text(part, true)).filter(text -> !text.isEmpty())
					.collect(Collectors.joining(" ")).replace(" . ", ".");
		} else if (element instanceof Assignment assignment) {
			return filledIn(assignment.getTerminal(), assignment.getFeature());
		}
		AbstractRule rule = ((RuleCall) element).getRule();
		if (rule.getName().equals("Separator")) {
			return "";
		}
		return isPartOfOthers(rule) ? text(rule.getAlternatives(), false) : "‹" + label(rule) + "›";
	}

	private static String filledIn(AbstractElement terminal, String feature) {
		if (terminal instanceof Keyword keyword) {
			return keyword.getValue();
		} else if (terminal instanceof CrossReference reference) {
			boolean inNetwork = reference.getTerminal() instanceof RuleCall call && call.getRule().getName().equals("NameInNetwork");
			return (inNetwork ? "‹name of a network›." : "") + "‹name of " + SpecWords.oneOf((EClass) reference.getType().getClassifier()) + "›";
		}
		AbstractRule rule = ((RuleCall) terminal).getRule();
		if (rule instanceof EnumRule words) {
			return EcoreUtil2.getAllContentsOfType(words, EnumLiteralDeclaration.class).stream()
					.map(word -> word.getLiteral().getValue())
					.collect(Collectors.joining(" | "));
		} else if (rule.getName().equals("STRING")) {
			return "\"‹" + (feature.equals("importURI") ? "file" : feature) + "›\"";
		} else if (rule instanceof TerminalRule || rule.getName().equals("Name")) {
			return rule.getName().equals("INT") ? "‹number›" : "‹name›";
		}
		return "‹" + label(rule) + "›";
	}

	/** Each feature that a rule sets, with how it is written there. */
	Map<String, Set<String>> properties(AbstractRule rule) {
		Map<String, Set<String>> properties = new LinkedHashMap<>();
		collect(rule.getAlternatives(), properties);
		return properties;
	}

	private void collect(AbstractElement element, Map<String, Set<String>> properties) {
		if (element instanceof Assignment assignment) {
			properties.computeIfAbsent(assignment.getFeature(), feature -> new LinkedHashSet<>()).add(written(assignment));
		} else if (element instanceof RuleCall call && isPartOfOthers(call.getRule())) {
			collect(call.getRule().getAlternatives(), properties);
		} else {
			element.eContents().stream().filter(AbstractElement.class::isInstance).forEach(part -> collect((AbstractElement) part, properties));
		}
	}

	/** The words that lead to a value, the value, and the words that end it. */
	private String written(Assignment assignment) {
		AbstractElement inGroup = assignment;
		while (inGroup.eContainer() instanceof Alternatives choice) {
			inGroup = choice;
		}
		StringBuilder written = new StringBuilder(filledIn(assignment.getTerminal(), assignment.getFeature()));
		if (inGroup.eContainer() instanceof Group group) {
			List<AbstractElement> parts = group.getElements();
			int at = parts.indexOf(inGroup);
			for (int before = at - 1; before >= 0 && (isWord(parts.get(before)) || isOptional(parts.get(before))); before--) {
				if (parts.get(before) instanceof Keyword word && !isOptional(word)) {
					written.insert(0, word.getValue() + " ");
				}
			}
			int end = at + 1;
			while (end < parts.size() && isWord(parts.get(end))) {
				end++;
			}
			if (parts.stream().skip(end).allMatch(RuleForm::isOptional) || GrammarUtil.isBooleanAssignment(assignment)) {
				parts.subList(at + 1, end).forEach(word -> written.append(' ').append(((Keyword) word).getValue()));
			}
		}
		return written.toString();
	}

	private static boolean isOptional(AbstractElement element) {
		return GrammarUtil.isOptionalCardinality(element);
	}

	private static boolean isWord(AbstractElement element) {
		return element instanceof Keyword keyword && (Character.isLetter(keyword.getValue().charAt(0)) || ":..".contains(keyword.getValue()));
	}
}
