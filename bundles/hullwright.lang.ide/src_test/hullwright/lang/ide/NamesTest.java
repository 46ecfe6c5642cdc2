/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import static hullwright.lang.ide.ServedProject.answer;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightKind;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Names over the files of a project: where they are declared, where they are used, and what changes with them. All invented.
 */
class NamesTest {

	private static final String KIT = """
			import "standard:parts"

			catalog Kit {
				tee smallBlock { backbone screw male, screw female; ports 1..2 : screw female }
				device logger { port bus : screw male; supply 9 V .. 16 V; load 1 LEN; line out : talker, rs232, 4800 baud }
				device printer { own supply; line in1 : listener, rs232, 4800 baud }
			}
			""";

	private static final String KETCH = """
			import "standard:parts"
			import "kit.hull"

			series Ketch "Ketch for tests" revision "A" {
				options { radar; pilotPack requires radar }
				places { helm "Helm"; mast "Mast" }
				supply battery { 12 V, lowest 11 V, highest 14.6 V; fuse 3 A; lead 2 m each way of 1.5 mm2 }
				network instruments of kind instrument bus {
					backbone of light {
						terminator left : endFemale at helm
						tap feed : midTap at helm from battery earths shield
						cable 1 m
						tee bow : Kit.smallBlock at helm
						cable 2 m
						tee aft : smallBlock at mast
						terminator right : endMale at mast
					}
					drop bow.1 via 1 m of light to log : logger at helm
					drop aft.1 via 1 m of light to display : instrumentDisplay at mast when radar
					join bow.2 via 1 m of light to aft.2 when pilotPack
				}
				device paper : printer at helm { from battery }
				serial slips at 4800 baud { from log.out; to paper.in1; cable 2 m }
				waive cabling/loop on instruments.join-bow-2-to-aft-2 because "for tests"
				waive cabling/cable-shorter-than-route on instruments.bow-to-aft because "for tests"
				waive power/load-unknown on instruments.log because "for tests"
				hull 1 with radar {
					instruments.log via 2 m of light
					add drop instruments.bow.2 via 1 m of light to horn : logger
				}
			}
			""";

	private static final String YAWL = """
			import "standard:parts"
			import "kit.hull"

			series Yawl {
				network bus {
					backbone of light { terminator a : endFemale tee bow : smallBlock terminator b : endMale }
					drop bow.1 to log : logger
				}
			}
			""";

	@TempDir
	private Path folder;
	private ServedProject project;

	@BeforeEach
	void start() throws Exception {
		project = new ServedProject(folder, Map.of("yard.hull", "import \"kit.hull\"\nprofile Yard from standard {\n\tapproved catalogs Kit\n}\n",
				"kit.hull", KIT, "ketch.hull", KETCH, "yawl.hull", YAWL));
		project.open("ketch.hull", KETCH);
	}

	@AfterEach
	void stop() throws Exception {
		project.close();
	}

	private List<String> definition(String file, String marked) throws Exception {
		List<? extends Location> found = answer(project.server.getTextDocumentService()
				.definition(new DefinitionParams(project.identifier(file), project.at(file, marked)))).getLeft();
		return found.stream().map(this::line).toList();
	}

	/** The file and the line of a location, and the name that it marks. */
	private String line(Location location) {
		try {
			Path file = Path.of(URI.create(location.getUri()));
			String line = Files.readAllLines(file).get(location.getRange().getStart().getLine());
			return file.getFileName() + ": " + line.substring(location.getRange().getStart().getCharacter(), location.getRange().getEnd().getCharacter())
					+ " in " + line.strip();
		} catch (java.io.IOException e) {
			throw new java.io.UncheckedIOException(e);
		}
	}

	private List<String> references(String file, String marked) throws Exception {
		return answer(project.server.getTextDocumentService().references(
				new ReferenceParams(project.identifier(file), project.at(file, marked), new ReferenceContext(false)))).stream().map(this::line).toList();
	}

	private WorkspaceEdit rename(String file, String marked, String name) throws Exception {
		return answer(project.server.getTextDocumentService()
				.rename(new RenameParams(project.identifier(file), project.at(file, marked), name)));
	}

	private List<String> changed(String file, WorkspaceEdit edit) {
		return ServedProject.changedLines(project.text(file), project.applied(edit).getOrDefault(file, project.text(file)));
	}

	@Test
	void aPartIsDeclaredInItsCatalog() throws Exception {
		assertEquals(List.of("kit.hull: smallBlock in tee smallBlock { backbone screw male, screw female; ports 1..2 : screw female }"),
				definition("ketch.hull", "aft : small|Block"));
		assertEquals(List.of("kit.hull: Kit in catalog Kit {"), definition("ketch.hull", "bow : K|it.smallBlock"));
	}

	@Test
	void aBuiltInPartIsDeclaredInACopyThatCanBeReadButNotWritten() throws Exception {
		List<? extends Location> found = answer(project.server.getTextDocumentService()
				.definition(new DefinitionParams(project.identifier("ketch.hull"), project.at("ketch.hull", "instrument|Display")))).getLeft();
		assertEquals(1, found.size());
		assertTrue(line(found.get(0)).startsWith("parts.hull: instrumentDisplay in device instrumentDisplay"), line(found.get(0)));
		// who runs as root may write to anything, so the mode is looked at
		assertFalse(Files.getPosixFilePermissions(Path.of(URI.create(found.get(0).getUri()))).toString().contains("WRITE"));
	}

	@Test
	void whatAWaiverIsAboutIsDeclaredWhereItsPartsAre() throws Exception {
		assertEquals(List.of("ketch.hull: aft in tee aft : smallBlock at mast"), definition("ketch.hull", "instruments.bow-to-a|ft"));
		assertEquals(List.of("ketch.hull: instruments in network instruments of kind instrument bus {"),
				definition("ketch.hull", "instru|ments.bow-to-aft"));
	}

	@Test
	void aWordOfTheLanguageIsDeclaredNowhere() throws Exception {
		assertEquals(List.of(), definition("ketch.hull", "back|bone of light"));
		assertEquals(List.of(), references("ketch.hull", "back|bone of light"));
	}

	@Test
	void usesOfAPartAreFoundInAllFiles() throws Exception {
		assertEquals(List.of("ketch.hull: smallBlock in tee bow : Kit.smallBlock at helm", "ketch.hull: smallBlock in tee aft : smallBlock at mast",
				"yawl.hull: smallBlock in backbone of light { terminator a : endFemale tee bow : smallBlock terminator b : endMale }"),
				references("kit.hull", "tee small|Block"));
	}

	@Test
	void usesOfABuiltInPartAreFoundInAllFiles() throws Exception {
		assertEquals(2, references("yawl.hull", "a : end|Female").size());
	}

	@Test
	void occurrencesTellDeclarationFromUse() throws Exception {
		List<? extends DocumentHighlight> found = answer(project.server.getTextDocumentService()
				.documentHighlight(new DocumentHighlightParams(project.identifier("ketch.hull"), project.at("ketch.hull", "drop bo|w.1"))));
		assertEquals(6, found.size(), found.toString());
		assertEquals(1, found.stream().filter(each -> each.getKind() == DocumentHighlightKind.Write).count());
	}

	@Test
	void aDeviceKeepsItsIdentityWhereverItIsNamed() throws Exception {
		WorkspaceEdit edit = rename("ketch.hull", "from lo|g.out", "speedLog");
		assertEquals(List.of("drop bow.1 via 1 m of light to speedLog : logger at helm", "serial slips at 4800 baud { from speedLog.out; to paper.in1; cable 2 m }",
				"waive power/load-unknown on instruments.speedLog because \"for tests\"", "instruments.speedLog via 2 m of light"),
				changed("ketch.hull", edit));
		assertEquals(1, edit.getDocumentChanges().size(), "the other boat has a log of its own");
		assertEquals(1, edit.getDocumentChanges().get(0).getLeft().getTextDocument().getVersion(), "of the text that the editor shows");
	}

	@Test
	void derivedNamesFollowTheirParts() throws Exception {
		assertEquals(List.of("tee stem : Kit.smallBlock at helm", "drop stem.1 via 1 m of light to log : logger at helm",
				"join stem.2 via 1 m of light to aft.2 when pilotPack",
				"waive cabling/loop on instruments.join-stem-2-to-aft-2 because \"for tests\"",
				"waive cabling/cable-shorter-than-route on instruments.stem-to-aft because \"for tests\"",
				"add drop instruments.stem.2 via 1 m of light to horn : logger"), changed("ketch.hull", rename("ketch.hull", "tee b|ow", "stem")));
	}

	@Test
	void aPortOptionPlaceNetworkAndCatalogAreFollowed() throws Exception {
		WorkspaceEdit port = rename("ketch.hull", "log.o|ut", "talks");
		assertTrue(project.applied(port).get("kit.hull").contains("line talks : talker"));
		assertEquals(1, changed("ketch.hull", port).size());
		assertEquals(3, changed("ketch.hull", rename("ketch.hull", "when rad|ar", "scanner")).size());
		assertEquals(4, changed("ketch.hull", rename("ketch.hull", "mas|t \"Mast\"", "top")).size());
		assertEquals(6, changed("ketch.hull", rename("ketch.hull", "network instru|ments", "nav")).size());
		WorkspaceEdit catalog = rename("kit.hull", "catalog K|it", "House");
		assertEquals(List.of("tee bow : House.smallBlock at helm"), changed("ketch.hull", catalog));
	}

	@Test
	void editorsThatAreNotSavedCount() throws Exception {
		project.open("yawl.hull", YAWL.replace("tee bow : smallBlock", "tee bow : smallBlock\n tee next : smallBlock"));
		assertEquals(2, changed("yawl.hull", rename("ketch.hull", "aft : small|Block", "miniBlock")).size());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			drop bow.1 via 1 m of light to ^log | to      | 'to' is a word of the language and cannot be a name here
			drop bow.1 via 1 m of light to ^log | my log  | 'my log' is no name: a name is one word of letters, digits and _ and begins with a letter
			drop bow.1 via 1 m of light to ^log | 2nd     | '2nd' is no name: a name is one word of letters, digits and _ and begins with a letter
			drop bow.1 via 1 m of light to ^log | display | The name 'display' is taken by the device in line 19
			drop bow.1 via 1 m of light to ^log | horn    | The name 'horn' is taken by the device in line 29
			instrument^Display                  | dial    | 'instrumentDisplay' belongs to the built-in catalog standard:parts, whose names stay as they are
			back^bone of light                  | spine   | There is no name here that is declared anywhere
			pilotPack requires ra^dar           | pilotPack | The name 'pilotPack' is taken by the option
			""")
	void aNameThatCannotBeIsRefusedInWords(String marked, String name, String sentence) {
		ExecutionException refused = assertThrows(ExecutionException.class, () -> rename("ketch.hull", marked.replace('^', '|'), name));
		assertTrue(refused.getCause().getMessage().startsWith(sentence), refused.getCause().getMessage());
	}

	@Test
	void whatCanBeRenamedIsToldBefore() throws Exception {
		var prepared = answer(project.server.getTextDocumentService()
				.prepareRename(new PrepareRenameParams(project.identifier("ketch.hull"), project.at("ketch.hull", "from lo|g.out")))).getSecond();
		assertEquals("log", prepared.getPlaceholder());
		assertEquals(project.at("ketch.hull", "from |log.out"), prepared.getRange().getStart());
	}

	@Test
	void aBaselineThatNamesTheOldNameIsTold() throws Exception {
		Files.writeString(folder.resolve("accepted.json"), """
				{"format": "hullwright-baseline", "version": 1, "tolerance_share": 0.01, "accepted": [
				{"rule": "cabling/drop-too-long", "element": "Ketch.instruments.log", "key": "", "severity": "error", "beyondLimit_share": 0.1}]}
				""");
		WorkspaceEdit edit = rename("ketch.hull", "from lo|g.out", "speedLog");
		assertEquals(List.of("The baseline accepted.json accepts a finding about 'log' and does not follow: write it anew after this"),
				edit.getChangeAnnotations().values().stream().map(each -> each.getLabel()).toList());
	}
}
