/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Extent;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import java.util.Optional;

/**
 * What stands at the end of a line: a device, a port that is prepared for one, or a tee that hangs on a drop.
 */
final class Card {

	static final double WIDTH = 176;
	static final double HEIGHT = 50;

	/** The qualified name of what it stands for. */
	final String element;
	final Optional<FittedDevice> device;
	final Optional<Fitting> tee;
	final DrawnPlace place;
	/** The stack that it stands in. */
	CardStack stack;
	Extent extent = new Extent(0, 0, WIDTH, HEIGHT);
	/** How many lines end at its right side. */
	int ends;
	/** How many of these have found their place there. */
	int taken;

	private Card(String element, Optional<FittedDevice> device, Optional<Fitting> tee, DrawnPlace place) {
		this.element = element;
		this.device = device;
		this.tee = tee;
		this.place = place;
	}

	static Card of(FittedDevice device, DrawnPlace place) {
		return new Card(device.name(), Optional.of(device), Optional.empty(), place);
	}

	static Card of(Fitting tee, DrawnPlace place) {
		return new Card(tee.name(), Optional.empty(), Optional.of(tee), place);
	}

	static Card prepared(String drop, DrawnPlace place) {
		return new Card(drop, Optional.empty(), Optional.empty(), place);
	}
}
