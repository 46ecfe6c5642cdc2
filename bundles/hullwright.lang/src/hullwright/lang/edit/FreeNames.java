/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.spec.BackboneItem;
import hullwright.spec.DataNetwork;
import hullwright.spec.Device;
import hullwright.spec.Named;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;

/**
 * Names for new parts and devices of a network.
 */
final class FreeNames {

	private FreeNames() {
	}

	/** The wished name, with a number behind it if it is taken in the network that an element is in. */
	static String like(String wished, EObject element) {
		DataNetwork network = EcoreUtil2.getContainerOfType(element, DataNetwork.class);
		Set<String> taken = new HashSet<>();
		Stream.concat(EcoreUtil2.getAllContentsOfType(network, BackboneItem.class).stream(),
				EcoreUtil2.getAllContentsOfType(network, Device.class).stream()).map(Named::getName).forEach(taken::add);
		String name = wished;
		for (int number = 2; taken.contains(name); number++) {
			name = wished + number;
		}
		return name;
	}
}
