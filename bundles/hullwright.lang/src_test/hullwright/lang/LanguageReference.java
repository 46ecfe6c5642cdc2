/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import hullwright.lang.ReferenceSnippets.Snippet;
import hullwright.lang.services.HullGrammarAccess;
import hullwright.quantity.Dimension;
import hullwright.quantity.Unit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.EnumRule;
import org.eclipse.xtext.Grammar;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;

/**
 * Makes the page of the language reference that lists every form: from the grammar, the documentation in the metamodel, the
 * units, and the snippets of the chapters, which give each form its example.
 */
final class LanguageReference {

	private static final Pattern SECTION = Pattern.compile("/\\* ---- (.*?) ---- \\*/");
	private static final Pattern RULE = Pattern.compile("(?:fragment |enum |terminal )?([A-Z]\\w*)\\b[^;]*:.*|(?:fragment )?([A-Z]\\w*) .*\\*:");
	/** What surrounds a snippet that is not a whole file. */
	private static final Set<String> FRAMES = Set.of("SpecFile", "Declaration", "Import", "Catalog", "Series", "DataNetwork");
	private static final int LONGEST_EXAMPLE = 420;

	private final Grammar grammar = HullTexts.service(HullGrammarAccess.class).getGrammar();
	private final RuleForm forms = new RuleForm(grammar);
	private final EPackage documented = documentedModel();
	private final Map<String, Example> examples = examples();
	private final StringBuilder page = new StringBuilder();

	private record Example(String text, Path chapter) {
	}

	/** The page as it should lie beside the chapters. */
	static String page() {
		return new LanguageReference().written();
	}

	private String written() {
		opening();
		sections().forEach((title, rules) -> {
			page.append("\n## ").append(title).append('\n');
			rules.forEach(this::form);
		});
		units();
		words();
		return page.toString();
	}

	private void opening() {
		page.append("""
				<!-- Generated from the grammar, the metamodel and the chapters; LanguageReferenceTest says how to renew it. -->
				# The language of .hull files

				Read the chapters to learn the language; each stands by itself. Below them is every form that the language has.
				All boats, yards and parts in the examples are invented. The figures are no advice: local codes and standards, the
				makers' instructions and a licensed electrician decide about anything that carries battery current.

				""");
		for (Path chapter : ReferenceSnippets.chapters()) {
			page.append("- [").append(titleOf(chapter)).append("](").append(chapter.getFileName()).append(")\n");
		}
		page.append("""

				An example that is not a whole file is part of a catalog, of the series below, or of a network in it. The parts
				are those of [kit.hull](kit.hull).

				```
				""");
		page.append(ReferenceSnippets.SERIES.formatted("\t...\n"));
		page.append("""
				```

				## How to read the forms

				Words and signs stand as they are written. `‹…›` is to be filled in; `[…]` may be left out; `|` divides choices;
				`...` means that what stands before it may come again. Lines in braces are properties: they come in any order, each
				once unless it says "any number", with or without `;` or `,` between them.
				""");
	}

	/** The rules that a reader meets, under the headings of the grammar's source. */
	private Map<String, List<AbstractRule>> sections() {
		Map<String, List<AbstractRule>> sections = new LinkedHashMap<>();
		String title = "File";
		for (String line : text(Path.of("src/hullwright/lang/Hull.xtext")).split("\n")) {
			Matcher heading = SECTION.matcher(line);
			if (heading.matches()) {
				title = heading.group(1);
			}
			Matcher rule = RULE.matcher(line);
			if (rule.matches()) {
				AbstractRule found = GrammarUtil.findRuleForName(grammar, rule.group(1) != null ? rule.group(1) : rule.group(2));
				if (found != null && isShown(found)) {
					sections.computeIfAbsent(title, none -> new ArrayList<>()).add(found);
				}
			}
		}
		return sections;
	}

	/** Whether a rule has a form of its own here. */
	boolean isShown(AbstractRule rule) {
		return rule instanceof ParserRule && !(rule instanceof EnumRule) && !GrammarUtil.isDatatypeRule((ParserRule) rule)
				&& !forms.isPartOfOthers(rule) && !rule.getName().matches("(Inner|Added)[A-Z].*") && !rule.getName().equals("BareEnd");
	}

	private void form(AbstractRule rule) {
		EClass type = (EClass) documented.getEClassifier(rule.getType().getClassifier().getName());
		String label = RuleForm.label(rule);
		page.append("\n### ").append(Character.toUpperCase(label.charAt(0))).append(label.substring(1)).append("\n\n");
		page.append(EcoreUtil.getDocumentation(type)).append("\n\n```\n").append(forms.of(rule)).append("\n```\n");
		Map<String, Set<String>> properties = forms.properties(rule);
		if (!properties.isEmpty()) {
			page.append("\n| written | what it is | units |\n| --- | --- | --- |\n");
			properties.forEach((feature, ways) -> row(type.getEStructuralFeature(feature), ways));
		}
		Example example = examples.get(rule.getName());
		if (example != null && !properties.isEmpty()) {
			page.append("\nFrom [").append(titleOf(example.chapter)).append("](").append(example.chapter.getFileName()).append("):\n\n```\n")
					.append(example.text).append("\n```\n");
		}
	}

	private void row(EStructuralFeature feature, Set<String> ways) {
		String many = feature.isMany() && feature.getUpperBound() < 0 ? "; any number" : "";
		String meaning = EcoreUtil.getDocumentation(feature);
		page.append("| ").append(ways.stream().map(way -> "`" + way.replace("|", "\\|") + "`").collect(Collectors.joining("<br>")))
				.append(" | ").append(meaning, 0, meaning.length() - 1).append(many).append(" | ").append(units(feature.getEType())).append(" |\n");
	}

	private static String units(EClassifier type) {
		return switch (type.getName()) {
		case "LoadAmount" -> Stream.of(Dimension.CURRENT, Dimension.POWER, Dimension.RESISTANCE).map(LanguageReference::symbols)
				.collect(Collectors.joining(", "));
		case "AnyQuantity" -> "as the rule says";
		case "ParameterValue" -> "as the rule says, or none";
		default -> Arrays.stream(Dimension.values())
				.filter(dimension -> dimension.name().replace("_", "").equals(type.getName().toUpperCase(Locale.ROOT)))
				.map(LanguageReference::symbols)
				.findFirst().orElse("");
		};
	}

	private static String symbols(Dimension dimension) {
		return Unit.of(dimension).stream().map(Unit::symbol).collect(Collectors.joining(", "));
	}

	private void units() {
		page.append("\n## Units\n\n| quantity | units | for example |\n| --- | --- | --- |\n");
		for (Dimension dimension : Dimension.values()) {
			page.append("| ").append(dimension.label()).append(" | ").append(symbols(dimension)).append(" | ").append(dimension.example()).append(" |\n");
		}
		page.append("""

				LEN is the load equivalency number, 50 mA each. A number is written with digits and a decimal point; it is never
				negative. A day is written as 2027-03-01.
				""");
	}

	private void words() {
		page.append("\n## Words\n\nThese words of the language may also be names, where a name stands:\n\n");
		page.append(String.join(", ", ReservedWordsTest.wordsThatMayBeNames()));
		Set<String> reserved = new TreeSet<>(ReservedWordsTest.wordsOfTheLanguage());
		reserved.removeAll(ReservedWordsTest.wordsThatMayBeNames());
		page.append(".\n\nThese may not:\n\n").append(String.join(", ", reserved)).append(".\n");
	}

	/** For each rule the example in the chapters that shows most of it. */
	private static Map<String, Example> examples() {
		Map<String, Example> examples = new LinkedHashMap<>();
		HullTexts project = new HullTexts();
		for (Snippet snippet : ReferenceSnippets.all()) {
			if (snippet.messages().isEmpty()) {
				XtextResource resource = project.read(snippet.file().getBytes(StandardCharsets.UTF_8), ReferenceSnippets.PLACE);
				for (INode node : resource.getParseResult().getRootNode().getAsTreeIterable()) {
					if (node.getGrammarElement() instanceof RuleCall call && !GrammarUtil.isTerminalRuleCall(call)) {
						String name = call.getRule().getName().replaceFirst("^Inner(?=[A-Z])", "");
						if (node.getText().isBlank() || !snippet.whole() && FRAMES.contains(name)) {
							continue;
						}
						Example example = new Example(dedented(node), snippet.chapter());
						examples.merge(name, example, LanguageReference::better);
					}
				}
			}
		}
		return examples;
	}

	/** The one that shows more, unless it is too long. */
	private static Example better(Example first, Example next) {
		boolean nextIsLonger = next.text.length() > first.text.length();
		int longer = Math.max(first.text.length(), next.text.length());
		return nextIsLonger == (longer <= LONGEST_EXAMPLE) && next.text.length() != first.text.length() ? next : first;
	}

	private static String dedented(INode node) {
		String whole = node.getRootNode().getText();
		int lineStart = whole.lastIndexOf('\n', node.getOffset() - 1) + 1;
		String indent = whole.substring(lineStart, node.getOffset()).replaceAll("\\S.*", "");
		return whole.substring(node.getOffset(), node.getEndOffset()).replace("\n" + indent, "\n");
	}

	/** The metamodel as it was written: the generated one has lost its documentation. */
	private static EPackage documentedModel() {
		URI file = URI.createFileURI(Path.of("../hullwright.spec/model/spec.ecore").toAbsolutePath().normalize().toString());
		return (EPackage) HullTexts.service(XtextResourceSet.class).getResource(file, true).getContents().get(0);
	}

	private static String titleOf(Path chapter) {
		return text(chapter).lines().findFirst().orElseThrow().substring(2);
	}

	static String text(Path file) {
		try {
			return Files.readString(file);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
