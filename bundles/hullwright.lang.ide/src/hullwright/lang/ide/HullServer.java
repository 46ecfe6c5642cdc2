/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import com.google.inject.Guice;
import com.google.inject.util.Modules;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.concurrent.ExecutionException;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.xtext.ide.server.ServerModule;

/**
 * Makes language servers for .hull files. One runs in the workbench's own process, others can serve a stream.
 */
public final class HullServer {

	/** What a diagnostic names as its source. */
	public static final String SOURCE = "Hullwright";

	/** What {@link #boats} says of a finding that no choice of options avoids. */
	public static final String EVERY_BOAT = "every boat";

	private HullServer() {
	}

	/** Whether the rule behind a diagnostic knows something to do about it. Only trying tells whether that works here. */
	public static boolean mayBeMended(Diagnostic diagnostic) {
		return String.valueOf(diagnostic.getData()).contains(CheckedProject.FIXABLE);
	}

	/** The qualified name of the element that a diagnostic is about; empty if it is about the text only. */
	public static String element(Diagnostic diagnostic) {
		String data = String.valueOf(diagnostic.getData());
		int start = data.indexOf(CheckedProject.ELEMENT);
		int end = data.indexOf(CheckedProject.BOATS);
		return start < 0 || end < 0 ? "" : data.substring(start + CheckedProject.ELEMENT.length(), end);
	}

	/** On which boats of its series a diagnostic occurs, in words; empty if it is about the text only. */
	public static String boats(Diagnostic diagnostic) {
		String data = String.valueOf(diagnostic.getData());
		int start = data.indexOf(CheckedProject.BOATS);
		return start < 0 ? "" : data.substring(start + CheckedProject.BOATS.length());
	}

	/**
	 * A new server, not yet initialized.
	 *
	 * @param <S> a server that wants to know its client
	 * @return the server; connect a client before calling initialize
	 */
	@SuppressWarnings("unchecked")
	public static <S extends LanguageServer & LanguageClientAware> S create() {
		EditorLanguage.injector();
		return (S) Guice.createInjector(Modules.override(new ServerModule()).with(new HullServerModule()))
				.getInstance(LanguageServer.class);
	}

	/** The boat in view of a server that {@link #create()} made in this process. */
	public static LiveBoats boats(LanguageServer server) {
		return ((HullLanguageServer) server).boats();
	}

	/** Brings the series of a file into view, for a server that {@link #create()} made in this process. */
	public static void show(LanguageServer server, Path file) {
		((HullLanguageServer) server).show(file);
	}

	/**
	 * Serves one client over a pair of streams until the client ends the session or the stream.
	 *
	 * @throws InterruptedException when the calling thread is told to stop waiting
	 * @throws ExecutionException   when the stream breaks
	 */
	public static void serve(InputStream in, OutputStream out) throws InterruptedException, ExecutionException {
		serve(create(), in, out);
	}

	private static <S extends LanguageServer & LanguageClientAware> void serve(S server, InputStream in, OutputStream out)
			throws InterruptedException, ExecutionException {
		Launcher<LanguageClient> launcher = LSPLauncher.createServerLauncher(server, in, out);
		server.connect(launcher.getRemoteProxy());
		launcher.startListening().get();
	}
}
