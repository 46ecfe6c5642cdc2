/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.completion;

import hullwright.network.part.Part;
import hullwright.network.part.Tee;
import hullwright.resolve.OpenEnd;
import hullwright.spec.DataNetwork;
import hullwright.spec.Drop;
import hullwright.spec.HullChange;
import hullwright.spec.PortHolder;
import hullwright.spec.PortReference;
import hullwright.spec.Series;
import hullwright.spec.WhenElements;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * The ports of a part on which nothing hangs yet.
 */
final class FreePorts {

	private FreePorts() {
	}

	/**
	 * The free ports with what is to be said of each: nothing if it is free on all boats, else when it is taken.
	 *
	 * @param written the reference that is being written, which does not count itself
	 */
	static Map<Integer, String> of(PortReference written, OpenEnd ends) {
		PortHolder holder = written.getPart();
		Part part = holder == null || holder.eIsProxy() ? null : ends.part(holder.getType()).orElse(null);
		Map<Integer, String> free = new TreeMap<>();
		if (!(part instanceof Tee tee)) {
			return free;
		}
		tee.ports().forEach((port, connector) -> free.put(port, connector.map(Object::toString).orElse("")));
		TreeSet<Integer> taken = new TreeSet<>();
		for (PortReference other : others(written)) {
			if (other.getPart() == holder && other.getPort() != null) {
				String condition = condition(other);
				if (condition.isEmpty()) {
					taken.add(other.getPort());
				} else {
					free.computeIfPresent(other.getPort(), (port, said) -> said + ", taken when " + condition);
				}
			}
		}
		free.keySet().removeAll(taken);
		return free;
	}

	/** Those of the network, and in a hull those that it adds. What other hulls add hangs on other boats. */
	private static List<PortReference> others(PortReference written) {
		HullChange change = EcoreUtil2.getContainerOfType(written, HullChange.class);
		DataNetwork network = change != null ? change.getNetwork() : EcoreUtil2.getContainerOfType(written, DataNetwork.class);
		List<PortReference> others = new ArrayList<>();
		if (network != null) {
			others.addAll(EcoreUtil2.getAllContentsOfType(network, PortReference.class));
		}
		if (change != null) {
			others.addAll(EcoreUtil2.getAllContentsOfType(change.eContainer(), PortReference.class));
		}
		others.remove(written);
		return others;
	}

	private static String condition(PortReference other) {
		for (EObject up = other.eContainer(); up != null && !(up instanceof Series); up = up.eContainer()) {
			EObject condition = up instanceof WhenElements block ? block.getCondition()
					: up instanceof Drop drop && !drop.isPrepared() ? drop.getCondition() : null;
			if (condition != null) {
				return NodeModelUtils.getTokenText(NodeModelUtils.findActualNodeFor(condition));
			}
		}
		return "";
	}
}
