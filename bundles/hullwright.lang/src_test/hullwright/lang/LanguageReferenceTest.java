/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.lang.ReferenceSnippets.Snippet;
import hullwright.lang.services.HullGrammarAccess;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.EnumLiteralDeclaration;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.TerminalRule;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Who learns the language learns it here: nothing in the reference may be wrong, missing or out of date. */
class LanguageReferenceTest {

	/** Words and signs that may stand wherever a name or a separator may. */
	private static final Set<String> RULES_ABOUT_NAMES = Set.of("Name", "AnyWord", "ElementName", "Separator");

	private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)?(#[^)]+)?\\)");

	private final HullTexts project = new HullTexts();

	static List<Snippet> snippets() {
		return ReferenceSnippets.all();
	}

	static List<Path> chapters() {
		return ReferenceSnippets.chapters();
	}

	@Test
	void thePageOfFormsIsUpToDate() throws IOException {
		String page = LanguageReference.page();
		Path committed = ReferenceSnippets.FOLDER.resolve("language.md");
		Path renewed = Path.of("target/language.md");
		Files.createDirectories(renewed.getParent());
		Files.writeString(renewed, page);
		assertEquals(page, Files.exists(committed) ? LanguageReference.text(committed) : "",
				"bundles/hullwright.lang/reference/language.md is out of date: copy bundles/hullwright.lang/target/language.md over it");
	}

	@ParameterizedTest
	@MethodSource("snippets")
	void aSnippetHasTheProblemsThatItShowsAndNoOther(Snippet snippet) {
		MarkedText.of(snippet.file()).assertProblems(project, ReferenceSnippets.PLACE, snippet.messages());
	}

	@Test
	void theCatalogOfTheChaptersHasNoProblem() {
		assertEquals(List.of(), HullTexts.describe(HullTexts.problems(project.read(ReferenceSnippets.FOLDER.resolve("kit.hull")))));
	}

	/** Wherever the grammar has a word, some snippet shows it there. */
	@Test
	void everyWordOfEveryFormIsShown() {
		Set<EObject> shown = new HashSet<>();
		for (Snippet snippet : snippets()) {
			INode root = project.read(MarkedText.of(snippet.file()).text().getBytes(StandardCharsets.UTF_8), ReferenceSnippets.PLACE).getParseResult().getRootNode();
			for (ILeafNode leaf : root.getLeafNodes()) {
				EObject word = leaf.getGrammarElement();
				shown.add(word instanceof EnumLiteralDeclaration literal ? literal.getLiteral() : word);
			}
		}
		Set<String> missing = new TreeSet<>();
		for (AbstractRule rule : GrammarUtil.allRules(HullTexts.service(HullGrammarAccess.class).getGrammar())) {
			for (Keyword word : EcoreUtil2.getAllContentsOfType(rule, Keyword.class)) {
				if (!shown.contains(word) && !RULES_ABOUT_NAMES.contains(rule.getName()) && !(rule instanceof TerminalRule) && !word.getValue().equals(";")) {
					missing.add(rule.getName() + " " + word.getValue());
				}
			}
		}
		assertEquals("", String.join("\n", missing));
	}

	@ParameterizedTest
	@MethodSource("chapters")
	void aLinkLeadsSomewhere(Path chapter) {
		Matcher link = LINK.matcher(LanguageReference.text(chapter));
		while (link.find()) {
			Path target = link.group(1) == null ? chapter : chapter.resolveSibling(link.group(1));
			assertTrue(Files.exists(target), () -> chapter + " links to " + target);
			if (link.group(2) != null) {
				String heading = link.group(2).substring(1).replace('-', ' ');
				assertTrue(LanguageReference.text(target).toLowerCase().contains("# " + heading + "\n"), () -> chapter + " links to " + heading);
			}
		}
	}
}
