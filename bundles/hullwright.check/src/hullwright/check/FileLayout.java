/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.lang.HullLanguage;
import hullwright.lang.formatting.CanonicalLayout;
import hullwright.lang.formatting.FormattedText;
import hullwright.rules.Finding;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A .hull file in the one layout that there is, or why it is left alone.
 *
 * @param bytes the file as it should be; as it is if there are problems
 * @param changed whether that differs from the file as it is
 * @param problems why the file is left alone: it cannot be read, is no text or has a syntax error
 */
public record FileLayout(byte[] bytes, boolean changed, List<Problem> problems) {

	public FileLayout {
		problems = List.copyOf(problems);
	}

	/**
	 * Why a file is left alone.
	 *
	 * @param line where, from 1
	 * @param column where in that line, from 1
	 * @param message what is wrong
	 */
	public record Problem(int line, int column, String message) {
	}

	/** Lays a file out. Nothing is written, and nothing but these bytes is read. */
	public static FileLayout of(Snapshot.FileContent content) {
		Optional<Finding> unusable = SpecReader.unusable("", content);
		if (unusable.isPresent()) {
			return new FileLayout(content.bytes(), false, List.of(new Problem(1, 1, unusable.get().message())));
		}
		FormattedText formatted = HullLanguage.services().getInstance(CanonicalLayout.class)
				.format(new String(content.bytes(), StandardCharsets.UTF_8));
		byte[] bytes = formatted.text().getBytes(StandardCharsets.UTF_8);
		return new FileLayout(bytes, !Arrays.equals(bytes, content.bytes()),
				formatted.problems().stream().map(problem -> new Problem(problem.line(), problem.column(), problem.message())).toList());
	}
}
