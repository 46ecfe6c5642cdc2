/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.rules.report.CheckReport;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/**
 * An engine that keeps what it has read says the same as one that reads everything, whatever was typed before.
 */
class ReadingAgainTest {

	private static final Path PILOT = Path.of("../hullwright.examples/examples/harbour-pilot");

	@RepeatedTest(4)
	void aKeystrokeChangesNothingElse(RepetitionInfo repetition) throws IOException {
		Random random = new Random(repetition.getCurrentRepetition());
		Snapshot original = Snapshot.ofFolder(PILOT);
		Map<String, String> texts = new HashMap<>();
		original.files().keySet().forEach(path -> texts.put(path, original.text(path).orElseThrow()));
		Checker keeping = Checker.create();
		List<String> paths = new ArrayList<>(original.files().keySet());
		for (int step = 0; step < 12; step++) {
			String path = paths.get(random.nextInt(paths.size()));
			switch (random.nextInt(5)) {
			case 0 -> texts.put(path, original.text(path).orElseThrow());
			case 1 -> texts.remove(path);
			case 2 -> texts.computeIfPresent(path, (each, text) -> text.replaceFirst("(\\d) m of", "$19 m of"));
			case 3 -> texts.computeIfPresent(path, (each, text) -> text.isEmpty() ? text : text.substring(0, random.nextInt(text.length())));
			default -> texts.computeIfPresent(path, (each, text) -> text.replaceFirst("terminator", "// terminator"));
			}
			CheckRequest request = CheckRequest.ofAll(Snapshot.of(texts), Boats.DAY);
			CheckReport whole = Checker.create().check(request);
			assertEquals(whole, keeping.check(request), "seed " + repetition.getCurrentRepetition() + ", step " + step);
		}
	}
}
