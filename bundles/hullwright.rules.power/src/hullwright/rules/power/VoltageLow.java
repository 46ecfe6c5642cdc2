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
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/**
 * A device gets less than it works from: with the bank nearly empty and the wire hot, while a bank dips, or when all is switched on
 * at once. Told once for a stretch of supply conductor, at the device that is worst off.
 */
public final class VoltageLow implements BoatRule {

	private static final String SOURCE = "published range of the network supply at every device, 9 to 16 V (N2-F, N2-H, N2-I); the catalog's figure decides";
	private static final Parameter MARGIN = new Parameter("margin", new Voltage(0), "how far above its lowest voltage every device is to stay", "none is published");

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/voltage-low", "Voltage too low", Severity.ERROR,
				"{device} gets {voltage} {when}; it works from {limit}{others}", SOURCE).with(MARGIN)
				.silencedBy("power/no-supply", "power/section-without-supply", "power/cannot-be-fed");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Voltage margin = boat.parameter("margin", Voltage.class);
		Map<String, Finding> findings = new LinkedHashMap<>();
		add(boat, findings, StateFlow.lowest(boat), margin, "with the bank nearly empty", false);
		add(boat, findings, StateFlow.dipping(boat), margin, "while a bank dips", true);
		add(boat, findings, StateFlow.starting(boat), margin, "when all is switched on at once", true);
		return List.copyOf(new LinkedHashSet<>(findings.values()));
	}

	/** What a worse case has told already is not told again of a milder one. */
	private static void add(BoatUnderCheck boat, Map<String, Finding> findings, List<StateFlow> flows, Voltage margin, String when, boolean passing) {
		PlacesInText places = new PlacesInText(boat.boat());
		for (WorstDevice worst : WorstDevice.of(flows, NetworkRange::aboveLowest, margin)) {
			if (worst.affected().stream().noneMatch(findings::containsKey)) {
				DeviceReading reading = worst.reading();
				Origin device = places.of(reading.device());
				Finding.Builder finding = passing ? boat.warning(device) : boat.finding(device);
				Finding told = finding
						.key(passing ? "passing" : "")
						.value("device", device.simpleName())
						.value("voltage", reading.voltage())
						.value("when", when + StateFlow.words(worst.state()))
						.value("limit", reading.voltage().minus(NetworkRange.aboveLowest(reading)))
						.value("others", worst.others() == 0 ? "" : "; " + worst.others() + " more on this feed")
						.covers(worst.affected())
						.build();
				worst.affected().forEach(each -> findings.put(each, told));
			}
		}
	}
}
