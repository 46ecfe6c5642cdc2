/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.Termination;
import hullwright.analysis.line.TerminatorPlace;
import hullwright.network.Backbone;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.Network;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A terminating resistor and the backbone that it is on.
 *
 * @param network the network
 * @param backbone the backbone
 * @param place where it sits
 * @param fitted how many there are on that backbone
 * @param openEnds how many ends of that backbone nothing terminates
 */
record FittedTerminator(Network network, Backbone backbone, TerminatorPlace place, int fitted, int openEnds) {

	/** Those of a boat, in the order of the text. */
	static List<FittedTerminator> of(BoatUnderCheck boat) {
		List<FittedTerminator> all = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Backbone backbone : network.backbones()) {
				Termination termination = boat.figures().terminationOf(network, backbone);
				int open = (termination.start().isEmpty() ? 1 : 0) + (termination.end().isEmpty() ? 1 : 0);
				List<TerminatorPlace> places = boat.figures().terminatorsOf(network, backbone);
				places.forEach(place -> all.add(new FittedTerminator(network, backbone, place, places.size(), open)));
			}
		}
		return all;
	}

	/** The drop that it is on, or whose device it is built into. */
	Optional<Drop> drop() {
		return network.drops().stream().filter(drop -> isOn(drop.legs())
				|| drop.device().filter(device -> device.origin().equals(place.origin())).isPresent()).findFirst();
	}

	/** The feed whose cord it is built into, or that it is on. */
	Optional<Feed> feed() {
		return network.feeds().stream().filter(feed -> isOn(feed.legs())).findFirst();
	}

	private boolean isOn(List<Element> legs) {
		return legs.stream().anyMatch(leg -> leg.origin().equals(place.origin()));
	}

	/** A finding about one that is not where it belongs. Where one end of its backbone is open, it speaks for that, too. */
	Finding.Builder finding(BoatUnderCheck boat) {
		Finding.Builder finding = boat.finding(place.origin()).value("part", PartWords.of(place));
		return openEnds == 1 ? finding.covers(List.of(backbone.name())) : finding;
	}
}
