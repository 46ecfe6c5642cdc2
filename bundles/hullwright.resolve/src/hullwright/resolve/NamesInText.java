/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import org.eclipse.emf.ecore.EObject;

import hullwright.spec.DataNetwork;
import hullwright.spec.Device;
import hullwright.spec.HullChange;
import hullwright.spec.PowerSource;
import hullwright.spec.Series;

/**
 * The qualified names of things on board: the series, the network if they belong to one, and their own.
 */
final class NamesInText {

	private final String series;

	NamesInText(Series series) {
		this.series = series.getName();
	}

	String of(Device device) {
		return owner(device) + "." + device.getName();
	}

	String of(PowerSource source) {
		return series + "." + source.getName();
	}

	String of(DataNetwork network) {
		return series + "." + network.getName();
	}

	String ofSeries() {
		return series;
	}

	/** The name below the series of something that the series declares itself. */
	String ofOwn(String name) {
		return series + "." + name;
	}

	/** The qualified name of what an element belongs to: its network, or the series. */
	String owner(EObject element) {
		for (EObject up = element.eContainer(); up != null; up = up.eContainer()) {
			if (up instanceof DataNetwork network) {
				return of(network);
			} else if (up instanceof HullChange change && change.getNetwork() != null) {
				return of(change.getNetwork());
			}
		}
		return series;
	}
}
