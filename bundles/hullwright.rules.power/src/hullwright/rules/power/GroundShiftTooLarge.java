/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.GroundShift;
import hullwright.network.Boat;
import hullwright.network.PlacesInText;
import hullwright.quantity.Voltage;
import hullwright.rules.Band;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The returns of two devices lie so far apart that one may not understand the other.
 */
public final class GroundShiftTooLarge implements BoatRule {

	private static final String SOURCE = "ISO 11898-2: receivers bear -2 to +7 V (from memory); a network meter warns at the same levels (N2-Q)";
	private static final Band LIMIT = new Band(Severity.ERROR, new Voltage(2), SOURCE);

	@Override
	public RuleDescription description() {
		return RuleDescription.banded("power/ground-shift", "Ground shift", "the returns of {higher} and {lower} lie {shift} apart; the limit is {limit}{cause}", LIMIT)
				.silencedBy("power/cannot-be-fed");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		Map<String, GroundShift.Pair> worst = new LinkedHashMap<>();
		for (StateFlow each : StateFlow.lowest(boat)) {
			each.flow().shifts().forEach(shift -> shift.worst().ifPresent(pair -> worst.merge(shift.network(), pair,
					(known, next) -> next.shift().exceeds(known.shift()) ? next : known)));
		}
		List<Finding> findings = new ArrayList<>();
		worst.values().forEach(pair -> boat.bandOf(pair.shift()).ifPresent(band -> findings.add(boat.finding(places.of(pair.higher()), band)
				.value("higher", ShortName.of(pair.higher()))
				.value("lower", ShortName.of(pair.lower()))
				.value("shift", pair.shift())
				.value("cause", cause(boat.boat(), pair))
				.build())));
		return findings;
	}

	private static String cause(Boat boat, GroundShift.Pair pair) {
		return boat.fittedDevices().stream()
				.filter(device -> device.name().equals(pair.higher()) || device.name().equals(pair.lower()))
				.filter(device -> device.model().power().ownSupply().filter(supply -> !supply.isolated()).isPresent())
				.findFirst()
				.map(device -> "; " + ShortName.of(device.name()) + " has a supply of its own that is not isolated")
				.orElse("; the current of all loads flows back through thin or long cable");
	}
}
