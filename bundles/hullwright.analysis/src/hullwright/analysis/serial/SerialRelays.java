/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.Boat;
import hullwright.network.DevicePortRef;
import hullwright.network.FittedDevice;
import hullwright.network.part.SerialPort;
import hullwright.quantity.Duration;

/**
 * Finds the devices that pass sentences on from serial lines to another.
 */
public final class SerialRelays {

	/** In seconds: after it a burst has come that no line slows down. */
	private static final double AT_ONCE = 1e-12;

	private final Map<DevicePortRef, SerialLineFigures> from = new LinkedHashMap<>();
	private final Map<DevicePortRef, List<SerialLineFigures>> to = new LinkedHashMap<>();

	/** What one input brings, with its figures but for what waits. */
	private record Brought(SerialRelay.Input input, PassedOn passed, boolean complete) {
	}

	private SerialRelays(List<SerialLineFigures> lines) {
		for (SerialLineFigures figures : lines) {
			figures.line().from().forEach(port -> from.putIfAbsent(port, figures));
			figures.line().to().forEach(port -> to.computeIfAbsent(port, key -> new ArrayList<>()).add(figures));
		}
	}

	/**
	 * The outputs of a boat's devices by which sentences are passed on, on lines whose rate is known.
	 *
	 * @param lines the serial lines of the boat
	 */
	public static List<SerialRelay> of(Boat boat, List<SerialLineFigures> lines) {
		SerialRelays relays = new SerialRelays(lines);
		List<SerialRelay> found = new ArrayList<>();
		for (FittedDevice device : DevicesOnBoard.of(boat).all()) {
			device.model().lines().forEach((name, port) -> {
				if (port.talker()) {
					relays.at(device, name).ifPresent(found::add);
				}
			});
		}
		return found;
	}

	private Optional<SerialRelay> at(FittedDevice device, String output) {
		SerialLineFigures out = from.get(new DevicePortRef(device.name(), output));
		if (out == null || out.use().isEmpty()) {
			return Optional.empty();
		}
		List<Brought> brought = new ArrayList<>();
		device.model().lines().forEach((name, port) -> {
			PassingRules rules = PassingRules.of(device, name, output);
			if (port.listener() && !rules.rules().isEmpty()) {
				to.getOrDefault(new DevicePortRef(device.name(), name), List.of()).forEach(line -> brought.add(brought(line, name, port, rules)));
			}
		});
		return brought.isEmpty() ? Optional.empty() : Optional.of(relay(device, output, out, brought));
	}

	private static Brought brought(SerialLineFigures line, String port, SerialPort serial, PassingRules rules) {
		List<CountedSentence> passed = line.load().counted().stream().filter(each -> rules.pass(each.sentence())).toList();
		Optional<CharacterRate> carries = line.rate().rate().map(CharacterRate::of);
		PassedOn curve = PassedOn.of(passed, line.load(), carries.map(CharacterRate::perSecond).orElse(Double.POSITIVE_INFINITY));
		boolean complete = line.load().leftOut().stream().noneMatch(each -> rules.pass(each.sentence()));
		return new Brought(new SerialRelay.Input(port, line.line().name(), carries, new CharacterRate(curve.rate()), serial.buffer(), Optional.empty()), curve,
				complete);
	}

	private static SerialRelay relay(FittedDevice device, String output, SerialLineFigures out, List<Brought> brought) {
		CharacterRate carries = out.use().orElseThrow().carries();
		SerialLoad own = SerialLoad.of(OwnSentences.toldBy(device, output));
		CharacterRate told = brought.stream().map(each -> each.input().told()).reduce(own.total(), CharacterRate::plus);
		double peak = brought.stream().mapToDouble(each -> each.passed().peak()).sum() + own.total().perSecond();
		SerialRelay.Drains drains = Waiting.isFull(told.shareOf(carries)) ? SerialRelay.Drains.NEVER
				: peak > carries.perSecond() * (1 + 1e-9) ? SerialRelay.Drains.WHAT_IS_TOLD : SerialRelay.Drains.ANYTHING;
		List<PassedOn> curves = new ArrayList<>(brought.stream().map(Brought::passed).toList());
		curves.add(new PassedOn(Double.POSITIVE_INFINITY, own.burst().orElseThrow(), own.total().perSecond(), 0));
		double held = held(curves, carries.perSecond());
		Optional<Long> holds = Double.isFinite(held) && drains != SerialRelay.Drains.NEVER ? Optional.of((long) Math.ceil(held - 1e-6)) : Optional.empty();
		List<SerialRelay.Input> inputs = brought.stream()
				.map(each -> withWaiting(each, holds.map(characters -> characters / carries.perSecond()))).toList();
		return new SerialRelay(device.name(), output, out.line().name(), carries, inputs, told, drains, holds,
				own.leftOut().isEmpty() && brought.stream().allMatch(Brought::complete));
	}

	/** The characters that are held at most: what has come and not gone is most where an input falls to its rate. */
	private static double held(List<PassedOn> inputs, double drained) {
		if (inputs.stream().mapToDouble(PassedOn::inTheLongRun).sum() > drained) {
			return Double.POSITIVE_INFINITY;
		}
		double most = heldAt(AT_ONCE, inputs, drained);
		for (PassedOn input : inputs) {
			if (Double.isFinite(input.bend()) && input.bend() > 0) {
				most = Math.max(most, heldAt(input.bend(), inputs, drained));
			}
		}
		return most + inputs.stream().mapToInt(PassedOn::longest).sum();
	}

	private static double heldAt(double time, List<PassedOn> inputs, double drained) {
		return inputs.stream().mapToDouble(each -> each.within(time)).sum() - drained * time;
	}

	/** What of one input waits while the output works off all that is held before it. */
	private static SerialRelay.Input withWaiting(Brought brought, Optional<Double> workedOff) {
		SerialRelay.Input input = brought.input();
		Optional<Duration> waiting = workedOff.flatMap(seconds -> input.carries()
				.map(line -> new Duration((brought.passed().within(seconds) + brought.passed().longest()) / line.perSecond())));
		return new SerialRelay.Input(input.port(), input.line(), input.carries(), input.told(), input.buffer(), waiting);
	}
}
