/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import hullwright.analysis.Figures;
import hullwright.network.Boat;
import hullwright.report.figures.FiguresJson;
import hullwright.report.figures.FiguresText;
import hullwright.report.figures.ProjectFigures;
import hullwright.testkit.BoatText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What people and programs read of serial lines that have most of the faults there are.
 */
class SerialReportTest {

	private static final Boat BOAT = BoatText.boat("""
			import "standard:messages"
			import "standard:serial"
			catalog Kit "Invented" {
			  device fast { line out : talker, differential, 4800 baud or 38400 baud; sends HDG every 50 ms by out; sends VDM on event by out
			    own supply, isolated, draws 0.1 A; supply 9 V .. 16 V }
			}
			series Skerry "Invented" {
			  device position : serialPositionReceiver
			  device ais : serialAisReceiver
			  device log : serialPaddleLog
			  device radio : serialVhfRadio
			  device mixer : multiplexer
			  device computer : computerPort
			  device heading : fast
			  device other : fast
			  device compass : fluxgateCompass
			  device paper : noticePrinter
			  device dial : serialRepeater
			  device repeater : headingRepeater
			  serial crossed at 4800 baud { from position.out, log.out; to mixer.in1 }
			  serial traffic { from ais.out; to mixer.in4; earths shield }
			  serial mixed at 4800 baud { from mixer.out; to dial.in1, paper.in1, computer.com }
			  serial open { from heading.out; to repeater.in1 }
			  serial full at 4800 baud { from other.out; to mixer.in2, mixer.in3 }
			  serial again { from ais.pc; to computer.com }
			  serial circle { from compass.out; to compass.out }
			  serial calls { from radio.out; to paper.in1 }
			}
			""");

	private static List<ProjectFigures> figures() {
		return List.of(new ProjectFigures("boat", List.of(new Figures(BOAT)), List.of(), List.of(), false));
	}

	private static String text() {
		return FiguresText.of(figures(), true);
	}

	private static JsonObject json() {
		return JsonParser.parseString(FiguresJson.of(figures())).getAsJsonObject();
	}

	private static void assertTold(String words) {
		String read = text().replaceAll("\\s+", " ");
		assertTrue(read.contains(words), words + " in " + read);
	}

	@Test
	void eachFaultIsToldOnce() {
		List<String> faults = text().lines().filter(line -> line.startsWith("  serial line")).map(line -> line.strip().split(":")[0]).toList();
		assertEquals(List.of("serial line crossed", "serial line mixed", "serial line open", "serial line full", "serial line again", "serial line circle", "serial line calls"),
				faults);
		assertFalse(figures().get(0).isComplete());
	}

	@Test
	void peopleReadTheLoadAndWhatItLeavesOut() {
		assertTold("full 4800 bit/s 480 500 104 % 104 % -24 % 500 no bound");
		assertTold("circle 4800 bit/s 480 146 30 % 30 % 50 % 146 96 ms");
		assertTold("3675 characters a second: 96 % of traffic, 766 % of mixed (too slow), 766 % of full (too slow), 96 % of again.");
		assertTold("Not counted, since events tell it and nothing says how often at most: ALR on traffic, ALR on mixed, VDM on mixed, VDM on open");
	}

	@Test
	void peopleReadHowEndsGoTogether() {
		assertTold("crossed position.out 1 3 2 mA do not fit joined");
		assertTold("traffic ais.out 1 2 2 mA fit apart earthed");
		assertTold("Two outputs drive against each other: position.out to log.out.");
		assertTold("No standard covers A into an RS-232 input; it often works, 0 and 5 V against thresholds of 3 V: mixer.out to paper.in1");
		assertTold("Nothing says how many listeners the talker drives: heading.out, other.out.");
		assertTold("A listener draws 2 mA at 2 V: computer.com, paper.in1.");
	}

	@Test
	void peopleReadWhatADevicePassesOn() {
		assertTold("mixer.out mixed 480 4249 885 % never no bound");
		assertTold("More is told than goes out of mixer.out: without a filter sentences are lost.");
	}

	@Test
	void noLineIsWiderThanAPage() {
		text().lines().forEach(line -> assertTrue(line.length() <= 110, line));
	}

	@Test
	void programsReadTheSameAfterTheSchema() throws IOException {
		String schema = Files.readString(Path.of("..", "hullwright.report", "schema", "figures-1.schema.json"));
		String json = FiguresJson.of(figures());
		Set<String> violations = JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(schema).validate(json, InputFormat.JSON).stream()
				.map(Object::toString).collect(Collectors.toSet());
		assertEquals(Set.of(), violations);
		JsonArray lines = json().getAsJsonArray("projects").get(0).getAsJsonObject().getAsJsonArray("boats").get(0).getAsJsonObject()
				.getAsJsonArray("serialLines");
		JsonObject circle = named(lines, "Skerry.circle");
		assertEquals(480, circle.getAsJsonObject("use").get("carries_char_per_s").getAsDouble());
		assertEquals(46 / 480.0, circle.get("longest_s").getAsDouble(), 1e-9);
		assertEquals("overload", named(lines, "Skerry.full").get("noBound").getAsString());
		assertEquals("[4800.0,38400.0]", named(lines, "Skerry.open").getAsJsonArray("problems").get(0).getAsJsonObject().get("candidates_bit_per_s").toString());
	}

	private static JsonObject named(JsonArray lines, String name) {
		for (JsonElement line : lines) {
			if (line.getAsJsonObject().get("line").getAsString().equals(name)) {
				return line.getAsJsonObject();
			}
		}
		throw new AssertionError(name);
	}
}
