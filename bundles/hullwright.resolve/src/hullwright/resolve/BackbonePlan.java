/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.Backbone;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Origin;

/**
 * A backbone with everything that some boat may have in it.
 *
 * @param name the qualified name
 * @param elements the elements in physical order, each with when it is fitted
 * @param devices the devices in it and behind its terminators, by qualified name
 * @param origin its place in the text
 */
record BackbonePlan(String name, List<WhenFitted<Element>> elements, Map<String, DevicePlan> devices, Origin origin) {

	/** The backbone of a boat: what is left out closes the gap, what stays is laid to mate. */
	Backbone on(Order order, HullPlan hull) {
		List<Element> fitted = new ArrayList<>(elements.size());
		for (WhenFitted<Element> element : hull.walk(elements)) {
			if (element.on(order)) {
				hull.changed(element.item()).map(each -> withDevice(each, hull)).ifPresent(fitted::add);
			}
		}
		return new Backbone(name, Laying.lay(fitted, Optional.empty(), Optional.empty()), origin);
	}

	private Element withDevice(Element element, HullPlan hull) {
		if (element instanceof Fitting fitting && fitting.details().device().isPresent()) {
			DevicePlan device = devices.get(fitting.details().device().get().name());
			return device == null ? element : fitting.with(hull.removes(device.usual().name()) ? Optional.empty() : Optional.of(hull.changed(device)));
		}
		return element;
	}
}
