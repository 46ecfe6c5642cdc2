/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.DeviceReading;
import hullwright.network.power.PowerState;
import hullwright.quantity.Voltage;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The device of a stretch of supply conductor that is worst off.
 *
 * @param reading what it gets
 * @param state the power state in which it does, if the text declares states
 * @param others how many other devices of the stretch are badly off, too
 * @param affected the qualified names of all of them
 */
record WorstDevice(DeviceReading reading, Optional<PowerState> state, int others, Set<String> affected) {

	/**
	 * The worst device of each stretch, in the order of the text.
	 *
	 * @param flows the operating points to look at, with their states
	 * @param margin how far a device is from its limit
	 * @param needed the margin below which a device is badly off
	 */
	static List<WorstDevice> of(List<StateFlow> flows, Function<DeviceReading, Voltage> margin, Voltage needed) {
		Map<String, WorstDevice> worst = new LinkedHashMap<>();
		for (StateFlow flow : flows) {
			Map<String, String> sections = new LinkedHashMap<>();
			flow.flow().sections().forEach(section -> section.devices().forEach(device -> sections.put(device, section.devices().get(0))));
			for (DeviceReading reading : flow.flow().devices()) {
				if (reading.fed() && needed.exceeds(margin.apply(reading))) {
					worst.merge(sections.getOrDefault(reading.device(), reading.device()), new WorstDevice(reading, flow.state(), 0, Set.of(reading.device())),
							(known, next) -> known.with(next, margin));
				}
			}
		}
		return List.copyOf(worst.values());
	}

	private WorstDevice with(WorstDevice next, Function<DeviceReading, Voltage> margin) {
		Set<String> all = new LinkedHashSet<>(affected);
		all.addAll(next.affected);
		WorstDevice worse = margin.apply(next.reading).compareTo(margin.apply(reading)) < 0 ? next : this;
		return new WorstDevice(worse.reading, worse.state, all.size() - 1, all);
	}
}
