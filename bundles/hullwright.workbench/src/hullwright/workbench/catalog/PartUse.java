/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.catalog;

import hullwright.network.part.Adapter;
import hullwright.network.part.Cable;
import hullwright.network.part.Cap;
import hullwright.network.part.Cord;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.FeedThrough;
import hullwright.network.part.FuseKind;
import hullwright.network.part.Isolator;
import hullwright.network.part.Part;
import hullwright.network.part.Tap;
import hullwright.network.part.Tee;
import hullwright.network.part.Terminator;
import java.util.Arrays;

/**
 * What a part is for, in the words of the trade.
 */
enum PartUse {
	DEVICE("Device", "Devices", DeviceModel.class),
	CABLE("Cable", "Cables", Cable.class),
	TEE("Tee or block", "Tees and blocks", Tee.class),
	TERMINATOR("Terminator", "Terminators", Terminator.class),
	TAP("Power tap", "Power taps", Tap.class),
	ISOLATOR("Isolator", "Isolators", Isolator.class),
	FEEDTHROUGH("Feed-through", "Bulkhead feed-throughs", FeedThrough.class),
	ADAPTER("Adapter", "Adapters", Adapter.class),
	CAP("Cap", "Caps", Cap.class),
	CORD("Supply cord", "Supply cords", Cord.class),
	FUSE("Fuse or breaker", "Fuses and breakers", FuseKind.class);

	private final String label;
	private final String plural;
	private final Class<? extends Part> kind;

	PartUse(String label, String plural, Class<? extends Part> kind) {
		this.label = label;
		this.plural = plural;
		this.kind = kind;
	}

	static PartUse of(Part part) {
		return Arrays.stream(values()).filter(use -> use.kind.isInstance(part)).findFirst().orElseThrow();
	}

	String label() {
		return label;
	}

	String plural() {
		return plural;
	}
}
