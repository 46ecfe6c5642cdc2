/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Finds the page of a rule: the Markdown file of the same name beside the class.
 */
final class RulePage {

	private RulePage() {
	}

	static Optional<String> of(Class<?> rule) {
		try (InputStream page = rule.getResourceAsStream(rule.getSimpleName() + ".md")) {
			return page == null ? Optional.empty() : Optional.of(new String(page.readAllBytes(), StandardCharsets.UTF_8));
		} catch (IOException e) {
			return Optional.empty();
		}
	}
}
