/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialLoad;
import hullwright.tests.serial.RecordedSentences.Recorded;

/**
 * The load that is predicted from which sentences were seen how often, in the lengths of the shipped list, against the characters of
 * the recording.
 */
class RecordedSentencesTest {

	/** Their lengths are those of the recording, since the shipped list does not have them. */
	private static final Map<String, Integer> NOT_LISTED = Map.of("VPW", 21, "WCV", 17);

	private static List<Recorded> recording;
	private static double seconds;
	private static Map<String, List<Recorded>> byFormatter;

	@BeforeAll
	static void read() throws IOException {
		recording = RecordedSentences.read();
		seconds = RecordedSentences.seconds(recording);
		byFormatter = recording.stream().collect(Collectors.groupingBy(Recorded::formatter, TreeMap::new, Collectors.toList()));
	}

	@Test
	void theRecordingIsReadWhole() {
		assertEquals(116_000, recording.size());
		assertTrue(recording.stream().allMatch(Recorded::isWhole));
		assertEquals(14_845, seconds);
		assertEquals(15, byFormatter.size());
	}

	/** 43 % of 4800 bit/s counted; 54 % predicted, since the longest usual form is reckoned with and much of the recording is empty. */
	@Test
	void thePredictedLoadIsAboveWhatWasCounted() {
		double counted = recording.stream().mapToLong(Recorded::characters).sum() / seconds;
		assertEquals(206.7, counted, 0.05);
		SerialLineFigures line = predicted();
		assertEquals(0.43, counted / 480, 0.005);
		assertEquals(0.54, line.use().orElseThrow().regular().fraction(), 0.005);
		assertEquals(List.of(), line.load().leftOut());
		assertEquals(List.of(), line.problems());
	}

	/**
	 * The characters by which the longest that was seen falls short of the list. HDT and HDM have no heading, GSV no satellites, VDR
	 * no current, VHW no heading, MWD no direction, ZDA no date but the year, WCV and XTE no waypoint: their fields are empty. GLL and VWT have fewer
	 * digits. Nothing is longer than the list has it.
	 */
	@Test
	void whatDiffersIsFieldsThatAreEmptyAndDigitsThatAreFewer() {
		Map<String, Integer> shorter = new TreeMap<>();
		predicted().load().counted().forEach(each -> {
			String formatter = each.sentence().sentence().formatter();
			int longest = byFormatter.get(formatter).stream().mapToInt(Recorded::characters).max().orElseThrow();
			shorter.put(formatter, each.characters() - longest);
		});
		assertEquals(Map.ofEntries(Map.entry("DBT", 0), Map.entry("GLL", 2), Map.entry("GSV", 42), Map.entry("HDM", 7), Map.entry("HDT", 7),
				Map.entry("MWD", 5), Map.entry("MWV", 0), Map.entry("VDR", 13), Map.entry("VHW", 6), Map.entry("VPW", 0), Map.entry("VTG", 0),
				Map.entry("VWT", 5), Map.entry("WCV", 0), Map.entry("XTE", 2), Map.entry("ZDA", 13)), shorter);
	}

	/** With the lengths that were seen, what is predicted is what was counted. */
	@Test
	void withTheLengthsThatWereSeenThePredictionIsTheCount() {
		double predicted = SerialLoad.of(byFormatter.entrySet().stream().flatMap(entry -> entry.getValue().stream()
				.collect(Collectors.groupingBy(Recorded::characters, Collectors.counting())).entrySet().stream()
				.map(length -> SerialText.regular(entry.getKey(), length.getKey(), seconds / length.getValue()))).toList()).regular().perSecond();
		assertEquals(recording.stream().mapToLong(Recorded::characters).sum(), predicted * seconds, 1e-3);
	}

	/** A talker as a catalog would state it, with the intervals of the recording to a tenth of a millisecond. */
	private static SerialLineFigures predicted() {
		StringBuilder text = new StringBuilder("catalog Seen \"Invented\" {");
		StringBuilder sends = new StringBuilder();
		NOT_LISTED.forEach((formatter, length) -> text.append(" sentence ").append(formatter).append(" { length ").append(length).append(" characters }"));
		byFormatter.forEach((formatter, all) -> sends.append("; sends ").append(formatter).append(" every ")
				.append(Math.round(seconds / all.size() * 1e4) / 10.0).append(" ms by out"));
		return SerialLineFigures.of(SerialText.boat(text + "}\n", "mixer : line out : talker, 4800 baud" + sends + "\ndial : line in1 : listener",
				"serial first { from mixer.out; to dial.in1 }")).get(0);
	}
}
