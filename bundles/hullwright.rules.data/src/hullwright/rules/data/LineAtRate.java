/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.serial.SerialLineFigures;
import hullwright.quantity.BitRate;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetRate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Sets a serial line to a rate that all its ends have.
 */
final class LineAtRate {

	private LineAtRate() {
	}

	/** One fix for each such rate. */
	static List<Fix> shared(SerialLineFigures line) {
		return line.sharedRates().stream().map(rate -> fix(line, rate)).toList();
	}

	/** The next faster one, if there is any. */
	static Optional<Fix> faster(SerialLineFigures line) {
		return line.sharedRates().stream().filter(rate -> line.rate().rate().filter(rate::exceeds).isPresent()).min(Comparator.naturalOrder())
				.map(rate -> fix(line, rate));
	}

	private static Fix fix(SerialLineFigures line, BitRate rate) {
		return new Fix("Set the line to " + rate, Fix.Reach.DESIGN, List.of(new SetRate(line.line().origin(), rate)));
	}
}
