/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.DeviceReading;
import hullwright.network.PlacesInText;
import hullwright.quantity.Current;
import hullwright.rules.Band;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A device may draw more from the network than one device is allowed: what it is guaranteed not to exceed counts.
 */
public final class DeviceOverOneAmpere implements BoatRule {

	private static final Band LIMIT = new Band(Severity.WARNING, new Current(1),
			"public article of a gateway maker (N2-F) and cable maker's FAQ: 1 A at most; above it a supply of its own, isolated");

	@Override
	public RuleDescription description() {
		return RuleDescription.banded("power/device-over-one-ampere", "Device draws too much from the network",
				"{device} draws {current} from the network; one device may draw {limit}", LIMIT);
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		List<Finding> findings = new ArrayList<>();
		Set<String> told = new HashSet<>();
		for (StateFlow each : StateFlow.lowest(boat)) {
			for (DeviceReading device : each.flow().devices()) {
				boat.bandOf(device.current()).filter(band -> told.add(device.device())).ifPresent(band -> findings.add(boat.finding(places.of(device.device()), band)
						.value("device", ShortName.of(device.device()))
						.value("current", device.current())
						.build()));
			}
		}
		return findings;
	}
}
