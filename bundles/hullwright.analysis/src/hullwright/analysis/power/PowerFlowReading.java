/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import hullwright.analysis.circuit.Circuit;
import hullwright.analysis.circuit.CircuitProblem;
import hullwright.analysis.circuit.Solution;
import hullwright.analysis.wiring.AttachedDevice;
import hullwright.analysis.wiring.Span;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.part.DevicePower;
import hullwright.quantity.Current;
import hullwright.quantity.Power;
import hullwright.quantity.Voltage;

/**
 * Reads the operating point of a circuit back as what it means on the boat.
 */
final class PowerFlowReading {

	private final PowerCircuit power;
	private final Conditions conditions;
	private final Circuit circuit;
	private final Solution solution;
	private final Wiring wiring;
	private final Sections sections;

	PowerFlowReading(PowerCircuit power, Conditions conditions, Circuit circuit, Solution solution) {
		this.power = power;
		this.conditions = conditions;
		this.circuit = circuit;
		this.solution = solution;
		wiring = power.wiring;
		sections = power.sections;
	}

	PowerFlow read() {
		List<EntryReading> entries = power.entries.stream().map(this::entry).toList();
		double[] highest = new double[sections.count()];
		int[] feeding = new int[sections.count()];
		Arrays.fill(highest, Double.NEGATIVE_INFINITY);
		for (EntryReading each : entries) {
			if (each.on()) {
				int section = sections.of(each.entry().point());
				feeding[section]++;
				highest[section] = Math.max(highest[section], each.voltage().volts());
			}
		}
		List<DeviceReading> devices = new ArrayList<>();
		for (Consumer each : power.onNetworks()) {
			int section = sections.of(each.attached().orElseThrow().point());
			devices.add(device(each, feeding[section] > 0, highest[section]));
		}
		List<PowerProblem> problems = new ArrayList<>(power.problems);
		problems.addAll(told());
		return new PowerFlow(conditions, devices, sections(devices, entries, feeding), entries, spans(), fuses(), sources(), shifts(),
				problems, power.assumptions);
	}

	private EntryReading entry(Entry entry) {
		int point = entry.place().point();
		return new EntryReading(entry.place(), entry.on(), between(point), new Voltage(solution.voltage(power.returnNode[point])),
				new Current(through(entry.supplyWire())), new Current(-through(entry.returnWire())));
	}

	private Voltage between(int point) {
		int plus = power.supplyNode[point];
		int minus = power.returnNode[point];
		return new Voltage(solution.joined(plus, minus) ? solution.voltage(plus) - solution.voltage(minus) : 0);
	}

	private double through(int resistor) {
		return resistor < 0 ? 0 : solution.current(resistor);
	}

	private DeviceReading device(Consumer consumer, boolean reached, double highest) {
		AttachedDevice place = consumer.attached().orElseThrow();
		boolean fed = reached && solution.joined(consumer.plus(), consumer.minus());
		Voltage voltage = new Voltage(fed ? solution.voltage(consumer.plus()) - solution.voltage(consumer.minus()) : 0);
		DevicePower range = place.device().model().power();
		return new DeviceReading(consumer.name(), networkName(place.network()), place.branch(), fed, voltage,
				new Voltage(solution.voltage(consumer.minus())), new Current(solution.loadCurrent(consumer.number())),
				fed ? Optional.of(new Voltage(highest - voltage.volts())) : Optional.empty(),
				range.lowest().filter(limit -> fed).map(voltage::minus),
				range.highest().filter(limit -> fed).map(limit -> limit.minus(voltage)));
	}

	private List<SectionReading> sections(List<DeviceReading> devices, List<EntryReading> entries, int[] feeding) {
		Map<Integer, List<DeviceReading>> on = new TreeMap<>();
		List<Consumer> consumers = power.onNetworks();
		for (int i = 0; i < devices.size(); i++) {
			on.computeIfAbsent(sections.of(consumers.get(i).attached().orElseThrow().point()), none -> new ArrayList<>()).add(devices.get(i));
		}
		Map<Integer, List<EntryReading>> into = new TreeMap<>();
		entries.forEach(each -> into.computeIfAbsent(sections.of(each.entry().point()), none -> new ArrayList<>()).add(each));
		LinkedHashSet<Integer> numbers = new LinkedHashSet<>(on.keySet());
		numbers.addAll(into.keySet());
		return numbers.stream().sorted().map(number -> section(number, on.getOrDefault(number, List.of()), into.getOrDefault(number, List.of()),
				feeding[number])).toList();
	}

	private SectionReading section(int number, List<DeviceReading> devices, List<EntryReading> entries, int feeding) {
		Optional<DeviceReading> weakest = devices.stream().filter(DeviceReading::fed)
				.min((one, other) -> one.voltage().compareTo(other.voltage()));
		Optional<Voltage> highest = entries.stream().filter(EntryReading::on).map(EntryReading::voltage).max(Voltage::compareTo);
		double current = devices.stream().mapToDouble(each -> each.current().amperes()).sum();
		return new SectionReading(networkName(sections.network(number)), devices.stream().map(DeviceReading::device).toList(),
				entries.stream().map(each -> each.entry().supply()).toList(), entries.stream().map(EntryReading::entry).toList(), feeding, new Current(current), highest,
				weakest.map(DeviceReading::voltage), weakest.map(DeviceReading::device));
	}

	private List<SpanReading> spans() {
		List<SpanReading> readings = new ArrayList<>(wiring.spans().size());
		for (int i = 0; i < wiring.spans().size(); i++) {
			Span span = wiring.spans().get(i);
			readings.add(new SpanReading(span, new Current(through(power.supplyOfSpan[i])), new Current(through(power.returnOfSpan[i])), power.ratedOfSpan.get(i),
					between(span.from()), between(span.to())));
		}
		return readings;
	}

	private List<FuseReading> fuses() {
		return power.fuses.stream()
				.map(each -> new FuseReading(each.owner(), each.side(), each.fuse(), new Current(Math.abs(through(each.resistor()))))).toList();
	}

	private List<SourceReading> sources() {
		List<SourceReading> readings = new ArrayList<>();
		for (int i = 0; i < power.sources.size(); i++) {
			SourceOfPower source = power.sources.get(i);
			int number = i;
			Optional<SourceReading.ConverterInput> input = power.converters.stream()
					.filter(each -> each.source() == number && each.load() >= 0).findFirst()
					.map(each -> new SourceReading.ConverterInput(new Voltage(solution.loadVoltage(each.load())),
							new Power(solution.loadVoltage(each.load()) * solution.loadCurrent(each.load()))));
			readings.add(new SourceReading(source.name(), new Voltage(circuit.volts(source.number())),
					new Current(solution.sourceCurrent(source.number())), input));
		}
		return readings;
	}

	/** By network, and within it by what is joined. */
	private List<GroundShift> shifts() {
		List<GroundShift> shifts = new ArrayList<>();
		for (int network = 0; network < power.boat.networks().size(); network++) {
			List<AttachedDevice> left = new ArrayList<>();
			for (AttachedDevice each : wiring.devices()) {
				if (each.network() == network) {
					left.add(each);
				}
			}
			while (!left.isEmpty()) {
				int home = power.returnNode[left.get(0).point()];
				Map<String, Voltage> potentials = new LinkedHashMap<>();
				List<AttachedDevice> elsewhere = new ArrayList<>();
				for (AttachedDevice each : left) {
					int node = power.returnNode[each.point()];
					if (solution.joined(home, node)) {
						potentials.put(each.device().name(), new Voltage(solution.voltage(node)));
					} else {
						elsewhere.add(each);
					}
				}
				shifts.add(new GroundShift(networkName(network), potentials));
				left = elsewhere;
			}
		}
		return shifts;
	}

	private List<PowerProblem> told() {
		List<PowerProblem> told = new ArrayList<>();
		Map<Integer, List<String>> unfed = new TreeMap<>();
		for (CircuitProblem each : solution.problems()) {
			if (each instanceof CircuitProblem.Unfed load) {
				Consumer consumer = power.consumers.get(load.load());
				consumer.attached().filter(place -> !isSwitchedOff(place)).ifPresent(place -> unfed
						.computeIfAbsent(sections.of(place.point()), none -> new ArrayList<>()).add(consumer.name()));
			} else if (!isSecondReturn(each)) {
				told.add(told(each));
			}
		}
		unfed.forEach((section, devices) -> told.add(new PowerProblem.Unfed(networkName(sections.network(section)), devices)));
		return told;
	}

	/**
	 * Whether a loop without resistance is nothing but two leads of no stated length side by side. Only how they share the return
	 * current is open then, and that their lengths are not stated is told as an assumption.
	 */
	private boolean isSecondReturn(CircuitProblem problem) {
		return problem instanceof CircuitProblem.ZeroResistanceLoop loop && power.returnsOfLeads.contains(loop.resistor());
	}

	/** Whether a device is without voltage just because the switches of its supplies are off. */
	private boolean isSwitchedOff(AttachedDevice place) {
		List<Entry> into = power.entries.stream().filter(each -> sections.of(each.place().point()) == sections.of(place.point())).toList();
		return !into.isEmpty() && into.stream().noneMatch(Entry::on);
	}

	private PowerProblem told(CircuitProblem problem) {
		if (problem instanceof CircuitProblem.CannotBeFed load) {
			return new PowerProblem.CannotBeFed(power.consumers.get(load.load()).name(), load.share());
		} else if (problem instanceof CircuitProblem.ZeroResistanceLoop loop) {
			return new PowerProblem.ZeroResistanceLoop(power.resistors.get(loop.resistor()).name());
		} else if (problem instanceof CircuitProblem.ShortedSource shorted) {
			return new PowerProblem.ShortedSource(power.resistors.get(shorted.resistor()).name(), new Voltage(shorted.volts()));
		} else if (problem instanceof CircuitProblem.ParallelSources parallel) {
			return new PowerProblem.ParallelSources(power.sources.get(parallel.source()).name(), new Voltage(parallel.difference()));
		} else if (problem instanceof CircuitProblem.AbsurdResistor absurd) {
			return new PowerProblem.AbsurdValue(power.resistors.get(absurd.resistor()).name(), absurd.ohms());
		} else if (problem instanceof CircuitProblem.AbsurdSource absurd) {
			return new PowerProblem.AbsurdValue(power.sources.get(absurd.source()).name(), absurd.volts());
		} else if (problem instanceof CircuitProblem.AbsurdLoad absurd) {
			return new PowerProblem.AbsurdValue(power.consumers.get(absurd.load()).name(), absurd.value());
		}
		return new PowerProblem.OutOfRange(power.boat.series());
	}

	private String networkName(int network) {
		return power.boat.networks().get(network).name();
	}
}
