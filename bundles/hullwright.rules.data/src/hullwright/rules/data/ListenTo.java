/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.network.Origin;
import hullwright.network.data.MessageUse;
import hullwright.rules.edit.EditIntent;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetProperty;
import java.util.Collection;
import java.util.List;

/**
 * Sets whom a device listens to.
 */
final class ListenTo {

	private ListenTo() {
	}

	/** One fix for each source, by their qualified names: the device takes all these messages from it. */
	static List<Fix> oneOf(Collection<String> sources, Origin device, Collection<MessageUse> uses) {
		return sources.stream().distinct().map(source -> to(source, device, uses)).toList();
	}

	private static Fix to(String source, Origin device, Collection<MessageUse> uses) {
		String name = seenFrom(device.element(), source);
		return new Fix("Let " + device.simpleName() + " take it from " + name, Fix.Reach.DESIGN,
				uses.stream().distinct().<EditIntent>map(use -> new SetProperty(device, "takes " + use, "from " + name)).toList());
	}

	/** How the text names a device where another one is described: without what both their qualified names begin with. */
	private static String seenFrom(String device, String other) {
		int begin = 0;
		for (int dot = other.indexOf('.'); dot >= 0 && device.startsWith(other.substring(0, dot + 1)); dot = other.indexOf('.', dot + 1)) {
			begin = dot + 1;
		}
		return other.substring(begin);
	}
}
