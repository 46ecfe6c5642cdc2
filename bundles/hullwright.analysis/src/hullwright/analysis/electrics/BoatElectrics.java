/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.electrics;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import hullwright.analysis.fault.Loss;
import hullwright.analysis.fault.Losses;
import hullwright.analysis.line.LineFigures;
import hullwright.analysis.power.LeadSizing;
import hullwright.analysis.power.SimpleDrop;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.power.PowerState;

/**
 * All about the electrics of a boat.
 *
 * @param boat the boat
 * @param wiring how its networks are joined
 * @param states by power state, in the order of the text; one without a name if none is declared
 * @param simpleDrops the voltage drops by the simple formula of the trade, for comparison
 * @param leadSizings the leads beside what the feed-wire formula of the trade asks for them
 * @param losses what is lost when one thing fails
 * @param lines the signal lines, one for each network
 */
public record BoatElectrics(Boat boat, Wiring wiring, List<StateElectrics> states, List<SimpleDrop> simpleDrops,
		List<LeadSizing> leadSizings, List<Loss> losses, List<LineFigures> lines) {

	public BoatElectrics {
		states = List.copyOf(states);
		simpleDrops = List.copyOf(simpleDrops);
		leadSizings = List.copyOf(leadSizings);
		losses = List.copyOf(losses);
		lines = List.copyOf(lines);
	}

	/** Computes everything. */
	public static BoatElectrics of(Boat boat) {
		List<PowerState> declared = boat.power().states();
		return of(boat, declared.isEmpty() ? List.of(Optional.empty()) : declared.stream().map(Optional::of).toList());
	}

	/** Computes everything in one power state only. */
	public static BoatElectrics of(Boat boat, PowerState state) {
		return of(boat, List.of(Optional.of(state)));
	}

	private static BoatElectrics of(Boat boat, List<Optional<PowerState>> wanted) {
		Wiring wiring = Wiring.of(boat);
		StateComputation computation = new StateComputation(boat, wiring);
		List<StateElectrics> states = wanted.stream().map(computation::of).toList();
		List<SimpleDrop> drops = boat.networks().stream().flatMap(network -> SimpleDrop.of(network).stream()).toList();
		List<LeadSizing> sizings = LeadSizing.of(boat, wiring, states.stream().flatMap(each -> Stream.of(each.lowest(), each.starting())).toList());
		return new BoatElectrics(boat, wiring, states, drops, sizings, Losses.of(boat, wiring), LineFigures.of(boat, wiring));
	}
}
