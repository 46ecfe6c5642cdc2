/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * More than one thing is plugged into one port: of a tee, or of a device.
 */
public final class PortUsedTwice implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/port-used-twice", "Port used twice", Severity.ERROR,
				"{users} are plugged into port {port}, which takes one",
				"common practice: one plug goes into one port");
	}

	/** One thing that is plugged in somewhere: into a part of a network, or into a device. */
	private record Plugged(String label, Origin origin, Optional<Network> ofPart) {
	}

	/** A port of a part or of a device. */
	private record Port(String owner, String name) {

		String label() {
			return Origin.nowhere(owner).simpleName() + "." + name;
		}
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Map<Port, List<Plugged>> used = new LinkedHashMap<>();
		for (Network network : boat.boat().networks()) {
			PortClaim.of(network).forEach(claim -> claim.port().port()
					.ifPresent(number -> note(used, new Port(claim.port().part(), String.valueOf(number)), new Plugged(claim.kind(), claim.origin(), Optional.of(network)))));
			network.drops().forEach(drop -> drop.device().ifPresent(device -> drop.devicePort()
					.or(() -> device.model().ports().keySet().stream().findFirst())
					.ifPresent(port -> note(used, new Port(device.name(), port),
							new Plugged("drop from " + new Port(drop.from().part(), drop.from().port().map(String::valueOf).orElse("")).label(), drop.origin(),
									Optional.empty())))));
		}
		List<Finding> findings = new ArrayList<>();
		used.forEach((port, plugged) -> {
			if (plugged.size() > 1) {
				Plugged last = plugged.get(plugged.size() - 1);
				Finding.Builder finding = boat.finding(Origin.nowhere(port.owner()).shownAt(last.origin())).key("port " + port.name())
						.value("users", plugged.stream().map(Plugged::label).collect(Collectors.joining(" and ")))
						.value("port", port.label());
				last.ofPart().flatMap(network -> FreePort.like(boat, network, port.owner(), Integer.parseInt(port.name())))
						.ifPresent(free -> finding.fix(FreePort.fix(last.origin(), port.label(), free)));
				findings.add(finding.build());
			}
		});
		return findings;
	}

	private static void note(Map<Port, List<Plugged>> used, Port port, Plugged plugged) {
		used.computeIfAbsent(port, none -> new ArrayList<>()).add(plugged);
	}
}
