/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import hullwright.network.DevicePortRef;
import hullwright.network.part.SerialPort;
import hullwright.quantity.Current;
import hullwright.quantity.Voltage;

/**
 * Whether a talker can drive its listeners.
 *
 * @param talker the talker
 * @param listeners how many listen, on all lines that start at it
 * @param drawn what they draw together at 2 V
 * @param drive the current that the talker can drive, if the catalog says
 * @param drivesListeners how many listeners it can drive, if the catalog says
 * @param pointToPoint whether the talker and all of them signal by RS-232, which is made for one output and one input (from memory)
 */
public record TalkerDrive(DevicePortRef talker, int listeners, Current drawn, Optional<Current> drive, Optional<Integer> drivesListeners,
		boolean pointToPoint) {

	/** What a listener draws at most, at 2 V (radio manuals, sections 9.3 and 9.4 on the digital interface). */
	public static final Current LISTENER_DRAWS = new Current(0.002);

	/** The voltage at which it draws that. */
	public static final Voltage LISTENER_DRAWS_AT = new Voltage(2);

	static TalkerDrive of(LineEnd talker, List<LineEnd> listeners) {
		Current drawn = listeners.stream().map(each -> each.serial().draws().orElse(LISTENER_DRAWS)).reduce(new Current(0), Current::plus);
		return new TalkerDrive(talker.port(), listeners.size(), drawn, talker.serial().drive(), talker.serial().drivesListeners(),
				Stream.concat(Stream.of(talker), listeners.stream()).allMatch(each -> each.serial().level() == SerialPort.Level.RS232));
	}

	/** What is left of the current; negative if more is drawn. None if no current is stated. */
	public Optional<Current> currentLeft() {
		return drive.map(each -> each.minus(drawn));
	}

	/** How many more listeners it can drive; negative if too many listen. None if no number is stated. */
	public Optional<Integer> listenersLeft() {
		return drivesListeners.map(each -> each - listeners);
	}

	/** Whether nothing says if it drives them; none, or one RS-232 input on an RS-232 output, needs no saying. */
	public boolean isOpen() {
		return suffices().isEmpty() && listeners > 0 && !(pointToPoint && listeners == 1);
	}

	/** Whether it drives them by all that is stated; none if nothing is. */
	public Optional<Boolean> suffices() {
		if (drive.isEmpty() && drivesListeners.isEmpty()) {
			return Optional.empty();
		}
		return Optional.of(drive.map(each -> !drawn.exceeds(each)).orElse(true) && listenersLeft().map(each -> each >= 0).orElse(true));
	}
}
