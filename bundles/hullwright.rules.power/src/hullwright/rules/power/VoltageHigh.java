/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.DeviceReading;
import hullwright.network.Origin;
import hullwright.network.PlacesInText;
import hullwright.quantity.Voltage;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A device gets more than it bears, with the bank being charged. Told once for a stretch of supply conductor.
 */
public final class VoltageHigh implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/voltage-high", "Voltage too high", Severity.ERROR,
				"{device} gets {voltage} while the bank is charged; it bears {limit}{others}",
				"published range of the network supply at every device, 9 to 16 V (N2-F, N2-H, N2-I); the catalog's figure decides")
				.silencedBy("power/converter-missing");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		List<Finding> findings = new ArrayList<>();
		for (WorstDevice worst : WorstDevice.of(StateFlow.highest(boat), NetworkRange::belowHighest, new Voltage(0))) {
			DeviceReading reading = worst.reading();
			Origin device = places.of(reading.device());
			findings.add(boat.finding(device)
					.value("device", device.simpleName())
					.value("voltage", reading.voltage())
					.value("limit", reading.voltage().plus(NetworkRange.belowHighest(reading)))
					.value("others", worst.others() == 0 ? "" : "; " + worst.others() + " more on this feed")
					.covers(worst.affected())
					.build());
		}
		return findings;
	}
}
