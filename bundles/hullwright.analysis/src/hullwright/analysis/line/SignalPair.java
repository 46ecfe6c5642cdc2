/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

import hullwright.analysis.circuit.Circuit;
import hullwright.analysis.circuit.Solution;
import hullwright.analysis.circuit.UnloadedCircuit;
import hullwright.analysis.conductor.CopperConductor;
import hullwright.analysis.wiring.AttachedDevice;
import hullwright.analysis.wiring.JoinedPoints;
import hullwright.analysis.wiring.Medium;
import hullwright.analysis.wiring.Span;
import hullwright.analysis.wiring.TerminatingResistor;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Element;
import hullwright.network.Network;
import hullwright.network.part.Cable;
import hullwright.quantity.ConductorSize;
import hullwright.quantity.Resistance;
import hullwright.quantity.Voltage;

/**
 * The signal pair of a network as a circuit. Both conductors are alike and nothing but resistors across the pair joins them, so
 * the voltage between them obeys a circuit of one conductor with the resistance of both, the other being the reference.
 */
final class SignalPair {

	private static final double USUAL_NODE = ohms(LineAssumption.Kind.INPUT_RESISTANCE);

	/** The least that ISO 11898-2 allows a node (from memory). In ohm. */
	private static final double LEAST_NODE = 20_000;

	/** The most that it allows. In ohm. */
	private static final double MOST_NODE = 100_000;

	private static final double USUAL_TERMINATOR = ohms(LineAssumption.Kind.TERMINATOR);

	private static final Cable.Conductor LIGHT = new Cable.Conductor((ConductorSize) LineAssumption.Kind.SIGNAL_CONDUCTOR.assumed(), Optional.empty());

	private static final int NO_NODE = -1;

	private final Wiring wiring;
	private final int network;
	private final int[] node;
	private final List<AttachedDevice> devices;
	private final JoinedPoints joined;
	private final TreeSet<String> shortedBy = new TreeSet<>();
	private final UnloadedCircuit usual;
	private final UnloadedCircuit least;
	private final UnloadedCircuit most;

	private SignalPair(Wiring wiring, int network) {
		this.wiring = wiring;
		this.network = network;
		devices = wiring.devices().stream().filter(each -> each.network() == network).toList();
		joined = JoinedPoints.of(wiring, span -> carriesSignal(wiring.spans().get(span)));
		node = new int[wiring.points()];
		List<Integer> unstated = new ArrayList<>();
		Circuit circuit = circuit(unstated);
		usual = circuit.unloaded();
		least = withNodes(circuit, unstated, LEAST_NODE).unloaded();
		most = withNodes(circuit, unstated, MOST_NODE).unloaded();
	}

	private static double ohms(LineAssumption.Kind assumption) {
		return ((Resistance) assumption.assumed()).ohms();
	}

	static SignalPair of(Wiring wiring, int network) {
		return new SignalPair(wiring, network);
	}

	/** The circuit with usual nodes; notes which of its resistors stand for nodes of which no catalog says anything. */
	private Circuit circuit(List<Integer> unstated) {
		Circuit.Builder circuit = new Circuit.Builder();
		// the pairs of other networks are other circuits, so their points get no nodes
		Arrays.fill(node, NO_NODE);
		for (Span span : wiring.spans()) {
			if (span.network() == network) {
				lay(circuit, span.from());
				lay(circuit, span.to());
				if (carriesSignal(span)) {
					circuit.resistor(node[span.from()], node[span.to()], 2 * ohms(span.medium()));
				}
			}
		}
		devices.forEach(each -> lay(circuit, each.point()));
		wiring.ends().get(network).forEach(ends -> {
			lay(circuit, ends.start());
			lay(circuit, ends.end());
		});
		for (TerminatingResistor each : wiring.terminators()) {
			if (each.network() == network) {
				lay(circuit, each.point());
				double ohms = each.resistance().map(Resistance::ohms).orElse(USUAL_TERMINATOR);
				circuit.resistor(node[each.point()], Circuit.REFERENCE, ohms);
				noteIfShort(each.part(), ohms);
			}
		}
		for (AttachedDevice each : devices) {
			Optional<Resistance> stated = each.device().model().inputResistance();
			double ohms = stated.map(Resistance::ohms).orElse(USUAL_NODE);
			int resistor = circuit.resistor(node[each.point()], Circuit.REFERENCE, ohms);
			noteIfShort(each.device().name(), ohms);
			if (stated.isEmpty()) {
				unstated.add(resistor);
			}
		}
		return circuit.build();
	}

	private void lay(Circuit.Builder circuit, int point) {
		if (node[point] == NO_NODE) {
			node[point] = circuit.node();
		}
	}

	private void noteIfShort(String part, double ohms) {
		if (ohms < Circuit.NO_RESISTANCE) {
			shortedBy.add(part);
		}
	}

	/** The qualified names of what lies across the pair without resistance. */
	List<String> shortedBy() {
		return List.copyOf(shortedBy);
	}

	private static Circuit withNodes(Circuit circuit, List<Integer> nodes, double ohms) {
		double[] values = new double[circuit.resistors()];
		for (int i = 0; i < values.length; i++) {
			values[i] = circuit.ohms(i);
		}
		nodes.forEach(each -> values[each] = ohms);
		return circuit.withValues(values, new double[0], new double[0]);
	}

	/** One conductor at 20 °C. */
	private static double ohms(Medium medium) {
		if (medium instanceof Medium.Contact contact) {
			return contact.family().map(family -> family.contact().orElse(Medium.Contact.USUAL).ohms()).orElse(0.0);
		}
		return medium instanceof Medium.Conductors conductors
				? CopperConductor.resistance(conductors.signal().orElse(LIGHT)).ohmsPerMetre() * conductors.length().metres()
				: 0;
	}

	/** The devices that hear each other, part by part, the largest first. */
	List<List<String>> parts() {
		Map<Integer, List<String>> parts = new LinkedHashMap<>();
		devices.forEach(each -> parts.computeIfAbsent(joined.first(each.point()), none -> new ArrayList<>()).add(each.device().name()));
		return parts.values().stream().sorted((one, other) -> Integer.compare(other.size(), one.size())).toList();
	}

	private boolean carriesSignal(Span span) {
		return span.network() == network && span.passes().signal();
	}

	/** The readings at both ends of every backbone. */
	List<MeterReading> meterReadings(Network ofNetwork, List<Wiring.BackboneEnds> ends) {
		List<MeterReading> readings = new ArrayList<>();
		int number = 0;
		for (var backbone : ofNetwork.backbones()) {
			List<Element> elements = backbone.elements();
			if (!elements.isEmpty()) {
				Wiring.BackboneEnds points = ends.get(number++);
				readings.add(meterReading(elements.get(0).name(), points.start()));
				readings.add(meterReading(elements.get(elements.size() - 1).name(), points.end()));
			}
		}
		return readings;
	}

	private MeterReading meterReading(String part, int point) {
		return new MeterReading(part, across(usual, point), across(least, point), across(most, point));
	}

	/** What a meter shows at a point: a test current of 1 A into the pair, and the voltage that it makes. */
	private Optional<Resistance> across(UnloadedCircuit circuit, int point) {
		Solution test = circuit.drawing(Circuit.REFERENCE, node[point], 1);
		return test.joined(node[point], Circuit.REFERENCE) ? Optional.of(new Resistance(test.voltage(node[point]))) : Optional.empty();
	}

	/**
	 * What is left of each sender's level. A current into the sender's pins makes a voltage at each node; only the ratio counts. Over
	 * a shorted pair nothing can be heard, and none is told.
	 */
	Optional<SignalLevels> levels() {
		if (!shortedBy.isEmpty()) {
			return Optional.empty();
		}
		SignalLevel worst = null;
		SenderLoad least = null;
		SenderLoad most = null;
		for (AttachedDevice sender : devices) {
			Solution test = usual.drawing(Circuit.REFERENCE, node[sender.point()], 1);
			double own = test.voltage(node[sender.point()]);
			boolean heardByAny = false;
			for (AttachedDevice receiver : devices) {
				if (receiver != sender && joined.joined(sender.point(), receiver.point())) {
					heardByAny = true;
					double heard = SignalLevel.GUARANTEED.volts() * test.voltage(node[receiver.point()]) / own;
					if (worst == null || heard < worst.heard().volts()) {
						worst = new SignalLevel(sender.device().name(), receiver.device().name(), SignalLevel.GUARANTEED, new Voltage(heard));
					}
				}
			}
			if (heardByAny) {
				SenderLoad load = new SenderLoad(sender.device().name(), new Resistance(own));
				least = least == null || own < least.load().ohms() ? load : least;
				most = most == null || own > most.load().ohms() ? load : most;
			}
		}
		return worst == null ? Optional.empty() : Optional.of(new SignalLevels(worst, least, most));
	}
}
