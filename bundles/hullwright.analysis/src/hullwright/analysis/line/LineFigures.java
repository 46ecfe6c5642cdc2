/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.Drop;
import hullwright.network.Network;
import hullwright.quantity.Length;

/**
 * The signal line of a network in figures.
 *
 * @param network the qualified name of the network
 * @param backbones the lengths of its backbones, by both counts of their ends, in the order of the text
 * @param propagation the delay between the nodes that are farthest apart; none with fewer than two nodes
 * @param stubs its branches
 * @param stubsTogether the length of all of them
 * @param meter what a meter shows at the ends of its backbones
 * @param levels the levels that senders reach; none with fewer than two nodes, or over a shorted pair
 * @param problems what kept it from being computed as it is
 * @param assumptions what was assumed where the text is silent
 */
public record LineFigures(String network, List<BackboneLength> backbones, Optional<Propagation> propagation, List<Stub> stubs,
		Length stubsTogether, List<MeterReading> meter, Optional<SignalLevels> levels, List<LineProblem> problems,
		List<LineAssumption> assumptions) {

	public LineFigures {
		backbones = List.copyOf(backbones);
		stubs = List.copyOf(stubs);
		meter = List.copyOf(meter);
		problems = List.copyOf(problems);
		assumptions = List.copyOf(assumptions);
	}

	/** The lines of a boat, one for each network. */
	public static List<LineFigures> of(Boat boat, Wiring wiring) {
		List<LineFigures> lines = new ArrayList<>();
		for (int number = 0; number < boat.networks().size(); number++) {
			lines.add(of(boat.networks().get(number), number, wiring));
		}
		return lines;
	}

	private static LineFigures of(Network network, int number, Wiring wiring) {
		Function<Drop, DropLength> lengthOf = DropLength::of;
		List<BackboneLength> backbones = network.backbones().stream().map(each -> BackboneLength.of(each, network.drops(), lengthOf)).toList();
		List<Stub> stubs = Stubs.of(network, lengthOf);
		Length together = stubs.stream().map(Stub::total).reduce(Length.ZERO, Length::plus);
		SignalPair pair = SignalPair.of(wiring, number);
		List<LineProblem> problems = new ArrayList<>();
		List<List<String>> parts = pair.parts();
		if (parts.size() > 1) {
			problems.add(new LineProblem.Parted(parts));
		}
		if (!pair.shortedBy().isEmpty()) {
			problems.add(new LineProblem.Shorted(pair.shortedBy()));
		}
		if (wiring.terminators().stream().noneMatch(each -> each.network() == number)) {
			problems.add(new LineProblem.NoTerminator());
		}
		return new LineFigures(network.name(), backbones, FarthestNodes.of(wiring, number, BitTiming.NMEA_2000), stubs, together,
				pair.meterReadings(network, wiring.ends().get(number)), pair.levels(), problems, LineAssumptions.of(wiring, number));
	}
}
