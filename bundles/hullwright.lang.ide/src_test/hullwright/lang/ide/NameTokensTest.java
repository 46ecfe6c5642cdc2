/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.lang.ide.names.NameTokens;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.SemanticTokensLegend;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Names have a kind, for their colour in an editor, in the encoding of the language server protocol 3.17. The boat is invented.
 */
class NameTokensTest {

	private static final String PUNT = """
			import "standard:parts"

			series Punt "For tests" revision "A" {
				options { radar }
				places { helm "Helm" }
				network bus of kind instrument bus {
					backbone of light {
						terminator left : endFemale at helm
						tee block : block4 at helm
					}
					drop block.1 via 1 m of light to display : instrumentDisplay when radar
				}
			}
			""";

	@TempDir
	private Path folder;

	@Test
	void catalogOptionPortAndElementDiffer() throws Exception {
		try (ServedProject project = new ServedProject(folder, ServedProject.files("yard.hull", "profile Bench from standard {\n}\n", "punt.hull", PUNT))) {
			project.open("punt.hull", PUNT);
			List<Integer> numbers = ServedProject.answer(project.server.getTextDocumentService().semanticTokensFull(
					new SemanticTokensParams(project.identifier("punt.hull")))).getData();
			assertEquals(List.of("Punt variable declaration", "radar enumMember declaration", "helm variable declaration", "bus variable declaration",
					"light type", "left variable declaration", "endFemale type", "helm variable", "block variable declaration", "block4 type", "helm variable",
					"block variable", "light type", "display variable declaration", "instrumentDisplay type", "radar enumMember"), words(numbers));
		}
	}

	private static List<String> words(List<Integer> numbers) {
		SemanticTokensLegend legend = NameTokens.LEGEND;
		List<String> lines = PUNT.lines().toList();
		List<String> words = new ArrayList<>();
		int line = 0;
		int letter = 0;
		for (int at = 0; at < numbers.size(); at += NameTokens.NUMBERS) {
			line += numbers.get(at);
			letter = numbers.get(at + 1) + (numbers.get(at) == 0 ? letter : 0);
			words.add(lines.get(line).substring(letter, letter + numbers.get(at + 2)) + " " + legend.getTokenTypes().get(numbers.get(at + 3))
					+ (numbers.get(at + 4) == 1 ? " " + legend.getTokenModifiers().get(0) : ""));
		}
		return words;
	}

	/** Every statement of the language, whole and broken off in each line. */
	@Test
	void aTextThatCannotBeReadIsAnswered() throws Exception {
		String whole = Files.readString(Path.of("../hullwright.lang/src_test/hullwright/lang/whole-language.hull"));
		try (ServedProject project = new ServedProject(folder, ServedProject.files("yard.hull", "profile Bench from standard {\n}\n", "whole.hull", whole))) {
			for (int end = whole.length(); end >= 0; end = whole.lastIndexOf(' ', end - 1)) {
				String text = whole.substring(0, end);
				project.open("whole.hull", text);
				List<Integer> numbers = ServedProject.answer(project.server.getTextDocumentService().semanticTokensFull(
						new SemanticTokensParams(project.identifier("whole.hull")))).getData();
				assertEquals(0, numbers.size() % NameTokens.NUMBERS, text);
				end = Math.max(0, end - 60);
			}
		}
	}
}
