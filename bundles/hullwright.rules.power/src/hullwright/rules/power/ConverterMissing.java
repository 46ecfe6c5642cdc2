/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.DeviceReading;
import hullwright.analysis.power.SectionReading;
import hullwright.network.PlacesInText;
import hullwright.network.power.Converter;
import hullwright.quantity.Voltage;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetProperty;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A bank of a higher voltage feeds a network of 12 V devices without a converter in between.
 */
public final class ConverterMissing implements BoatRule {

	private static final Voltage TWELVE_VOLT_DEVICES = new Voltage(16);

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/converter-missing", "Converter missing", Severity.ERROR,
				"{supply} brings {voltage} into the network; devices on it that bear no more than {limit}: {devices}",
				"owner's manual of a control system (N2-J), p. 30, and display maker's pages (N2-B): a 24 V craft needs a converter or a 12 V bank");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		Map<String, Finding> findings = new LinkedHashMap<>();
		for (StateFlow each : StateFlow.highest(boat)) {
			Map<String, DeviceReading> readings = each.flow().devices().stream().collect(Collectors.toMap(DeviceReading::device, reading -> reading, (one, other) -> one));
			for (SectionReading section : each.flow().sections()) {
				List<DeviceReading> burnt = section.devices().stream().map(readings::get)
						.filter(device -> device != null && device.fed() && NetworkRange.belowHighest(device).si() < 0).toList();
				section.supplies().stream().distinct()
						.filter(supply -> !burnt.isEmpty() && SourceChain.of(boat.boat(), supply).converters().isEmpty())
						.filter(supply -> section.highest().filter(voltage -> voltage.exceeds(TWELVE_VOLT_DEVICES)).isPresent())
						.forEach(supply -> findings.putIfAbsent(supply, finding(boat, places, supply, section, burnt)));
			}
		}
		return List.copyOf(findings.values());
	}

	private static Finding finding(BoatUnderCheck boat, PlacesInText places, String supply, SectionReading section, List<DeviceReading> burnt) {
		Voltage limit = burnt.stream().map(device -> device.voltage().plus(NetworkRange.belowHighest(device))).max(Comparator.naturalOrder()).orElseThrow();
		Finding.Builder finding = boat.finding(places.of(supply));
		boat.boat().power().converters().stream().map(Converter::name).map(ShortName::of)
				.forEach(converter -> finding.fix(new Fix("Feed " + ShortName.of(supply) + " from " + converter, Fix.Reach.DESIGN,
						List.of(new SetProperty(places.of(supply), "from", converter)))));
		return finding
				.value("supply", ShortName.of(supply))
				.value("voltage", section.highest().orElseThrow())
				.value("devices", burnt.size())
				.value("limit", limit)
				.covers(burnt.stream().map(DeviceReading::device).toList())
				.build();
	}
}
