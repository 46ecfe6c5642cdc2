/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A recording of a boat of 2014, ten minutes with four devices: a sample of the npm package signalk-server 2.32.0
 * (Apache-2.0), which {@code releng/open-data} pins. Each line has the time, priority, PGN, addresses of sender and receiver, length
 * and data; fast packets are whole.
 */
final class RecordedLog {

	private static final Path SAMPLES = Path.of("..", "..", "releng", "open-data", "node_modules", "signalk-server", "samples");

	/** A message of the recording. */
	record Recorded(Instant time, int priority, int pgn, int from, int to, int[] data) {
	}

	private RecordedLog() {
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
		List<Recorded> messages = new ArrayList<>();
		for (String line : Files.readAllLines(onlySampleOfMessages())) {
			String[] parts = line.split(",");
			int[] numbers = Arrays.stream(parts, 1, 6).mapToInt(Integer::parseInt).toArray();
			int[] data = Arrays.stream(parts, 6, parts.length).mapToInt(each -> Integer.parseInt(each, 16)).toArray();
			if (data.length != numbers[4]) {
				throw new IOException("length " + numbers[4] + " in " + line);
			}
			messages.add(new Recorded(Instant.parse(parts[0]), numbers[0], numbers[1], numbers[2], numbers[3], data));
		}
		return messages;
	}

	private static Path onlySampleOfMessages() throws IOException {
		try (Stream<Path> samples = Files.list(SAMPLES)) {
			List<Path> found = samples.filter(each -> each.toString().endsWith("-n2k.data")).toList();
			if (found.size() != 1) {
				throw new IOException("one recording expected, not " + found);
			}
			return found.get(0);
		}
	}
}
