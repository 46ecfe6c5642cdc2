/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.analysis.circuit.Circuit;
import hullwright.analysis.circuit.CircuitProblem;
import hullwright.analysis.circuit.Solution;
import hullwright.analysis.conductor.CopperConductor;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.power.PowerState;
import hullwright.network.power.Supply;
import hullwright.network.power.SupplyLead;
import hullwright.quantity.Current;
import hullwright.quantity.Ratio;
import hullwright.quantity.Voltage;

/**
 * The circuit of a boat with certain switches on: laid once, then solved for any voltages, loads and temperatures.
 */
public final class PowerCircuit {

	/** Converters feed converters at most this deep before their inputs have settled. */
	private static final int MOST_ROUNDS = 60;

	/** A converter whose input changes by no more than this is settled, in W. */
	private static final double SETTLED = 1e-9;

	final Boat boat;
	final Wiring wiring;
	final Circuit circuit;
	final List<Resistor> resistors;
	final List<SourceOfPower> sources;
	final List<Consumer> consumers;
	private final List<Consumer> onNetworks;
	final List<FuseInCircuit> fuses;
	final List<ConverterInCircuit> converters;
	final List<Entry> entries;
	final int[] supplyNode;
	final int[] returnNode;
	final int[] supplyOfSpan;
	final int[] returnOfSpan;
	final Set<Integer> returnsOfLeads;
	final List<PowerProblem> problems;
	final List<Assumption> assumptions;
	final Sections sections;
	final List<Optional<Current>> ratedOfSpan;
	private final Map<LoadLevel, double[]> amounts = new EnumMap<>(LoadLevel.class);

	PowerCircuit(Boat boat, Wiring wiring, CircuitAssembly assembly, NetworkCircuit networks,
			List<ConverterInCircuit> converters) {
		this.boat = boat;
		this.wiring = wiring;
		this.converters = List.copyOf(converters);
		circuit = assembly.circuit();
		resistors = List.copyOf(assembly.resistors());
		sources = List.copyOf(assembly.sources());
		consumers = List.copyOf(assembly.consumers());
		onNetworks = consumers.stream().filter(each -> each.attached().isPresent()).toList();
		fuses = List.copyOf(assembly.fuses());
		returnsOfLeads = Set.copyOf(assembly.returnsOfLeads());
		problems = List.copyOf(assembly.problems());
		assumptions = assembly.assumptions();
		entries = List.copyOf(networks.entries());
		supplyNode = networks.supplyNode();
		returnNode = networks.returnNode();
		supplyOfSpan = networks.supplyOfSpan();
		returnOfSpan = networks.returnOfSpan();
		sections = Sections.of(wiring, supplyOfSpan);
		ratedOfSpan = wiring.spans().stream().map(span -> span.medium().rated()).toList();
		for (LoadLevel level : LoadLevel.values()) {
			amounts.put(level, consumers.stream()
					.mapToDouble(each -> each.load().map(load -> LoadDemand.of(load, level).amount()).orElse(each.draws())).toArray());
		}
	}

	/**
	 * The circuit of a boat.
	 *
	 * @param state which switches are on; all of them if none is chosen
	 */
	public static PowerCircuit of(Boat boat, Wiring wiring, Optional<PowerState> state) {
		CircuitAssembly assembly = new CircuitAssembly();
		PlantCircuit plant = new PlantCircuit(boat.power(), state, assembly);
		plant.layAll();
		NetworkCircuit networks = new NetworkCircuit(boat, wiring, plant, assembly);
		networks.lay();
		return new PowerCircuit(boat, wiring, assembly, networks, plant.converters());
	}

	/**
	 * The circuit for short circuits in it.
	 *
	 * @param opened the numbers of the fuses that have opened
	 */
	public FaultCircuit faults(Conditions conditions, Set<Integer> opened) {
		return new FaultCircuit(this, conditions, opened);
	}

	/** Where the supplies would best enter, judged at an operating point of this circuit. */
	public List<TapPlace> tapPlaces(PowerFlow flow) {
		return TapPlacement.of(this, flow.conditions(), flow);
	}

	/** The wires between a supply and where it enters a network, if the text tells them. */
	Optional<SupplyLead> leadOf(Entry entry) {
		return boat.power().supplies().stream().filter(each -> each.name().equals(entry.place().supply())).findFirst().flatMap(Supply::lead);
	}

	/** The circuit itself with the values that hold under given conditions; converters draw nothing yet. */
	Circuit valued(Conditions conditions) {
		return valued(conditions, volts(conditions));
	}

	/** The same with other voltages of the sources. */
	Circuit valued(Conditions conditions, double[] volts) {
		return circuit.withValues(ohms(conditions), volts, amounts(conditions));
	}

	private double[] ohms(Conditions conditions) {
		double factor = CopperConductor.temperatureFactor(conditions.conductors());
		double[] ohms = new double[resistors.size()];
		for (int i = 0; i < ohms.length; i++) {
			Resistor resistor = resistors.get(i);
			ohms[i] = resistor.copper() ? resistor.ohms() * factor : resistor.ohms();
		}
		return ohms;
	}

	/**
	 * The operating point.
	 *
	 * @param conditions of a state in which the same supplies are on as in that of this circuit
	 */
	public PowerFlow solve(Conditions conditions) {
		double[] ohms = ohms(conditions);
		double[] volts = volts(conditions);
		double[] amounts = amounts(conditions);
		Circuit valued = circuit.withValues(ohms, volts, amounts);
		Solution solution = valued.solve();
		if (converters.stream().anyMatch(each -> each.load() >= 0)) {
			for (int round = 0; round < MOST_ROUNDS; round++) {
				double moved = feedConverters(solution, volts, amounts);
				boolean breaksDown = round > 0 && solution.problems().stream().anyMatch(CircuitProblem.CannotBeFed.class::isInstance);
				if (moved <= SETTLED || breaksDown) {
					break;
				}
				valued = valued.withValues(ohms, volts, amounts);
				solution = valued.solve();
			}
		}
		return new PowerFlowReading(this, conditions, valued, solution).read();
	}

	/** Sets the input of every converter to what its output gives; tells the largest change in W. */
	private double feedConverters(Solution solution, double[] volts, double[] amounts) {
		double moved = 0;
		for (ConverterInCircuit each : converters) {
			if (each.load() >= 0) {
				double gives = Math.max(0, volts[each.source()] * solution.sourceCurrent(sources.get(each.source()).number()));
				double takes = gives / each.converter().efficiency().map(Ratio::fraction).orElse(1.0);
				moved = Math.max(moved, Math.abs(takes - amounts[each.load()]));
				amounts[each.load()] = takes;
			}
		}
		return moved;
	}

	/** What each source gives, in V. */
	double[] volts(Conditions conditions) {
		return sources.stream().mapToDouble(each -> volts(each, conditions)).toArray();
	}

	/** What a source gives: the voltage that it dips to in this state, else that of the bank level. */
	private double volts(SourceOfPower source, Conditions conditions) {
		return conditions.state().flatMap(chosen -> Optional.ofNullable(chosen.dips().get(source.name()))).map(PowerState.Dip::to)
				.or(() -> conditions.banks().of(source.voltages()))
				.map(Voltage::volts).orElse(Double.NaN);
	}

	private double[] amounts(Conditions conditions) {
		return amounts.get(conditions.loads()).clone();
	}

	/** The consumers that are devices on networks. */
	List<Consumer> onNetworks() {
		return onNetworks;
	}
}
