/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.doors;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * An editor that is none: it speaks JSON-RPC 2.0 with the framing of the Language Server Protocol (3.17, "Base protocol") byte by
 * byte, without the library that the server uses.
 */
final class ScriptedEditor implements AutoCloseable {

	private static final int PATIENCE_SECONDS = 120;

	private final Process server;
	private final OutputStream toServer;
	private final InputStream fromServer;
	private final BlockingQueue<JsonObject> answers = new LinkedBlockingQueue<>();
	private final Map<String, JsonArray> published = new ConcurrentHashMap<>();
	private int asked;

	/** Talks to a server process. */
	ScriptedEditor(Process server) {
		this.server = server;
		toServer = server.getOutputStream();
		fromServer = new BufferedInputStream(server.getInputStream());
		Thread reader = new Thread(this::readAll, "reader of the scripted editor");
		reader.setDaemon(true);
		reader.start();
	}

	/** Opens a folder as the one workspace. */
	void open(Path folder) throws IOException, InterruptedException {
		JsonObject root = new JsonObject();
		root.addProperty("uri", address(folder));
		root.addProperty("name", "boats");
		JsonArray folders = new JsonArray();
		folders.add(root);
		JsonObject workspace = new JsonObject();
		workspace.addProperty("workspaceFolders", true);
		JsonObject capabilities = new JsonObject();
		capabilities.add("workspace", workspace);
		JsonObject params = new JsonObject();
		params.addProperty("processId", ProcessHandle.current().pid());
		params.add("capabilities", capabilities);
		params.add("workspaceFolders", folders);
		ask("initialize", params);
		tell("initialized", new JsonObject());
	}

	/** Shows a file, as it is on the disk. */
	void show(Path file) throws IOException {
		JsonObject document = new JsonObject();
		document.addProperty("uri", address(file));
		document.addProperty("languageId", "hull");
		document.addProperty("version", 1);
		document.addProperty("text", Files.readString(file));
		JsonObject params = new JsonObject();
		params.add("textDocument", document);
		tell("textDocument/didOpen", params);
	}

	/** The address of a file or folder, with the three slashes that editors write. */
	static String address(Path path) {
		return path.toUri().toString().replaceFirst("^file:/(?!/)", "file:///");
	}

	/** What the server said last of each file, by its address. */
	Map<String, JsonArray> published() {
		return published;
	}

	/** Asks and waits for the answer. */
	JsonElement ask(String method, JsonObject params) throws IOException, InterruptedException {
		JsonObject message = message(method, params);
		message.addProperty("id", ++asked);
		send(message);
		JsonObject answer = answers.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
		if (answer == null || answer.get("id").getAsInt() != asked || answer.has("error")) {
			throw new IllegalStateException(method + " was answered with " + answer);
		}
		return answer.get("result");
	}

	/** Tells something that wants no answer. */
	void tell(String method, JsonObject params) throws IOException {
		send(message(method, params));
	}

	private static JsonObject message(String method, JsonObject params) {
		JsonObject message = new JsonObject();
		message.addProperty("jsonrpc", "2.0");
		message.addProperty("method", method);
		if (params != null) {
			message.add("params", params);
		}
		return message;
	}

	private synchronized void send(JsonObject message) throws IOException {
		byte[] body = message.toString().getBytes(StandardCharsets.UTF_8);
		toServer.write(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
		toServer.write(body);
		toServer.flush();
	}

	private void readAll() {
		try {
			while (true) {
				JsonObject message = JsonParser.parseString(new String(fromServer.readNBytes(length()), StandardCharsets.UTF_8)).getAsJsonObject();
				if (message.has("id") && message.has("method")) {
					accept(message.get("id"));
				} else if (message.has("id")) {
					answers.add(message);
				} else if (message.get("method").getAsString().equals("textDocument/publishDiagnostics")) {
					JsonObject params = message.getAsJsonObject("params");
					published.put(params.get("uri").getAsString(), params.getAsJsonArray("diagnostics"));
				}
			}
		} catch (EOFException e) {
			// the server has ended
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** The server may ask, too, for example to register what it watches; the answer is always the same. */
	private void accept(JsonElement id) throws IOException {
		JsonObject answer = new JsonObject();
		answer.addProperty("jsonrpc", "2.0");
		answer.add("id", id);
		answer.add("result", JsonNull.INSTANCE);
		send(answer);
	}

	/** Reads the lines of a header up to the empty one. */
	private int length() throws IOException {
		int length = -1;
		for (String line = line(); !line.isEmpty(); line = line()) {
			if (line.startsWith("Content-Length: ")) {
				length = Integer.parseInt(line.substring("Content-Length: ".length()));
			}
		}
		if (length < 0) {
			throw new IOException("a message without its length: something else was printed between messages");
		}
		return length;
	}

	private String line() throws IOException {
		StringBuilder line = new StringBuilder();
		for (int next = fromServer.read(); next != '\n'; next = fromServer.read()) {
			if (next < 0) {
				throw new EOFException();
			}
			if (next != '\r') {
				line.append((char) next);
			}
		}
		return line.toString();
	}

	/** Ends the session as the protocol wants it, and returns the exit status of the server. */
	int end() throws IOException, InterruptedException {
		ask("shutdown", null);
		tell("exit", null);
		return server.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) ? server.exitValue() : -1;
	}

	@Override
	public void close() {
		server.destroy();
	}
}
