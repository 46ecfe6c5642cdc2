/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import hullwright.check.WantedBoats;
import hullwright.rules.Severity;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.WorkspaceFoldersChangeEvent;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The boat that the views of a window show follows the text and the choice. The boat is invented.
 */
class LiveBoatsTest {

	private static final String SERIES = """
			import "standard:parts"

			series Dinghy "Dinghy for tests" revision "A" {
				options { sounder "Depth sounder"; one of tiller, wheel }
				supply battery { 12 V, lowest 11 V, highest 14.6 V; fuse 3 A; lead 2 m each way of 1.5 mm2 }
				network instruments of kind instrument bus {
					backbone of light {
						terminator left : endFemale
						tap feed : midTap from battery earths shield
						cable 1 m
						tee block : block4
						terminator right : endMale
					}
					drop block.1 via 1 m of light to display : instrumentDisplay
					drop block.2 to depth : depthTransducer when sounder
				}
				hull 1 with tiller
				hull 7 with sounder, wheel
			}
			""";

	@TempDir
	private Path folder;
	private final BlockingQueue<LiveBoat> seen = new LinkedBlockingQueue<>();
	private final BlockingQueue<AllBoats> seenOfAll = new LinkedBlockingQueue<>();
	private final RecordingClient client = new RecordingClient();
	private LanguageServer server;
	private Path series;

	@BeforeEach
	void start() throws Exception {
		Files.writeString(folder.resolve("yard.hull"), "profile Bench from standard {\n}\n");
		Files.writeString(folder.resolve("dinghy.hull"), SERIES);
		series = folder.toRealPath().resolve("dinghy.hull");
		server = start(HullServer.create());
		HullServer.boats(server).listen(seen::add);
		HullServer.boats(server).listenToAll(seenOfAll::add);
		HullServer.show(server, series);
	}

	private <S extends LanguageServer & LanguageClientAware> LanguageServer start(S fresh) throws Exception {
		fresh.connect(client);
		InitializeParams params = new InitializeParams();
		params.setWorkspaceFolders(List.of(new WorkspaceFolder(Places.uri(folder.toRealPath()), "test")));
		WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
		workspace.setWorkspaceFolders(true);
		params.setCapabilities(new ClientCapabilities(workspace, null, null));
		fresh.initialize(params).get(60, TimeUnit.SECONDS);
		fresh.initialized(new InitializedParams());
		return fresh;
	}

	@AfterEach
	void stop() throws Exception {
		server.shutdown().get(60, TimeUnit.SECONDS);
	}

	private LiveBoat next(Predicate<LiveBoat> wanted) throws InterruptedException {
		LiveBoat boat = seen.poll(60, TimeUnit.SECONDS);
		while (boat != null && !wanted.test(boat)) {
			boat = seen.poll(60, TimeUnit.SECONDS);
		}
		return boat == null ? fail("no such boat came into view") : boat;
	}

	private static Set<String> devices(LiveBoat boat) {
		Set<String> names = new TreeSet<>();
		boat.boat().ifPresent(each -> each.fittedDevices().forEach(device -> names.add(device.origin().simpleName())));
		return names;
	}

	private void type(int version, String text) {
		server.getTextDocumentService().didChange(new DidChangeTextDocumentParams(
				new VersionedTextDocumentIdentifier(Places.uri(series), version), List.of(new TextDocumentContentChangeEvent(text))));
	}

	@Test
	void theBoatWithTheFewestOptionsComesFirst() throws Exception {
		LiveBoat boat = next(each -> true);
		assertEquals(Set.of("display"), devices(boat));
		assertEquals("Dinghy for tests", boat.series().orElseThrow().title());
		assertEquals(List.of(Set.of("tiller", "wheel")), boat.series().orElseThrow().choices());
		assertEquals(1.0, boat.figures(figures -> figures.lengthOf(figures.boat().networks().get(0), figures.boat().networks().get(0).backbones().get(0))
				.run().metres()).orElseThrow());
	}

	@Test
	void aHullAndACombinationOfOptionsCanBeChosen() throws Exception {
		next(each -> true);
		HullServer.boats(server).choose("Dinghy", new WantedBoats.Sold("7"));
		assertEquals("7", next(each -> devices(each).contains("depth")).boat().orElseThrow().selection().hull().orElseThrow());

		HullServer.boats(server).choose("Dinghy", new WantedBoats.WithOptions(new TreeSet<>(Set.of("tiller"))));
		assertEquals(Set.of("tiller"), next(each -> !devices(each).contains("depth")).boat().orElseThrow().selection().options());
	}

	@Test
	void optionsThatDoNotGoTogetherSayWhyAndLeaveABoatInView() throws Exception {
		next(each -> true);
		HullServer.boats(server).choose("Dinghy", new WantedBoats.WithOptions(new TreeSet<>(Set.of("tiller", "wheel"))));
		LiveBoat boat = next(each -> !each.notes().isEmpty());
		assertEquals(List.of("series Dinghy: exactly one of tiller, wheel must be ordered"), boat.notes());
		assertTrue(boat.boat().isPresent());
	}

	@Test
	void theBoatFollowsUnsavedTextAndStaysWhileThatCannotBeRead() throws Exception {
		next(each -> true);
		server.getTextDocumentService().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(Places.uri(series), "hull", 1, SERIES)));
		type(2, SERIES.replace("terminator right : endMale", ""));
		LiveBoat open = next(LiveBoatsTest::lacksTerminator);
		assertTrue(open.outdated().isEmpty());

		type(3, SERIES.replace("terminator right : endMale", "terminator right :"));
		LiveBoat broken = next(each -> each.outdated().isPresent());
		assertTrue(broken.outdated().orElseThrow().startsWith("line 13 of dinghy.hull: "), () -> "" + broken.outdated());
		assertEquals(Set.of("display"), devices(broken));

		type(4, SERIES);
		assertTrue(next(each -> each.outdated().isEmpty() && !lacksTerminator(each)).boat().isPresent());
	}

	private static boolean lacksTerminator(LiveBoat boat) {
		return boat.findings().stream().anyMatch(finding -> finding.rule().equals("cabling/terminator-missing"));
	}

	@Test
	void choosingAnotherBoatLeavesTheFixesOfWhatWasFound() throws Exception {
		server.getTextDocumentService().didOpen(new DidOpenTextDocumentParams(
				new TextDocumentItem(Places.uri(series), "hull", 1, SERIES.replace("terminator right : endMale", ""))));
		PublishDiagnosticsParams published = client.next(list -> RecordingClient.texts(list).stream().anyMatch(text -> text.startsWith("cabling/terminator-missing")));
		Diagnostic missing = published.getDiagnostics().stream().filter(each -> each.getCode().getLeft().equals("cabling/terminator-missing")).findFirst().orElseThrow();

		HullServer.boats(server).choose("Dinghy", new WantedBoats.Sold("7"));
		next(each -> each.boat().filter(boat -> boat.selection().hull().isPresent()).isPresent());
		client.next(list -> list.getUri().equals(published.getUri()));
		assertTrue(!server.getTextDocumentService().codeAction(new CodeActionParams(new TextDocumentIdentifier(published.getUri()), missing.getRange(),
				new CodeActionContext(List.of(missing)))).get(60, TimeUnit.SECONDS).isEmpty(), "the terminator can still be added");
	}

	@Test
	void aFileWithoutASeriesLeavesThatOfItsProjectInView() throws Exception {
		next(each -> true);
		HullServer.show(server, series.resolveSibling("yard.hull"));
		assertEquals("Dinghy", next(each -> true).series().orElseThrow().name());
	}

	@Test
	void aProjectThatGoesTakesItsBoatAlong() throws Exception {
		next(each -> each.boat().isPresent());
		nextOfAll(each -> true);
		server.getWorkspaceService().didChangeWorkspaceFolders(new DidChangeWorkspaceFoldersParams(
				new WorkspaceFoldersChangeEvent(List.of(), List.of(new WorkspaceFolder(Places.uri(folder.toRealPath()), "test")))));
		assertTrue(next(each -> each.boat().isEmpty()).series().isEmpty());
		assertTrue(HullServer.boats(server).all().isEmpty());
	}

	private AllBoats nextOfAll(Predicate<AllBoats> wanted) throws InterruptedException {
		AllBoats all = seenOfAll.poll(60, TimeUnit.SECONDS);
		while (all != null && !wanted.test(all)) {
			all = seenOfAll.poll(60, TimeUnit.SECONDS);
		}
		return all == null ? fail("never told so of all boats") : all;
	}

	@Test
	void whatIsWrongOnOtherBoatsIsToldByHullAndByOption() throws Exception {
		server.getTextDocumentService().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(Places.uri(series), "hull", 1,
				SERIES.replace("drop block.2 to depth", "drop block.2 via 7 m of light to depth"))));
		AllBoats all = nextOfAll(each -> !each.underWay() && each.ofSeries("Dinghy").filter(tally -> tally.count(Severity.ERROR) == 1).isPresent());
		assertEquals(4 + 2, all.boatsOf("Dinghy"), "tiller or wheel, each with and without the sounder, and two hulls");
		assertEquals(0, all.ofHull("Dinghy", "1").orElseThrow().count(Severity.ERROR));
		assertEquals(1, all.ofHull("Dinghy", "7").orElseThrow().count(Severity.ERROR));
		assertEquals(1, all.ofOption("Dinghy", "sounder").orElseThrow().count(Severity.ERROR));
		assertEquals(0, all.ofOption("Dinghy", "wheel").orElseThrow().count(Severity.ERROR));
		assertTrue(all.ofSeries("Other").isEmpty(), "nothing is said of a series that was not checked");
	}

	/** 4,096 boats take longer than anybody wants to wait for the one in front of them. */
	@Test
	void whileManyBoatsAreCheckedTheOneInViewIsToldFirst() throws Exception {
		String many = SERIES.replace("options { sounder", "options { a; b; c; d; e; f; g; h; i; j; sounder").replace("drop block.2 to depth",
				"drop block.2 via 7 m of light to depth").replace("via 1 m of light to display", "via 6.5 m of light to display");
		server.getTextDocumentService().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(Places.uri(series), "hull", 1, many)));
		AllBoats underWay = nextOfAll(each -> each.underWay() && each.boats() == 4096 + 2);
		assertTrue(underWay.checked() < 4096 + 2);

		PublishDiagnosticsParams first = client.next(list -> RecordingClient.texts(list).stream().anyMatch(text -> text.contains("the drop to display is 6.5 m")));
		assertTrue(RecordingClient.texts(first).stream().noneMatch(text -> text.contains("the drop to depth")), "others are not done yet");
		Diagnostic drop = first.getDiagnostics().stream().filter(each -> RecordingClient.text(each).contains("the drop to display")).findFirst().orElseThrow();
		assertEquals("the boat in view, others are being checked", HullServer.boats(drop));

		assertEquals(4096 + 2, nextOfAll(each -> !each.underWay()).checked());
		client.next(list -> RecordingClient.texts(list).stream().anyMatch(text -> text.contains("the drop to depth")));
	}
}
