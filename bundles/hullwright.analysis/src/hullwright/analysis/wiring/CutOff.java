/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import hullwright.network.FittedDevice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Devices that no supply reaches because a part between them and the supplies does not pass the supply conductor on.
 *
 * @param part the qualified name of that part
 * @param devices the devices that draw from the network, in the order of the text
 */
public record CutOff(String part, List<FittedDevice> devices) {

	public CutOff {
		devices = List.copyOf(devices);
	}

	/**
	 * What is cut off in a wiring, by parts at whose one side a supply enters and at whose other side none does. A power isolator
	 * is such a part, too, and so is an adapter that carries the data only.
	 */
	public static List<CutOff> of(Wiring wiring) {
		JoinedPoints joined = JoinedPoints.of(wiring, span -> wiring.spans().get(span).passes().supply());
		Set<Integer> fed = new HashSet<>();
		wiring.entries().forEach(entry -> fed.add(joined.first(entry.point())));
		Map<Integer, List<FittedDevice>> unfed = new HashMap<>();
		for (AttachedDevice attached : wiring.devices()) {
			int section = joined.first(attached.point());
			if (!fed.contains(section) && drawsFromNetwork(attached.device())) {
				unfed.computeIfAbsent(section, none -> new ArrayList<>()).add(attached.device());
			}
		}
		Map<String, Set<Integer>> behind = new HashMap<>();
		List<String> parts = new ArrayList<>();
		for (Span span : wiring.spans()) {
			int one = joined.first(span.from());
			int other = joined.first(span.to());
			if (!span.passes().supply() && fed.contains(one) != fed.contains(other)) {
				if (!behind.containsKey(span.element())) {
					parts.add(span.element());
				}
				behind.computeIfAbsent(span.element(), none -> new TreeSet<>()).add(fed.contains(one) ? other : one);
			}
		}
		return parts.stream()
				.map(part -> new CutOff(part, behind.get(part).stream().flatMap(section -> unfed.getOrDefault(section, List.of()).stream()).toList()))
				.filter(cut -> !cut.devices.isEmpty()).toList();
	}

	/** A device with a supply of its own that states no load draws nothing here; of any other something is assumed. */
	private static boolean drawsFromNetwork(FittedDevice device) {
		return device.model().power().load().isPresent() || device.model().power().ownSupply().isEmpty();
	}
}
