/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import hullwright.tests.referee.DescribedBoat.Shape;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Makes up what feeds a boat: banks, converters, breakers, and the power state it is in.
 */
final class RandomPower {

	private final Random random;
	private final RandomParts parts;
	private final boolean converters;
	private final double volts;
	private final List<DescribedBoat.Source> sources = new ArrayList<>();
	private final List<String> banks = new ArrayList<>();
	private final Set<String> maySwitchOff = new HashSet<>();
	private final List<DescribedBoat.State> states = new ArrayList<>();
	private boolean isolatedConverter;
	private int made;

	/**
	 * @param converters whether converters may feed networks. They take constant power and must not be fed back, so that boats
	 *        of linear loads and unbroken conductors with several supplies have none
	 */
	RandomPower(Random random, RandomParts parts, boolean converters) {
		this.random = random;
		this.parts = parts;
		this.converters = converters;
		volts = random.nextInt(4) == 0 ? 24 : 12;
		int count = 1 + random.nextInt(2);
		for (int at = 0; at < count; at++) {
			Optional<Double> resistance = random.nextInt(3) == 0 ? Optional.empty() : Optional.of((1 + random.nextInt(20)) / 1000.0);
			banks.add("bank" + (at + 1));
			sources.add(new DescribedBoat.Bank("bank" + (at + 1), volts(volts), resistance));
		}
	}

	/** Voltages about a nominal one; some are left out. */
	private DescribedBoat.Volts volts(double about) {
		double nominal = Math.round(about * (96 + random.nextInt(10))) / 100.0;
		double lowest = Math.round(nominal * 91) / 100.0;
		double highest = Math.round(nominal * 119) / 100.0;
		int stated = 1 + random.nextInt(7);
		return new DescribedBoat.Volts((stated & 2) != 0 ? Optional.of(lowest) : Optional.empty(),
				(stated & 1) != 0 ? Optional.of(nominal) : Optional.empty(), (stated & 4) != 0 ? Optional.of(highest) : Optional.empty());
	}

	/** The voltage of the boat's system. */
	double volts() {
		return volts;
	}

	/**
	 * A breaker of its own for one place where a network is fed, or for a device.
	 *
	 * @param mustHaveLead whether it is one of several, so that without a wire nothing would settle how they share
	 * @param mayBeOff whether a power state may have it off
	 */
	String supply(boolean mustHaveLead, boolean mayBeOff) {
		String name = "supply" + ++made;
		Optional<DescribedBoat.Volts> own = Optional.empty();
		Optional<String> from;
		switch (random.nextInt(converters ? 6 : 4)) {
		case 0 -> {
			from = Optional.empty();
			own = Optional.of(volts(volts));
		}
		case 1 -> from = Optional.of(breaker());
		case 2, 3 -> from = Optional.of(bank());
		default -> from = Optional.of(converter());
		}
		Optional<DescribedBoat.Lead> lead = mustHaveLead || random.nextInt(4) > 0 ? Optional.of(lead()) : Optional.empty();
		List<String> switches = new ArrayList<>();
		if (mayBeOff && random.nextBoolean()) {
			switches.add("switch" + made);
			maySwitchOff.add("switch" + made);
		}
		if (random.nextInt(3) == 0) {
			switches.add("mainSwitch");
		}
		sources.add(new DescribedBoat.Supply(name, from, own, switches, random.nextInt(3) == 0 ? Optional.empty() : Optional.of(parts.fuse()), lead));
		return name;
	}

	private String bank() {
		return banks.get(random.nextInt(banks.size()));
	}

	/** The breaker of a panel, behind which others stand. */
	private String breaker() {
		if (sources.stream().noneMatch(source -> source.name().equals("panel"))) {
			sources.add(new DescribedBoat.Supply("panel", Optional.of(bank()), Optional.empty(), List.of(), Optional.of(parts.fuse()), Optional.empty()));
		}
		return "panel";
	}

	/** A converter; of isolated ones there is one, so that the zero of what it feeds is never in doubt. */
	private String converter() {
		String name = "converter" + ++made;
		Optional<String> before = sources.stream().filter(DescribedBoat.Converter.class::isInstance).map(DescribedBoat.Source::name).findFirst();
		Optional<String> from = switch (random.nextInt(5)) {
		case 0 -> Optional.empty();
		case 1 -> Optional.of(breaker());
		case 2 -> before.or(() -> Optional.of(bank()));
		default -> Optional.of(bank());
		};
		boolean isolated = !isolatedConverter && random.nextBoolean();
		isolatedConverter |= isolated;
		sources.add(new DescribedBoat.Converter(name, from, volts(12), isolated,
				random.nextBoolean() ? Optional.empty() : Optional.of((80 + random.nextInt(16)) / 100.0)));
		return name;
	}

	DescribedBoat.Lead lead() {
		return new DescribedBoat.Lead((5 + random.nextInt(56)) / 10.0, parts.leadWire());
	}

	/** Declares power states, or none, and picks one. A network that has one supply keeps it. */
	Optional<DescribedBoat.State> pickState() {
		boolean switched = sources.stream().anyMatch(source -> source instanceof DescribedBoat.Supply supply && !supply.switches().isEmpty());
		if (random.nextInt(3) == 0 || !switched && random.nextBoolean()) {
			return Optional.empty();
		}
		Set<String> all = new HashSet<>(maySwitchOff);
		if (sources.stream().anyMatch(source -> source instanceof DescribedBoat.Supply supply && supply.switches().contains("mainSwitch"))) {
			all.add("mainSwitch");
		}
		Set<String> some = new HashSet<>(all);
		maySwitchOff.stream().sorted().skip(random.nextInt(2)).findFirst().ifPresent(some::remove);
		states.add(new DescribedBoat.State("underway", all, Optional.empty(), 0));
		states.add(new DescribedBoat.State("cranking", all, Optional.of(banks.get(0)), Math.round(volts * 75) / 100.0));
		states.add(new DescribedBoat.State("moored", some, Optional.empty(), 0));
		return Optional.of(states.get(random.nextInt(states.size())));
	}

	List<DescribedBoat.State> states() {
		return states;
	}

	List<DescribedBoat.Source> sources() {
		return sources;
	}

	/** Whether a boat of this shape may have converters. */
	static boolean suitsConverters(Shape shape, LoadData.Behaviour behaviour) {
		return behaviour == LoadData.Behaviour.CONSTANT_POWER && (shape == Shape.TREE || shape == Shape.SECTIONS);
	}
}
