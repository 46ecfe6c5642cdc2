/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.lang.services.HullGrammarAccess;
import hullwright.spec.Profile;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.resource.XtextResource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Words of the language stand in the ids of rules, and many serve as names on board. Both lists are kept by hand in the
 * grammar, so they are held against it here.
 */
class ReservedWordsTest {

	private static final HullGrammarAccess GRAMMAR = HullTexts.service(HullGrammarAccess.class);

	static Set<String> wordsOfTheLanguage() {
		return wordLike(GrammarUtil.getAllKeywords(GRAMMAR.getGrammar()));
	}

	static Set<String> wordsThatMayBeNames() {
		return wordsIn(GRAMMAR.getNameRule());
	}

	@Test
	void everyWordIsAllowedInTheIdOfARule() {
		Set<String> left = wordsOfTheLanguage();
		left.removeAll(wordsIn(GRAMMAR.getAnyWordRule()));
		left.removeAll(wordsIn(GRAMMAR.getNameRule()));
		assertEquals(Set.of(), left, "not in rule AnyWord of the grammar");
	}

	@Test
	void noListedWordHasLeftTheLanguage() {
		Set<String> used = GrammarUtil.allRules(GRAMMAR.getGrammar()).stream()
				.filter(rule -> rule != GRAMMAR.getAnyWordRule() && rule != GRAMMAR.getNameRule())
				.flatMap(rule -> wordsIn(rule).stream())
				.collect(Collectors.toSet());
		Set<String> listed = wordsIn(GRAMMAR.getAnyWordRule());
		listed.addAll(wordsIn(GRAMMAR.getNameRule()));
		listed.removeAll(used);
		assertEquals(Set.of(), listed, "reserved for nothing");
	}

	@ParameterizedTest
	@MethodSource("wordsOfTheLanguage")
	void aWordIsReadInTheIdOfARule(String word) {
		String id = word + "/" + word + "-" + word;
		XtextResource resource = new HullTexts().read("profile Yard from standard { " + id + " off }");
		assertEquals(List.of(), HullTexts.describe(HullTexts.problems(resource)));
		assertEquals(id, ((Profile) HullTexts.spec(resource).getDeclarations().get(0)).getSettings().get(0).getRule());
	}

	@ParameterizedTest
	@MethodSource("wordsThatMayBeNames")
	void aWordNamesWhateverHasAName(String word) {
		assertReads("""
				catalog C {
				  cable NAME { power 22 AWG }
				  family f { standard; rated 4 A }
				  cable light { power 22 AWG, 57 mohm/m each way; signal 24 AWG; rated 3 A; delay 4.46 ns/m; stock 1 m, 2 m; source "invented" }
				  tee block { backbone f male, f female; port 1 : f female }
				  tap plain { backbone f male, f female; feeds both sides }
				  device sensor { port NAME : f male; supply 9 V .. 16 V; load 1 LEN; source "invented" }
				}
				series S {
				  options { NAME, other requires NAME excludes NAME }
				  places { NAME near compass, dry1 dry }
				  switch NAME
				  supply NAME { 12 V, switch NAME, fuse 3 A, lead 2 m each way of 1.5 mm2 }
				  network NAME of kind engine bus {
				    backbone NAME of C.NAME {
				      tee NAME : block at NAME label "label"
				      cable NAME1 1 m of light when not NAME
				      cable NAME2 2 m when NAME or other and not NAME
				      tap other : plain at NAME from NAME earths shield
				      when NAME { cable 1 m } else { cable 2 m }
				    }
				    drop NAME.1 via 1 m of light to NAMEd : sensor at NAME { label "label" } when NAME, else prepared
				  }
				  hull NAME with NAME { remove NAME.NAMEd }
				}
				""".replace("NAME", word));
	}

	private static void assertReads(String text) {
		assertEquals(List.of(), HullTexts.describe(HullTexts.problems(new HullTexts().read(text))));
	}

	private static Set<String> wordsIn(AbstractRule rule) {
		return wordLike(EcoreUtil2.getAllContentsOfType(rule, Keyword.class).stream().map(Keyword::getValue).toList());
	}

	private static Set<String> wordLike(Collection<String> keywords) {
		return keywords.stream().filter(keyword -> Character.isLetter(keyword.charAt(0))).collect(Collectors.toCollection(TreeSet::new));
	}
}
