/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.lang.ide.HullServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;

/**
 * From a keystroke to the problems of the file that it went into, in the server as the workbench runs it, with the boat in view. The
 * pause after which a check begins is part of what is measured and told apart. Arguments: how many keystrokes, then numbers of
 * devices.
 */
public final class Keystrokes {

	/** As {@code LiveCheck} waits. */
	private static final int PAUSE_MILLIS = 120;
	private static final int WARM_UP = 40;

	private Keystrokes() {
	}

	/** Prints one row of a table for each number of devices. */
	public static void main(String[] arguments) throws Exception {
		int keystrokes = Integer.parseInt(arguments[0]);
		for (String devices : Arrays.asList(arguments).subList(1, arguments.length)) {
			double[] millis = measure(Integer.parseInt(devices), keystrokes);
			Arrays.sort(millis);
			System.out.printf(Locale.ROOT, "| %s | %.0f | %.0f | %.0f | %.0f |%n", devices, at(millis, 0.5), at(millis, 0.95), at(millis, 0.5) - PAUSE_MILLIS,
					at(millis, 0.95) - PAUSE_MILLIS);
		}
		System.exit(0);
	}

	private static double at(double[] sorted, double share) {
		return sorted[(int) Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
	}

	private static double[] measure(int devices, int keystrokes) throws Exception {
		Path folder = Files.createTempDirectory("keystrokes").toRealPath();
		for (Map.Entry<String, String> text : GeneratedProject.of(devices).entrySet()) {
			Files.writeString(folder.resolve(text.getKey()), text.getValue());
		}
		Path file = folder.resolve(GeneratedProject.pathOf(0));
		Listener listener = new Listener();
		LanguageServer server = start(HullServer.create(), listener, folder);
		HullServer.show(server, file);
		String uri = file.toUri().toString();
		String text = Files.readString(file);
		server.getTextDocumentService().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "hull", 1, text)));
		listener.await(1);
		int line = (int) text.substring(0, text.indexOf(" via 2 m of light")).lines().count() - 1;
		int column = text.lines().skip(line).findFirst().orElseThrow().indexOf("2 m of light");
		double[] millis = new double[keystrokes];
		for (int i = -WARM_UP; i < keystrokes; i++) {
			int version = i + WARM_UP + 2;
			long begun = System.nanoTime();
			server.getTextDocumentService().didChange(new DidChangeTextDocumentParams(new VersionedTextDocumentIdentifier(uri, version),
					List.of(new TextDocumentContentChangeEvent(new Range(new Position(line, column), new Position(line, column + 1)), i % 2 == 0 ? "1" : "2"))));
			listener.await(version);
			if (i >= 0) {
				millis[i] = (System.nanoTime() - begun) / 1e6;
			}
		}
		server.shutdown().get(60, TimeUnit.SECONDS);
		delete(folder);
		return millis;
	}

	private static void delete(Path folder) throws IOException {
		try (var files = Files.list(folder)) {
			for (Path file : files.toList()) {
				Files.delete(file);
			}
		}
		Files.delete(folder);
	}

	private static <S extends LanguageServer & LanguageClientAware> LanguageServer start(S fresh, LanguageClient client, Path folder) throws Exception {
		fresh.connect(client);
		InitializeParams params = new InitializeParams();
		params.setWorkspaceFolders(List.of(new WorkspaceFolder(folder.toUri().toString(), "keystrokes")));
		WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
		workspace.setWorkspaceFolders(true);
		params.setCapabilities(new ClientCapabilities(workspace, null, null));
		fresh.initialize(params).get();
		fresh.initialized(new InitializedParams());
		return fresh;
	}

	/** Waits for the problems of a version. */
	private static final class Listener implements LanguageClient {
		private final BlockingQueue<Integer> versions = new LinkedBlockingQueue<>();

		void await(int version) throws InterruptedException {
			Integer published;
			do {
				published = versions.poll(120, TimeUnit.SECONDS);
				if (published == null) {
					throw new IllegalStateException("no problems were published");
				}
			} while (published < version);
		}

		@Override
		public void publishDiagnostics(PublishDiagnosticsParams params) {
			if (params.getVersion() != null) {
				versions.add(params.getVersion());
			}
		}

		@Override
		public void telemetryEvent(Object event) {
			// nothing is collected
		}

		@Override
		public void showMessage(MessageParams message) {
			System.err.println(message.getMessage());
		}

		@Override
		public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams request) {
			return CompletableFuture.completedFuture(null);
		}

		@Override
		public void logMessage(MessageParams message) {
			// not of interest
		}
	}
}
