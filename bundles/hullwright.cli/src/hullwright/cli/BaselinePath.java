/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.baseline.Baseline;
import hullwright.check.baseline.BaselineFile;
import hullwright.check.baseline.UnusableBaseline;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Baselines on disk.
 */
final class BaselinePath {

	private BaselinePath() {
	}

	/**
	 * Reads a baseline.
	 *
	 * @throws Refusal if there is none, or the file cannot be used as one
	 */
	static Baseline read(Path file) {
		try {
			return BaselineFile.read(file.toString(), Files.readAllBytes(file));
		} catch (UnusableBaseline e) {
			throw new Refusal(e.getMessage());
		} catch (NoSuchFileException e) {
			throw new Refusal("there is no baseline " + file);
		} catch (IOException e) {
			throw new Refusal("the baseline " + file + " cannot be read: " + e.getMessage());
		}
	}
}
