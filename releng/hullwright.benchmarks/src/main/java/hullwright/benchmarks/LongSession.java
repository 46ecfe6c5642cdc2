/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.check.WantedBoats;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.services.TextDocumentService;

/**
 * What an hour of edits, one a second, leaves in memory: the texts are broken and mended, names come and go, boats change, and an
 * editor's questions are asked in between. Arguments: how many edits, how many devices.
 */
public final class LongSession {

	private static final int PARTS = 4;
	private static final String SERIES = "Generated0";

	private LongSession() {
	}

	/** Prints the memory in use after each quarter, garbage collected. */
	public static void main(String[] arguments) throws Exception {
		int edits = Integer.parseInt(arguments[0]);
		try (EditedProject project = new EditedProject(Integer.parseInt(arguments[1]))) {
			List<String> states = states(project.text());
			// what is loaded once is no growth
			run(project, states, 0, edits / 10);
			print(0);
			for (int part = 0; part < PARTS; part++) {
				run(project, states, edits / PARTS * part, edits / PARTS);
				print(edits / PARTS * (part + 1));
			}
		}
		System.exit(0);
	}

	/** What the text goes through; the number of the edit comes into names, so that no two are the same. */
	private static List<String> states(String text) {
		return List.of(text, text.replace("device7 ", "device7x%d "), text.replace("via 2 m of light to device9 ", "via 2 of light to device9 "),
				text.replace("\t\t\tterminator right : endMale at helm\n", ""), text.replace("via 2 m of light to device3 ", "via 7 m of light to device3 "),
				text.replace(": rudderSensor at helm\n\t}", ": rudderSensor at nowhere%d\n\t}"), text.replace("hull 1", "hull 1\n\thull h%d"));
	}

	private static void run(EditedProject project, List<String> states, int first, int edits) throws Exception {
		for (int edit = first; edit < first + edits; edit++) {
			project.change(new TextDocumentContentChangeEvent(states.get(edit % states.size()).replace("%d", String.valueOf(edit))));
			if (edit % 20 == 0) {
				ask(project);
				project.choose(SERIES, edit % 40 == 0 ? new WantedBoats.Sold("1") : new WantedBoats.Plainest());
			}
		}
	}

	private static void ask(EditedProject project) throws Exception {
		TextDocumentService editor = project.server().getTextDocumentService();
		Position inBackbone = new Position(12, 6);
		CompletableFuture.allOf(editor.documentSymbol(new DocumentSymbolParams(project.file())), editor.hover(new HoverParams(project.file(), inBackbone)),
				editor.semanticTokensFull(new SemanticTokensParams(project.file())), editor.completion(new CompletionParams(project.file(), inBackbone)))
				.handle((answered, overtaken) -> null).get(60, TimeUnit.SECONDS);
	}

	private static void print(int edits) {
		System.gc();
		System.gc();
		System.out.printf(Locale.ROOT, "| %,d | %.1f |%n", edits, ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1048576.0);
	}
}
