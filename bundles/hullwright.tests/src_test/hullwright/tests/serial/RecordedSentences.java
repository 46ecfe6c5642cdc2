/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A recording of the sentences of a boat, four hours of a multiplexed line: a sample of the npm package signalk-server 2.32.0
 * (Apache-2.0), which {@code releng/open-data} pins.
 */
final class RecordedSentences {

	private static final Path SAMPLES = Path.of("..", "..", "releng", "open-data", "node_modules", "signalk-server", "samples");

	private static final int SECONDS_OF_A_DAY = 24 * 60 * 60;

	/** A sentence of the recording without its line end. */
	record Recorded(String text) {

		String formatter() {
			return text.substring(3, 6);
		}

		/** With the line end. */
		int characters() {
			return text.length() + 2;
		}

		/** Whether the two digits at its end are the exclusive or of the characters between "$" and "*". */
		boolean isWhole() {
			int star = text.lastIndexOf('*');
			int sum = 0;
			for (char each : text.substring(1, star).toCharArray()) {
				sum ^= each;
			}
			return Integer.parseInt(text.substring(star + 1), 16) == sum;
		}

		/** The second of the day, if it tells the time. */
		private Optional<Integer> time() {
			if (!formatter().equals("ZDA")) {
				return Optional.empty();
			}
			String digits = text.split(",")[1];
			return Optional.of(Integer.parseInt(digits.substring(0, 2)) * 3600 + Integer.parseInt(digits.substring(2, 4)) * 60
					+ Integer.parseInt(digits.substring(4, 6)));
		}
	}

	private RecordedSentences() {
	}

	/** Reads the recording. Where it was not fetched, the test is skipped, or fails where everything has to run. */
	static List<Recorded> read() throws IOException {
		if (!Files.isDirectory(SAMPLES)) {
			String advice = "the recording is not there; fetch it: (cd releng/open-data && npm ci --ignore-scripts)";
			if (System.getenv("CI") != null) {
				fail(advice);
			}
			abort(advice);
		}
		try (Stream<Path> samples = Files.list(SAMPLES)) {
			List<Path> found = samples.filter(each -> each.toString().endsWith(".log")).toList();
			if (found.size() != 1) {
				throw new IOException("one recording expected, not " + found);
			}
			return Files.readAllLines(found.get(0), StandardCharsets.US_ASCII).stream().map(Recorded::new).toList();
		}
	}

	/** How long it lasts by the times that it tells. */
	static double seconds(List<Recorded> recording) {
		List<Integer> times = recording.stream().flatMap(each -> each.time().stream()).toList();
		int seconds = 0;
		for (int i = 1; i < times.size(); i++) {
			seconds += Math.floorMod(times.get(i) - times.get(i - 1), SECONDS_OF_A_DAY);
		}
		return seconds;
	}
}
