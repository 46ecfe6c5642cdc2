/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.traffic.DevicesOnNetwork;
import hullwright.network.FittedDevice;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.part.DeviceModel;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetProperty;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Devices of one kind on one network are set to the same device instance.
 */
public final class DeviceInstancesEqual implements BoatRule {

	/** What makes devices alike: the model and the number that is to tell them apart. */
	private record Alike(DeviceModel model, int instance) {
	}

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/device-instances-equal", "Like devices with one device instance", Severity.WARNING,
				"{devices} are of one kind and all have device instance {instance}",
				"glossary of the open NMEA 2000 library for C++ (PGN-B): the device instance tells like devices apart; unlike devices may share one");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			Map<Alike, List<FittedDevice>> alike = new LinkedHashMap<>();
			DevicesOnNetwork.of(network).all().forEach(device -> device.settings().deviceInstance()
					.ifPresent(instance -> alike.computeIfAbsent(new Alike(device.model(), instance), none -> new ArrayList<>()).add(device)));
			alike.forEach((what, devices) -> {
				if (devices.size() > 1) {
					List<String> names = devices.stream().map(FittedDevice::name).toList();
					Origin last = devices.get(devices.size() - 1).origin();
					int next = 1 + alike.keySet().stream().filter(each -> each.model().equals(what.model())).mapToInt(Alike::instance).max().orElseThrow();
					findings.add(boat.finding(last)
							.key(names.stream().limit(names.size() - 1).map(InWords::name).collect(Collectors.joining(" ")))
							.value("devices", InWords.names(names))
							.value("instance", what.instance())
							.fix(new Fix("Set " + last.simpleName() + " to device instance " + next, Fix.Reach.DESIGN,
									List.of(new SetProperty(last, "device instance", String.valueOf(next)))))
							.build());
				}
			});
		}
		return findings;
	}
}
