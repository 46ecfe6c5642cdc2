/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.line.LineFigures;
import hullwright.analysis.line.SignalLevel;
import hullwright.analysis.line.SignalLevels;
import hullwright.analysis.power.DeviceReading;
import hullwright.analysis.power.GroundShift;
import hullwright.analysis.power.SectionReading;
import hullwright.analysis.power.SimpleDrop;
import hullwright.network.Network;
import hullwright.quantity.Voltage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What matters most of one network, in a few sentences.
 */
final class NetworkSummary {

	/** A voltage that is shown as more than nothing, in V. */
	private static final double WORTH_A_WORD = 0.005;

	private final BoatElectrics boat;
	private final Network network;
	private final Wording wording;

	NetworkSummary(BoatElectrics boat, Network network, Wording wording) {
		this.boat = boat;
		this.network = network;
		this.wording = wording;
	}

	List<String> lines() {
		List<String> lines = new ArrayList<>();
		weakest().ifPresentOrElse(lines::add, () -> lines.add("No device is fed in any power state."));
		section().ifPresent(lines::add);
		shift().ifPresent(lines::add);
		line().ifPresent(lines::add);
		return lines;
	}

	private record Weakest(StateElectrics state, DeviceReading device, boolean starting) {
	}

	private Optional<String> weakest() {
		List<Weakest> candidates = new ArrayList<>();
		for (StateElectrics state : boat.states()) {
			state.lowest().devices().forEach(each -> candidates.add(new Weakest(state, each, false)));
			state.starting().devices().forEach(each -> candidates.add(new Weakest(state, each, true)));
		}
		return candidates.stream().filter(each -> each.device.network().equals(network.name()) && each.device.fed())
				.min(Comparator.comparingDouble((Weakest each) -> each.device.aboveLowest().map(Voltage::volts).orElse(Double.MAX_VALUE))
						.thenComparing(each -> each.device.voltage()))
				.map(each -> "Weakest device: " + wording.name(each.device.device(), network.name()) + " with " + Wording.volts(each.device.voltage())
						+ margin(each.device) + where(each));
	}

	private static String margin(DeviceReading device) {
		return device.aboveLowest().map(margin -> ", " + Wording.volts(new Voltage(Math.abs(margin.volts())))
				+ (margin.volts() < 0 ? " below" : " above") + " the lowest that it works at").orElse("");
	}

	private String where(Weakest weakest) {
		String state = boat.states().size() > 1 ? Wording.state(weakest.state.state()) + ": " : "";
		return " (" + state + Wording.conditions((weakest.starting ? weakest.state.starting() : weakest.state.lowest()).conditions()) + ").";
	}

	private Optional<String> section() {
		return boat.states().stream().flatMap(state -> state.lowest().sections().stream())
				.filter(each -> each.network().equals(network.name()) && each.drop().isPresent())
				.max(Comparator.comparing((SectionReading each) -> each.drop().orElseThrow()))
				.map(each -> "Largest drop: " + Wording.volts(each.drop().orElseThrow()) + " from " + String.join(" and ", each.supplies().stream()
						.map(wording::name).distinct().toList()) + " to " + wording.name(each.weakest().orElseThrow(), network.name()) + "; the "
						+ each.devices().size() + " devices of that section draw " + Wording.amperes(each.current()) + " ("
						+ Wording.number(each.current().dividedBy(SimpleDrop.LOAD_EQUIVALENCE), 1) + " LEN).");
	}

	private Optional<String> shift() {
		return boat.states().stream().flatMap(state -> state.lowest().shifts().stream())
				.filter(each -> each.network().equals(network.name())).flatMap(each -> each.worst().stream())
				.max(Comparator.comparing(GroundShift.Pair::shift)).filter(each -> each.shift().volts() >= WORTH_A_WORD)
				.map(each -> "Returns lie apart by at most " + Wording.volts(each.shift()) + ", between " + wording.name(each.higher(), network.name())
						+ " and " + wording.name(each.lower(), network.name()) + ".");
	}

	private Optional<String> line() {
		return boat.lines().stream().filter(each -> each.network().equals(network.name())).findFirst().flatMap(LineFigures::levels)
				.map(SignalLevels::worst).map(each -> "Signal: of " + Wording.volts(each.sent()) + " sent by " + wording.name(each.sender(), network.name()) + " at least " + Wording.volts(each.heard())
						+ " arrive, at " + wording.name(each.receiver(), network.name()) + "; " + Wording.volts(SignalLevel.THRESHOLD) + " are understood by every receiver.");
	}
}
