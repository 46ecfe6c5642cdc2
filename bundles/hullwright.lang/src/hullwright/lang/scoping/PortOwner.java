/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.scoping;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.EcoreUtil2;

import hullwright.spec.Device;
import hullwright.spec.DeviceType;
import hullwright.spec.Drop;
import hullwright.spec.PortOfDevice;
import hullwright.spec.SpecPackage;

/**
 * Whose port the name of a port means.
 */
public final class PortOwner {

	private PortOwner() {
	}

	/** The device on board whose port is named; null in a catalog, and where the text does not say which device. */
	public static Device device(EObject context, EReference reference) {
		if (reference == SpecPackage.Literals.DROP__TARGET_PORT) {
			return ((Drop) context).getTarget();
		}
		return context instanceof PortOfDevice end ? end.getDevice() : EcoreUtil2.getContainerOfType(context, Device.class);
	}

	/** The catalog entry that has the port; null if the text does not say, a proxy if it says something unknown. */
	public static DeviceType type(EObject context, EReference reference) {
		Device device = device(context, reference);
		return device == null ? EcoreUtil2.getContainerOfType(context, DeviceType.class) : device.getType();
	}
}
