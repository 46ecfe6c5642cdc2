/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import hullwright.analysis.serial.SentenceOnLine;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.network.Boat;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Sentence;
import hullwright.network.data.Timing;
import hullwright.quantity.Duration;
import hullwright.testkit.BoatText;

/**
 * Boats of a few invented devices and one serial line, and sentences without any boat.
 */
final class SerialText {

	private static final String FEED = " supply 9 V .. 16 V; own supply, isolated, draws 0.1 A ";

	private SerialText() {
	}

	/** Like the other, with no catalog of its own. */
	static Boat boat(String devices, String items) {
		return boat("", devices, items);
	}

	/**
	 * A boat with devices named as their kinds in small letters, and what stands beside them.
	 *
	 * @param catalog what goes before
	 * @param devices one line for each: its name, a colon, and what its catalog says
	 */
	static Boat boat(String catalog, String devices, String items) {
		StringBuilder text = new StringBuilder("import \"standard:messages\"\n" + catalog + "catalog Kit \"Invented\" {\n");
		StringBuilder fitted = new StringBuilder();
		for (String line : devices.lines().filter(each -> !each.isBlank()).toList()) {
			String name = line.substring(0, line.indexOf(':')).strip();
			text.append("device ").append(name).append("Kind {").append(FEED).append("; ").append(line.substring(line.indexOf(':') + 1)).append(" }\n");
			fitted.append("device ").append(name).append(" : ").append(name).append("Kind\n");
		}
		return BoatText.boat(text + "}\nseries Skerry \"Invented\" {\n" + fitted + items + "\n}\n");
	}

	/** The figures of the one line between such devices. */
	static SerialLineFigures line(String devices, String line) {
		List<SerialLineFigures> lines = SerialLineFigures.of(boat(devices, "serial first " + line));
		if (lines.size() != 1) {
			throw new AssertionError("one line is expected: " + lines);
		}
		return lines.get(0);
	}

	/** A regular sentence of so many characters, once in so many seconds. */
	static SentenceOnLine regular(String formatter, int characters, double seconds) {
		return sentence(formatter, characters, Timing.every(new Duration(seconds)));
	}

	/** A sentence that events tell, with so many seconds between two of them at least. */
	static SentenceOnLine event(String formatter, int characters, double apart) {
		return sentence(formatter, characters, new Timing(Optional.empty(), true, Optional.of(new Duration(apart))));
	}

	static SentenceOnLine sentence(String formatter, int characters, Timing timing) {
		return new SentenceOnLine("Skerry.log", new MessageUse(new Sentence(formatter, "", characters, timing), Optional.empty()), timing);
	}

	/** The figures of a line of 4800 bit/s or another rate, from a talker that drives what the standard asks to a listener. */
	static SerialLineFigures carrying(int baud, SentenceOnLine... sentences) {
		return carrying(baud, Arrays.asList(sentences));
	}

	static SerialLineFigures carrying(int baud, List<SentenceOnLine> sentences) {
		Boat boat = boat("""
				log : line out : talker, differential
				dial : line in1 : listener, isolated, draws 2 mA, buffers 2 s
				""", "serial first at " + baud + " baud { from log.out; to dial.in1 }");
		return SerialLineFigures.of(boat.serialLines().get(0), boat, sentences);
	}
}
