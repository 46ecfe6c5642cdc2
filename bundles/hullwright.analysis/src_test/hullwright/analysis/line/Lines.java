/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.network.Backbone;
import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Feed;
import hullwright.network.Fitting;
import hullwright.network.Origin;
import hullwright.network.PortRef;
import hullwright.network.part.Adapter;
import hullwright.network.part.Cable;
import hullwright.network.part.Cord;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.DevicePower;
import hullwright.network.part.Ends;
import hullwright.network.part.Part;
import hullwright.network.part.PartIdentity;
import hullwright.network.part.Tee;
import hullwright.network.part.Terminator;
import hullwright.quantity.Length;
import hullwright.quantity.Resistance;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Builds small lines for the tests, in the order of a walk.
 */
final class Lines {

	static final Cable LIGHT = cable("light", 100);
	static final Cable HEAVY = cable("heavy", 200);

	private Lines() {
	}

	private static PartIdentity named(String name) {
		return PartIdentity.named("Test", name);
	}

	private static Cable cable(String name, double longestBackbone) {
		return new Cable(named(name), Ends.NONE, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
				Optional.of(new Length(longestBackbone)), List.of());
	}

	static Element run(double metres, Cable cable) {
		return new CableRun("run", Optional.of(cable), new Length(metres), Optional.empty(), false, Origin.nowhere("run"));
	}

	private static Fitting fitting(String name, Part part) {
		return new Fitting(name, part, false, Fitting.Details.UNSTATED, Origin.nowhere(name));
	}

	static Element tee(String name) {
		return fitting(name, new Tee(named("tee"), Ends.NONE, Map.of()));
	}

	static Element terminator(String name) {
		return fitting(name, new Terminator(named("terminator"), Ends.NONE, false, Optional.empty()));
	}

	static Element adapter(double metres) {
		return fitting("adapter", new Adapter(named("adapter"), Ends.NONE, Optional.of(new Length(metres)), true, Optional.empty(), Optional.empty(),
				Optional.empty()));
	}

	static Backbone backbone(Element... elements) {
		return new Backbone("backbone", List.of(elements), Origin.nowhere("backbone"));
	}

	static Drop drop(String tee, double leadMetres, Element... legs) {
		DeviceModel model = DeviceModel.of(named("device"),
				leadMetres == 0 ? Optional.empty() : Optional.of(new DeviceModel.Lead(new Length(leadMetres), Optional.empty(), Optional.empty())),
				Map.of(), DevicePower.UNSTATED);
		return new Drop("device", new PortRef(tee, Optional.of(1)), List.of(legs),
				Optional.of(FittedDevice.of("device", model, Origin.nowhere("device"))), Optional.empty(), Origin.nowhere("device"));
	}

	static Feed terminatedFeed(String tee) {
		Cord cord = new Cord(named("cord"), Ends.NONE, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
				Optional.of(new Resistance(120)));
		return new Feed("feed", new PortRef(tee, Optional.of(1)), List.of(fitting("cord", cord)), List.of(), false, "", Origin.nowhere("feed"));
	}
}
