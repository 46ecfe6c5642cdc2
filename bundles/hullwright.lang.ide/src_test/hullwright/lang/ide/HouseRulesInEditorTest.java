/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.Figures;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.plugin.HousePlugin;
import hullwright.check.plugin.PluginFile;
import hullwright.check.plugin.TrustedPlugins;
import hullwright.network.Boat;
import hullwright.quantity.Length;
import hullwright.rules.BoatRule;
import hullwright.rules.report.CheckReport;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The rule of a house in an editor: off until it is trusted, then with the same findings as on the command line.
 */
class HouseRulesInEditorTest {

	private static final Path EXAMPLES = Path.of("../hullwright.examples");
	private static final String FOUND = "yard/spare-port-missing";

	@TempDir
	private Path folder;
	private Path project;
	private TrustedPlugins trust;
	private Path jar;
	private final RecordingClient client = new RecordingClient();

	@BeforeEach
	void prepare() throws IOException {
		trust = new TrustedPlugins(folder.toRealPath().resolve("configuration"));
		System.setProperty(TrustedPlugins.PROPERTY, folder.toRealPath().resolve("configuration").toString());
		project = Files.createDirectory(folder.toRealPath().resolve("yard"));
		for (String file : List.of("yard.hull", "starter.hull")) {
			Files.copy(EXAMPLES.resolve("examples/first-power-up").resolve(file), project.resolve(file));
		}
		jar = Files.createDirectory(project.resolve("rules")).resolve("yard-rules.jar");
		build();
	}

	@AfterEach
	void forget() {
		System.clearProperty(TrustedPlugins.PROPERTY);
	}

	private void build() throws IOException {
		Path sources = EXAMPLES.resolve("house-rule/src/main");
		Path classes = folder.resolve("classes");
		String api = Stream.of(BoatRule.class, Boat.class, Figures.class, Length.class)
				.map(each -> Path.of(URI.create(each.getProtectionDomain().getCodeSource().getLocation().toString())).toString())
				.collect(Collectors.joining(File.pathSeparator));
		assertEquals(0, ToolProvider.getSystemJavaCompiler().run(null, null, null, "-proc:none", "-d", classes.toString(), "-classpath", api,
				sources.resolve("java/yard/rules/SparePortMissing.java").toString()));
		Path manifest = Files.writeString(folder.resolve("manifest"),
				"Bundle-SymbolicName: yard.rules\nBundle-Version: 1.0.0\nRequire-Bundle: hullwright.rules;bundle-version=\"[0.1,0.2)\"\n");
		assertEquals(0, java.util.spi.ToolProvider.findFirst("jar").orElseThrow().run(System.out, System.err, "--create", "--file", jar.toString(),
				"--manifest", manifest.toString(), "-C", classes.toString(), ".", "-C", sources.resolve("resources").toString(), "."));
	}

	private PublishDiagnosticsParams next(Path place, String code) throws InterruptedException {
		return client.next(list -> list.getUri().equals(Places.uri(place))
				&& list.getDiagnostics().stream().anyMatch(each -> each.getCode() != null && each.getCode().getLeft().equals(code)));
	}

	private <S extends LanguageServer & LanguageClientAware> LanguageServer connected(S server) {
		server.connect(client);
		return server;
	}

	@Test
	void theSameFindingsAsOnTheCommandLine() throws Exception {
		LanguageServer server = connected(HullServer.create());
		InitializeParams params = new InitializeParams();
		params.setWorkspaceFolders(List.of(new WorkspaceFolder(Places.uri(project), "yard")));
		WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
		workspace.setWorkspaceFolders(true);
		params.setCapabilities(new ClientCapabilities(workspace, new TextDocumentClientCapabilities(), null));
		server.initialize(params).get(60, TimeUnit.SECONDS);
		server.initialized(new InitializedParams());
		try {
			assertTrue(RecordingClient.text(next(jar, "project/plugin-off").getDiagnostics().get(0)).contains("plugin yard.rules 1.0.0 is off"));

			trust.trust(HousePlugin.of(PluginFile.at(jar)), LocalDate.of(2030, 1, 1));
			server.getWorkspaceService().didChangeWatchedFiles(new DidChangeWatchedFilesParams(List.of(new FileEvent(Places.uri(jar), FileChangeType.Changed))));
			PublishDiagnosticsParams found = next(project.resolve("starter.hull"), FOUND);

			CheckReport report = Checker.create(trust).check(CheckRequest.ofAll(Snapshot.ofFolder(project), LocalDate.now()));
			assertEquals(report.findings().stream().map(each -> each.finding().rule() + " " + (each.finding().origin().line() - 1) + ": " + each.finding().message()).toList(),
					RecordingClient.texts(found));
			assertEquals(List.of(FOUND), report.findings().stream().map(each -> each.finding().rule()).toList());
		} finally {
			server.shutdown().get(60, TimeUnit.SECONDS);
		}
	}
}
