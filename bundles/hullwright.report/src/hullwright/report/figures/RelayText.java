/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.serial.SerialRelay;
import hullwright.quantity.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * The devices that pass sentences on from serial lines to another.
 */
final class RelayText {

	private final List<SerialRelay> relays;
	private final Wording wording;

	RelayText(List<SerialRelay> relays, Wording wording) {
		this.relays = relays;
		this.wording = wording;
	}

	TextTable table() {
		TextTable table = new TextTable("Out of", "On line", ">Carries", ">Told", ">Used", "Drains", ">Holds at most");
		for (SerialRelay relay : relays) {
			table.row(output(relay), wording.name(relay.line()), Wording.number(relay.carries().perSecond(), 0), Wording.number(relay.told().perSecond(), 0),
					Wording.perCent(relay.share().fraction()), word(relay.drains()), relay.holds().map(each -> each + " char").orElse("no bound"));
		}
		return table;
	}

	private static String word(SerialRelay.Drains drains) {
		return switch (drains) {
		case ANYTHING -> "full inputs";
		case WHAT_IS_TOLD -> "what is told";
		case NEVER -> "never";
		};
	}

	List<String> notes() {
		List<String> notes = new ArrayList<>();
		for (SerialRelay relay : relays) {
			if (relay.drains() == SerialRelay.Drains.WHAT_IS_TOLD) {
				notes.add("More can come than goes out of " + output(relay) + ": what is not wanted there has to be filtered.");
			} else if (relay.drains() == SerialRelay.Drains.NEVER) {
				notes.add("More is told than goes out of " + output(relay) + ": without a filter sentences are lost.");
			}
			relay.inputs().stream().filter(each -> !each.bufferSuffices().orElse(true) && each.waiting().isPresent()).forEach(each -> notes.add("The buffer of "
					+ wording.name(relay.device() + "." + each.port()) + " holds " + time(each.buffer().orElseThrow()) + ", and " + time(each.waiting().get())
					+ " may have to wait for " + output(relay) + "."));
			if (!relay.complete()) {
				notes.add("More goes out of " + output(relay) + " than was counted: events without a least interval, or sentences of unknown length.");
			}
		}
		return notes;
	}

	private String output(SerialRelay relay) {
		return wording.name(relay.device() + "." + relay.output());
	}

	private static String time(Duration duration) {
		return Wording.time(duration);
	}
}
