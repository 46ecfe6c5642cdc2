/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.analysis.line.TerminatorPlace.Where;
import hullwright.analysis.wiring.Branches;
import hullwright.network.Backbone;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.part.Cord;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.PartIdentity;
import hullwright.network.part.Terminator;
import hullwright.quantity.Resistance;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds every terminating resistor of a backbone. A resistor that is built into something on the last part closes that end; a second
 * one there does not.
 */
final class TerminatorPlaces {

	private final List<TerminatorPlace> found = new ArrayList<>();
	private final Set<String> openEnds = new HashSet<>();

	private TerminatorPlaces() {
	}

	static List<TerminatorPlace> of(Network network, Backbone backbone) {
		TerminatorPlaces places = new TerminatorPlaces();
		places.inWalk(backbone.elements());
		Branches branches = Branches.of(network);
		Set<String> walk = new HashSet<>();
		backbone.elements().forEach(element -> walk.add(element.name()));
		for (Drop drop : network.drops()) {
			if (walk.contains(branches.backbonePart(drop.from().part()))) {
				places.onPorts(drop.legs(), drop.from().part());
				drop.device().ifPresent(device -> device.model().terminates()
						.ifPresent(resistance -> places.builtIn(drop.from().part(), device.origin(), device.model().identity(), resistance)));
			}
		}
		for (Feed feed : network.feeds()) {
			if (walk.contains(branches.backbonePart(feed.from().part()))) {
				places.onPorts(feed.legs(), feed.from().part());
			}
		}
		return List.copyOf(places.found);
	}

	private void inWalk(List<Element> elements) {
		for (int at = 0; at < elements.size(); at++) {
			boolean end = at == 0 || at == elements.size() - 1;
			if (!(elements.get(at) instanceof Fitting fitting)) {
				continue;
			}
			Element beyond = end ? null : elements.get(isBehindTowardsStart(fitting, at, elements.size()) ? at - 1 : at + 1);
			if (fitting.part() instanceof Terminator terminator) {
				Where between = terminator.inLine() ? Where.IN_LINE_BETWEEN : Where.BETWEEN;
				found.add(new TerminatorPlace(fitting.origin(), fitting.part().identity(), terminator.resistance(), end ? Where.AT_END : between, Optional.ofNullable(beyond)));
			} else if (fitting.part() instanceof DeviceModel device && device.terminates().isPresent()) {
				found.add(new TerminatorPlace(fitting.origin(), fitting.part().identity(), device.terminates(), end ? Where.AT_END : Where.BETWEEN, Optional.ofNullable(beyond)));
			} else if (end) {
				openEnds.add(fitting.name());
			}
		}
	}

	/** One in line has its device on the side of its second connector; behind another is what there is less of. */
	private static boolean isBehindTowardsStart(Fitting fitting, int at, int parts) {
		return fitting.part() instanceof Terminator terminator && terminator.inLine() ? fitting.turned() : at < parts / 2;
	}

	private void onPorts(List<Element> legs, String from) {
		for (Element leg : legs) {
			if (leg instanceof Fitting fitting && fitting.part() instanceof Terminator terminator) {
				found.add(new TerminatorPlace(fitting.origin(), fitting.part().identity(), terminator.resistance(), Where.ON_PORT, Optional.empty()));
			} else if (leg instanceof Fitting fitting && fitting.part() instanceof Cord cord && cord.terminates().isPresent()) {
				builtIn(from, fitting.origin(), cord.identity(), cord.terminates().get());
			}
		}
	}

	private void builtIn(String from, Origin origin, PartIdentity part, Resistance resistance) {
		found.add(new TerminatorPlace(origin, part, Optional.of(resistance), openEnds.remove(from) ? Where.AT_END : Where.BUILT_IN, Optional.empty()));
	}
}
