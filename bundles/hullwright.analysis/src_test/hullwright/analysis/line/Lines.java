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
import hullwright.network.Fitting;
import hullwright.network.Origin;
import hullwright.network.part.Adapter;
import hullwright.network.part.Cable;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Ends;
import hullwright.network.part.Part;
import hullwright.network.part.PartIdentity;
import hullwright.network.part.Tee;
import hullwright.network.part.Terminator;
import hullwright.quantity.Length;
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
		return new PartIdentity("Test", name, "", "", "");
	}

	private static Cable cable(String name, double longestBackbone) {
		return new Cable(named(name), Ends.NONE, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
				Optional.of(new Length(longestBackbone)), List.of());
	}

	static Element run(double metres, Cable cable) {
		return new CableRun("run", Optional.of(cable), new Length(metres), false, Origin.nowhere("run"));
	}

	private static Fitting fitting(String name, Part part) {
		return new Fitting(name, part, false, Optional.empty(), "", List.of(), false, Optional.empty(), Origin.nowhere(name));
	}

	static Element tee(String name) {
		return fitting(name, new Tee(named("tee"), Ends.NONE, Map.of()));
	}

	static Element terminator(String name) {
		return fitting(name, new Terminator(named("terminator"), Ends.NONE, false, Optional.empty()));
	}

	static Element adapter(double metres) {
		return fitting("adapter", new Adapter(named("adapter"), Ends.NONE, Optional.of(new Length(metres)), true, Optional.empty()));
	}

	static Backbone backbone(Element... elements) {
		return new Backbone("backbone", List.of(elements), Origin.nowhere("backbone"));
	}

	static Drop drop(String tee, double leadMetres, Element... legs) {
		DeviceModel model = new DeviceModel(named("device"),
				leadMetres == 0 ? Optional.empty() : Optional.of(new DeviceModel.Lead(new Length(leadMetres), Optional.empty())),
				Map.of(), false, false, Optional.empty(), Optional.empty(), Optional.empty());
		return new Drop("device", tee, 1, List.of(legs), Optional.of(new FittedDevice("device", model, Optional.empty(), "", Origin.nowhere("device"))),
				Origin.nowhere("device"));
	}
}
