/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.spec.BackbonePart;
import hullwright.spec.DataNetwork;
import hullwright.spec.DeviceType;
import hullwright.spec.DevicePort;
import hullwright.spec.End;
import hullwright.spec.PartType;
import hullwright.spec.PortGroup;
import hullwright.spec.PortReference;
import hullwright.spec.Series;
import hullwright.spec.TeeType;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;

/**
 * Ports of the tees of a network on which nothing hangs, on any boat of the series.
 */
final class FreePorts {

	private FreePorts() {
	}

	/**
	 * The first free port that takes a connector.
	 *
	 * @param near the tee to look at first, or null
	 * @return its name, such as {@code dash.3}
	 */
	static Optional<String> taking(End end, DataNetwork network, BackbonePart near) {
		Set<String> used = new HashSet<>();
		EObject series = EcoreUtil2.getContainerOfType(network, Series.class);
		for (PortReference reference : EcoreUtil2.getAllContentsOfType(series == null ? network : series, PortReference.class)) {
			if (reference.getPart() != null && reference.getPort() != null && EcoreUtil2.getContainerOfType(reference.getPart(), DataNetwork.class) == network) {
				used.add(reference.getPart().getName() + "." + reference.getPort());
			}
		}
		List<BackbonePart> tees = new ArrayList<>(EcoreUtil2.getAllContentsOfType(network, BackbonePart.class));
		tees.removeIf(part -> !(part.getType() instanceof TeeType));
		// first the one that the person looks at, then those that are on every boat
		tees.sort((one, other) -> Integer.compare(rank(one, near), rank(other, near)));
		for (BackbonePart tee : tees) {
			for (PortGroup group : ((TeeType) tee.getType()).getPorts()) {
				for (int port = group.getFirst(); port <= Math.max(group.getFirst(), group.getLast()); port++) {
					String name = tee.getName() + "." + port;
					if (mate(end, group.getEnd()) && !used.contains(name)) {
						return Optional.of(name);
					}
				}
			}
		}
		return Optional.empty();
	}

	private static int rank(BackbonePart tee, BackbonePart near) {
		return tee == near ? 0 : tee.getCondition() == null && tee.eContainer() == EcoreUtil2.getContainerOfType(tee, hullwright.spec.Backbone.class) ? 1 : 2;
	}

	/** Whether two ends plug into each other; of an end that nobody stated nothing is known. */
	static boolean mate(End one, End other) {
		return one == null || other == null || one.getFamily() == null || other.getFamily() == null
				|| String.valueOf(one.getFamily().getName()).equals(other.getFamily().getName()) && one.getGender() != other.getGender();
	}

	/** The end of a part that goes into a port, or null if it has none. */
	static End plug(PartType part, List<End> ends) {
		if (part instanceof DeviceType device) {
			if (device.getLead() != null) {
				return device.getLead().getEnd();
			}
			return device.getPorts().stream().filter(DevicePort.class::isInstance).map(port -> ((DevicePort) port).getEnd()).findFirst().orElse(null);
		}
		return ends.isEmpty() ? null : ends.get(0);
	}
}
