/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.xtext.validation.Issue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a reader is told when a text as such is wrong: names, things said twice, imports, and plain slips of the pen. */
class ProblemMessagesTest {

	@Test
	void anUnknownPartNamesItsNearNeighbour() {
		MarkedText.of("""
				import "standard:parts"
				series S { network n { backbone of light { tee dash : «blok4» } } }
				""").assertProblems("no tee 'blok4' in Standard; did you mean 'block4'?");
	}

	@Test
	void aPartOfAnotherKindIsNotTakenForATee() {
		MarkedText.of("""
				import "standard:parts"
				series S {
					network n {
						backbone of «endMale» { tee dash : «windSensor» tap feed : «block4» wall w : «micro» }
						drop dash.1 via 1 m of «microToPush», light, «lightt» to d : «tee1»
					}
				}
				""").assertProblems(
				"'endMale' is a terminator, but a cable is expected here",
				"'windSensor' is a device, but a tee is expected here",
				"'block4' is a tee, but a tap is expected here",
				"'micro' is a connector family, but a feed-through is expected here",
				"'microToPush' is an adapter, but a cable is expected here",
				"no part 'lightt' in Standard; did you mean 'light'?",
				"'tee1' is a tee, but a device is expected here");
	}

	@Test
	void aSlipInAZoneIsNoOtherPlace() {
		MarkedText.of("""
				series S {
					options { sounder; radar «recquires» }
					places { forepeak wet; helm «hott»; cabin, mast outside
						stern wet near compass
					}
				}
				""").assertProblems(
				"'recquires' is not understood after an option (requires, excludes); before another option put ';'",
				"'hott' is no zone (dry, wet, hot, outside, vapour, near compass, above); before another place put ';'");
	}

	@Test
	void withoutAnImportThereIsNoCatalogToLookIn() {
		MarkedText.of("series S { network n { backbone of «light» { } } }")
				.assertProblems("no cable 'light'; this file imports no catalog");
	}

	@Test
	void aNameInTwoCatalogsNeedsItsCatalog() {
		MarkedText.of("""
				import "standard:parts"
				catalog Mine { tee tee1 { } }
				series S { network n { backbone { tee a : «tee1» tee b : Mine.tee1 tee c : Standard.tee1 } } }
				""").assertProblems("'tee1' is in more than one catalog; write Mine.tee1 or Standard.tee1");
	}

	@Test
	void unknownOptionsPlacesSuppliesAndPartsOfTheBackbone() {
		MarkedText.of("""
				import "standard:parts"
				series S {
					options { autopilot }
					places { helm }
					supply house { 12 V }
					network n {
						backbone of light {
							tee dash : block4 at «helmet»
							tap feed : midTap from «hose»
							cable 2 m when «autopilots»
						}
						drop «dsh».1 to wind : windSensor
					}
					hull 1 with «flybridge» { remove n.«winde» }
				}
				""").assertProblems(
				"no place 'helmet'; did you mean 'helm'?",
				"no supply 'hose'; did you mean 'house'?",
				"no option 'autopilots'; did you mean 'autopilot'?",
				"no part 'dsh' of this network; did you mean 'dash'?",
				"no option 'flybridge'",
				"no device, part or line 'winde'; did you mean 'wind'?");
	}

	@Test
	void aNameIsTakenOnce() {
		MarkedText.of("""
				import "standard:parts"
				series S {
					options { autopilot one of «autopilot», mast }
					network n {
						backbone of light { tee dash : block4 cable «dash» 2 m }
						drop dash.1 to «dash» : windSensor
					}
				}
				""").assertProblems(
				"the name 'autopilot' is taken by the option in line 3",
				"the name 'dash' is taken by the part of this network's backbone in line 5",
				"the name 'dash' is taken by the part of this network's backbone in line 5");
	}

	@Test
	void aValueIsStatedOnce() {
		MarkedText.of("""
				catalog C {
					cable c {
						rated 3 A
						rated «4 A»
					}
				}
				""").assertProblems("'4 A': this is stated already in line 3");
	}

	@Test
	void anImportThatLeadsNowhere() {
		MarkedText.of("""
				import «"standard:everything"»
				import «"missing.hull"»
				import «""»
				""").assertProblems(
				"there is no file 'standard:everything' to import in this project; built-in catalogs are written 'standard:parts'",
				"there is no file 'missing.hull' to import in this project; built-in catalogs are written 'standard:parts'",
				"there is no file '' to import in this project; built-in catalogs are written 'standard:parts'");
	}

	@Test
	void importsInACircle(@TempDir Path project) throws IOException {
		Files.writeString(project.resolve("a.hull"), "import \"b.hull\"\n");
		Files.writeString(project.resolve("b.hull"), "import \"a.hull\"\n");
		assertEquals(List.of("1: the files import each other in a circle: 'b.hull' leads back to this file"),
				HullTexts.describe(HullTexts.problems(new HullTexts().read(project.resolve("a.hull")))));
	}

	/** A boat file sees the parts of the files it imports, not those that they import in turn. */
	@Test
	void importsAreNotPassedOn(@TempDir Path project) throws IOException {
		Files.writeString(project.resolve("kit.hull"), "import \"standard:parts\"\ncatalog Kit { tee myTee { backbone micro male, micro female } }\n");
		Files.writeString(project.resolve("boat.hull"), "import \"kit.hull\"\nseries S { network n { backbone { tee a : myTee tee b : block4 } } }\n");
		assertEquals(List.of("2: no tee 'block4' in Kit"),
				HullTexts.describe(HullTexts.problems(new HullTexts().read(project.resolve("boat.hull")))));
	}

	@Test
	void aMissingBraceIsToldAtTheEnd() {
		List<Issue> problems = HullTexts.problems(new HullTexts().read("catalog C {\n\tcable c { rated 3 A\n"));
		assertEquals(List.of("expected '}', found the end of the file"), problems.stream().map(Issue::getMessage).distinct().toList());
	}

	@Test
	void aWordOfTheLanguageIsNoName() {
		List<Issue> problems = HullTexts.problems(new HullTexts().read("series S {\n\tplaces { when }\n}\n"));
		assertEquals(2, problems.get(0).getLineNumber());
		assertTrue(problems.get(0).getMessage().contains("'when' is a word of the language; if a name was meant, choose another"),
				problems.get(0).getMessage());
	}

	@Test
	void whatWasExpectedAndWhatWasFound() {
		MarkedText.of("catalog C { tee t { backbone f male «f» female } family f { } }")
				.assertProblems("expected ',', found 'f'");
	}

	/** The import is the cause; the twenty parts that it would have brought are not told as well. */
	@Test
	void whatAFailedImportWouldHaveBroughtIsNotToldAsWell() {
		MarkedText.of("""
				import «"standrd:parts"»
				series S {
					places { helm }
					network n {
						backbone of light { terminator a : endMale tee dash : block4 at «roof» }
						drop dash.1 via 2 m of light to wind : windSensor
					}
				}
				""").assertProblems(
				"there is no file 'standrd:parts' to import in this project; built-in catalogs are written 'standard:parts'",
				"no place 'roof'");
	}

	@Test
	void aSlipInAWordOfTheLanguageNamesItsNearNeighbour() {
		MarkedText.of("""
				series S {
					«networc» n { }
				}
				""").assertProblems("expected '}', found 'networc'; did you mean 'network'?");
		MarkedText.of("""
				catalog C {
					device d { «sens» 127250 every 1 s }
				""").assertProblems("expected '}', found 'sens'; did you mean 'sends'?");
		MarkedText.of("""
				catalog C { tee t { } }
				series S { network n { backbone { tee a : t }
					«dropp» a.1
				}
				""").assertProblems("expected '}', found 'dropp'; did you mean 'drop'?");
	}

	@Test
	void whatMayStandWhereAWordIsUnknown() {
		MarkedText.of("""
				catalog C { tee t { } }
				series S { network n { backbone {
					«block» a : t
				} }
				""").assertProblems("expected '}', found 'block'; what stands here begins with "
				+ "adapter, cable, device, isolator, tap, tee, terminator, wall, when");
	}

	@Test
	void theIdOfARuleIsShownByExample() {
		MarkedText.of("profile P from standard { droplength« »off }").assertProblems(
				"expected '/' (the id of a rule is written as in 'cabling/drop-too-long'), found a blank");
	}

	/** The new constructs of the language, as a beginner gets them wrong. */
	@Test
	void unknownNamesInDataPowerAndSerialLines() {
		MarkedText.of("""
				import "standard:parts"
				catalog C {
					family f { standard }
					fuse blade { rated 3 A }
					message 127250 { single; key reference of magnetic or true }
					device gate { port bus : f male; line in1 : listener; sends 127250 as «magnetc»; wants «127251»; sends 127250 by «in2» }
					cord c { f male to bare; fuse 3 A of «blad»; successor «cc» }
				}
				series S {
					switch main
					bank service { 12 V }
					supply house { from «servise»; switch «mane»; fuse 3 A of «f» }
					state off1 { on «man»; «servce» dips to 9 V }
					network n {
						backbone of light { tee dash : block4 cable along «keel» }
						drop dash.1 to g : gate { from «hous»; takes 127250 as true from «gg»; mutes «12725» }
						cap dash.2 with «block4»
						feed dash.3 via «cord1» from house
					}
					serial l { from g.«in2»; to «n».in1 }
					hull 1 { add drop «m».dash.2 to x : gate }
				}
				""").assertProblems(
				"no key value 'magnetc' of this message; did you mean 'magnetic'?",
				"no message '127251' in C or Standard",
				"no port 'in2' of this device; did you mean 'in1'?",
				"no fuse 'blad' in C or Standard; did you mean 'blade'?",
				"no part 'cc' in C or Standard; did you mean 'c'?",
				"no bank, converter or supply 'servise'; did you mean 'service'?",
				"no switch 'mane'",
				"'f' is a connector family, but a fuse is expected here",
				"no switch 'man'; did you mean 'main'?",
				"no bank, converter or supply 'servce'; did you mean 'service'?",
				"no route 'keel'",
				"no supply 'hous'; did you mean 'house'?",
				"no device 'gg'; did you mean 'g'?",
				"no message '12725' in C or Standard",
				"'block4' is a tee, but a cap is expected here",
				"no part 'cord1' in C or Standard",
				"no port 'in2' of this device; did you mean 'in1'?",
				"no device 'n'",
				"no network 'm'");
	}

	@Test
	void aDayThatNoCalendarHas() {
		MarkedText.of("""
				series S {
					waive cabling/a on b because "c" until «2027-02-30»
					waive cabling/a on b because "c" until «2027-13-01»
					waive cabling/a on b because "c" until «2027»
					waive cabling/a on b because "c" until 2028-02-29
				}
				""").assertProblems(
				"'2027-02-30' is no day of the calendar; write one as '2027-03-01'",
				"'2027-13-01' is no day of the calendar; write one as '2027-03-01'",
				"'2027' is no day of the calendar; write one as '2027-03-01'");
	}

	@Test
	void aTextThatIsNotClosed() {
		List<Issue> problems = HullTexts.problems(new HullTexts().read("catalog C \"Parts {\n}\n"));
		assertEquals("1: the text in quotes is not closed in its line", HullTexts.describe(problems).get(0));
	}

	@Test
	void anImportWithoutQuotes() {
		MarkedText.of("""
				import «standard»:parts
				series S { network n { backbone of light { tee dash : block4 } } }
				""").assertProblems("expected a text in quotes, found 'standard'");
	}

	/** Blocks do not nest, and the word that shows it is no name that went wrong. */
	@Test
	void aWordThatBeginsTheNextItemIsNotTakenForAName() {
		MarkedText.of("""
				series S {
					options { a; b }
					network n { backbone { when a { when b { «when» a { } } } } }
				«}»
				""").assertProblems(
				"expected '}', found 'when'; a block of conditions may hold one more, no deeper: join conditions by 'and'",
				"expected the end of the file or another catalog, series or profile, found '}'");
	}

	@Test
	void aSwitchIsDeclaredByTheSeries() {
		MarkedText.of("series S { supply s { 12 V; switch «panel» } }")
				.assertProblems("no switch 'panel'; the series declares its switches, for example: switch panel \"Navigation panel\"");
		MarkedText.of("series S { switch panel supply s { 12 V; switch «pannel» } }")
				.assertProblems("no switch 'pannel'; did you mean 'panel'?");
	}
}
