/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.analysis.Figures;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.line.BackboneLength;
import hullwright.analysis.power.DeviceReading;
import hullwright.analysis.power.EntryReading;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.power.SpanReading;
import hullwright.analysis.traffic.BusFigures;
import hullwright.analysis.wiring.Medium;
import hullwright.network.Backbone;
import hullwright.network.Network;
import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Voltage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is left of each limit, in the worst of all power states: the volts at devices, the amperes on cables, the metres of
 * backbones. Figures come from the analyses; only the worst of them is chosen here.
 */
final class Margins {

	private final Map<String, DeviceReading> devices = new HashMap<>();
	private final Map<String, SpanReading> cables = new HashMap<>();
	private final Map<SupplyAtPart, EntryReading> entries = new HashMap<>();
	private final Map<String, List<String>> networks = new HashMap<>();

	/** A supply where it enters; one may enter at several parts. */
	private record SupplyAtPart(String supply, String part) {
	}

	private Margins() {
	}

	/** Nothing is computed yet. */
	static Margins unknown() {
		return new Margins();
	}

	static Margins of(Figures figures) {
		Margins margins = new Margins();
		figures.electrics().states().forEach(margins::add);
		for (int i = 0; i < figures.boat().networks().size(); i++) {
			Network network = figures.boat().networks().get(i);
			margins.networks.put(network.name(), lines(network, figures, figures.buses().get(i)));
		}
		return margins;
	}

	private void add(StateElectrics state) {
		Stream.of(state.lowest(), state.starting()).forEach(this::add);
	}

	private void add(PowerFlow flow) {
		flow.devices().stream().filter(DeviceReading::fed)
				.forEach(reading -> devices.merge(reading.device(), reading, (one, other) -> one.voltage().compareTo(other.voltage()) <= 0 ? one : other));
		flow.spans().stream().filter(reading -> reading.span().medium() instanceof Medium.Conductors)
				.forEach(reading -> cables.merge(reading.span().element(), reading, (one, other) -> one.larger().compareTo(other.larger()) >= 0 ? one : other));
		flow.entries().stream().filter(EntryReading::on).forEach(reading -> entries.merge(new SupplyAtPart(reading.entry().supply(), reading.entry().part()), reading,
				(one, other) -> one.current().compareTo(other.current()) >= 0 ? one : other));
	}

	private static List<String> lines(Network network, Figures figures, BusFigures bus) {
		List<String> lines = new ArrayList<>();
		for (Backbone backbone : network.backbones()) {
			BackboneLength length = figures.lengthOf(network, backbone);
			lines.add(length.longerOfAllowance().map(most -> metres(length.longerOf()) + " of " + metres(most) + " end to end, "
					+ metres(new Length(Math.max(0, most.metres() - length.longerOf().metres()))) + " left").orElse(metres(length.longerOf()) + " end to end"));
		}
		int nodes = figures.nodesOf(network);
		lines.add(nodes == 1 ? "1 device" : nodes + " devices");
		lines.add(String.format(Locale.ROOT, "bus load %.0f %%", 100 * bus.load().total().worstShareOf(bus.load().bus())));
		return lines;
	}

	/** The voltage at a device and what is left to the lowest that it works at. */
	Optional<String> ofDevice(String device) {
		return Optional.ofNullable(devices.get(device)).map(reading -> volts(reading.voltage())
				+ reading.aboveLowest().map(left -> left.volts() < 0 ? ", " + volts(new Voltage(-left.volts())) + " too low" : ", " + volts(left) + " left").orElse(""));
	}

	/** Whether less than nothing is left. */
	boolean isTooLow(String device) {
		return Optional.ofNullable(devices.get(device)).flatMap(DeviceReading::aboveLowest).filter(left -> left.volts() < 0).isPresent();
	}

	/** The current through a cable; empty if there is none to speak of. */
	Optional<String> ofCable(String cable) {
		return Optional.ofNullable(cables.get(cable)).map(SpanReading::larger).filter(current -> current.amperes() >= 0.005).map(Margins::amperes);
	}

	/** The same with what the cable may carry. */
	Optional<String> ofCableInFull(String cable) {
		return Optional.ofNullable(cables.get(cable)).map(reading -> amperes(reading.larger())
				+ reading.rated().map(rated -> " of " + rated + ", " + amperes(new Current(Math.max(0, rated.amperes() - reading.larger().amperes()))) + " left").orElse(""));
	}

	/** What flows in where a supply enters at a part. */
	Optional<String> ofEntry(String supply, String part) {
		return Optional.ofNullable(entries.get(new SupplyAtPart(supply, part))).map(EntryReading::current).map(Margins::amperes);
	}

	/** What a network as a whole has left. */
	List<String> ofNetwork(String network) {
		return networks.getOrDefault(network, List.of());
	}

	private static String volts(Voltage voltage) {
		return String.format(Locale.ROOT, "%.2f V", voltage.volts());
	}

	/** Three figures at the most: no catalog knows more. */
	private static String amperes(Current current) {
		return String.format(Locale.ROOT, current.amperes() >= 9.995 ? "%.1f A" : "%.2f A", current.amperes());
	}

	private static String metres(Length length) {
		double parts = length.metres() >= 100 ? 1 : 10;
		return new Length(Math.round(length.metres() * parts) / parts).toString();
	}
}
