/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/**
 * Translates between the protocol's places (URI, line, character) and ours (path, offset).
 */
final class Places {

	private Places() {
	}

	/** The path of a file: URI, or nothing for any other scheme. */
	static Optional<Path> path(String uri) {
		try {
			return Optional.of(Path.of(URI.create(uri)).toAbsolutePath().normalize());
		} catch (IllegalArgumentException | FileSystemNotFoundException e) {
			return Optional.empty();
		}
	}

	/** The URI of a path, with three slashes and no slash at the end, as clients write it. */
	static String uri(Path path) {
		String uri = path.toUri().toString();
		return uri.endsWith("/") ? uri.substring(0, uri.length() - 1) : uri;
	}

	/** The range of a piece of text; what lies beyond the end is cut off. */
	static Range range(String text, int offset, int length) {
		return new Range(position(text, offset), position(text, offset + Math.max(0, length)));
	}

	private static Position position(String text, int offset) {
		int end = Math.max(0, Math.min(offset, text.length()));
		int line = 0;
		int lineStart = 0;
		for (int i = 0; i < end; i++) {
			char c = text.charAt(i);
			if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
				line++;
				lineStart = i + 1;
			}
		}
		return new Position(line, end - lineStart);
	}
}
