/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.ArrayList;
import java.util.List;

import hullwright.analysis.conductor.CopperConductor;
import hullwright.analysis.wiring.Branches;
import hullwright.network.Backbone;
import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.part.Cable;
import hullwright.network.part.Isolator;
import hullwright.network.part.Load;
import hullwright.network.part.Tap;
import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Voltage;

/**
 * The voltage drop by the simple formula of the trade, V = 0.1 · ΣLEN · L · R: every load of one side of the supply is taken at
 * the far end of the backbone there (public NMEA 2000 cabling guides; R is that of one conductor at 20 °C, 0.1 stands for two
 * conductors and 50 mA a LEN). It leaves out drops, contacts and the lead of the supply, and it is not made for a stretch that
 * two supplies feed.
 *
 * @param network the qualified name of the network
 * @param part the qualified name of the tap or feed that it starts from
 * @param towardsEnd whether the side towards the end of the backbone is meant, as the text tells it
 * @param load the sum of the rated loads on that side, in steps of 1 LEN each rounded up
 * @param length the length of the backbone on that side
 * @param drop the result
 */
public record SimpleDrop(String network, String part, boolean towardsEnd, Current load, Length length, Voltage drop) {

	/** One load equivalence number: 50 mA (public NMEA 2000 guides). */
	public static final Current LOAD_EQUIVALENCE = new Current(0.05);

	private static final double LEN = LOAD_EQUIVALENCE.amperes();

	/** The simple drops of a network, two for each place where a supply enters its backbones. */
	public static List<SimpleDrop> of(Network network) {
		Branches branches = Branches.of(network);
		List<SimpleDrop> drops = new ArrayList<>();
		for (Backbone backbone : network.backbones()) {
			for (int i = 0; i < backbone.elements().size(); i++) {
				Element element = backbone.elements().get(i);
				for (String part : entriesAt(network, element, branches)) {
					drops.add(side(network, backbone, i, -1, part, branches));
					drops.add(side(network, backbone, i, 1, part, branches));
				}
			}
		}
		return drops;
	}

	private static List<String> entriesAt(Network network, Element element, Branches branches) {
		List<String> parts = new ArrayList<>();
		if (element instanceof Fitting fitting && !fitting.details().feeds().isEmpty()) {
			parts.add(fitting.name());
		}
		for (Feed feed : network.feeds()) {
			if (!feed.supplies().isEmpty() && branches.backbonePart(feed.from().part()).equals(element.name())) {
				parts.add(feed.name());
			}
		}
		return parts;
	}

	private static SimpleDrop side(Network network, Backbone backbone, int start, int step, String part, Branches branches) {
		double metres = 0;
		double ohms = 0;
		double steps = 0;
		for (int i = start + step; i >= 0 && i < backbone.elements().size(); i += step) {
			Element element = backbone.elements().get(i);
			if (endsSupply(element)) {
				break;
			}
			if (element instanceof CableRun run) {
				metres += run.length().metres();
				ohms += run.length().metres() * run.cable().flatMap(Cable::power).map(CopperConductor::resistance).map(each -> each.ohmsPerMetre()).orElse(0.0);
			} else {
				steps += lenAt(network, (Fitting) element, branches);
			}
		}
		return new SimpleDrop(network.name(), part, step > 0, new Current(steps * LEN), new Length(metres), new Voltage(0.1 * steps * ohms));
	}

	private static boolean endsSupply(Element element) {
		return element instanceof Fitting fitting
				&& (fitting.part() instanceof Isolator isolator && isolator.breaksSupply() || fitting.part() instanceof Tap tap && tap.breaksSupply());
	}

	private static double lenAt(Network network, Fitting fitting, Branches branches) {
		double steps = fitting.details().device().map(SimpleDrop::len).orElse(0.0);
		for (Drop drop : network.drops()) {
			if (drop.device().isPresent() && branches.backbonePart(drop.from().part()).equals(fitting.name())) {
				steps += len(drop.device().get());
			}
		}
		return steps;
	}

	/** A rating is rounded up to whole LEN, as the guides do. */
	private static double len(FittedDevice device) {
		return device.model().power().load()
				.map((Load load) -> LoadDemand.of(load, LoadLevel.GUARANTEED))
				.map(demand -> Math.ceil(demand.currentAt(LoadDemand.USUAL) / LEN - 1e-9))
				.filter(Double::isFinite)
				.orElse(0.0);
	}
}
