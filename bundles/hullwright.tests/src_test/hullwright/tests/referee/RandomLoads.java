/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Makes up what devices draw, so that their wires can feed them.
 */
final class RandomLoads {

	private final Random random;
	private final LoadData.Behaviour behaviour;
	private final double volts;
	private final double amperesEach;
	private boolean first = true;

	/**
	 * @param behaviour how the loads behave; of a boat with loads of constant power the first does, most others do too
	 * @param volts the voltage of the system
	 * @param amperesEach about what each may draw
	 */
	RandomLoads(Random random, LoadData.Behaviour behaviour, double volts, double amperesEach) {
		this.random = random;
		this.behaviour = behaviour;
		this.volts = volts;
		this.amperesEach = amperesEach;
	}

	LoadData next() {
		LoadData.Behaviour own = behaviour == LoadData.Behaviour.CONSTANT_POWER && !first && random.nextInt(5) < 2
				? LoadData.Behaviour.values()[random.nextInt(2)]
				: behaviour;
		first = false;
		Optional<Double> reference = random.nextInt(3) == 0 ? Optional.empty() : Optional.of(volts * (random.nextBoolean() ? 1 : 1.125));
		double at = reference.orElse(12.0);
		double amperes = amperesEach * (0.3 + 0.7 * random.nextDouble());
		// what is stated at another voltage than the system's draws more or less there
		double scaled = own == LoadData.Behaviour.CONSTANT_POWER ? amperes * volts / at : own == LoadData.Behaviour.RESISTIVE ? amperes * at / volts : amperes;
		LoadData.Amount nominal = amount(scaled, at);
		boolean written = random.nextBoolean() || usual(nominal.unit()) != own;
		Optional<LoadData.Amount> most = random.nextBoolean() ? Optional.empty() : Optional.of(amount(scaled * 1.2, at));
		Optional<LoadData.Amount> start = random.nextInt(3) > 0 ? Optional.empty() : Optional.of(amount(scaled * 1.5, at));
		return new LoadData(nominal, own, written, reference, most, start);
	}

	/** How a load behaves that is stated in a unit without more words. */
	private static LoadData.Behaviour usual(LoadData.Unit unit) {
		return switch (unit) {
		case MILLIAMPERE, AMPERE, LEN -> LoadData.Behaviour.CONSTANT_CURRENT;
		case WATT -> LoadData.Behaviour.CONSTANT_POWER;
		case OHM -> LoadData.Behaviour.RESISTIVE;
		};
	}

	private LoadData.Amount amount(double amperes, double at) {
		List<LoadData.Unit> units = new ArrayList<>(List.of(LoadData.Unit.values()));
		if (amperes < 0.05) {
			units.remove(LoadData.Unit.LEN);
		}
		LoadData.Unit unit = units.get(random.nextInt(units.size()));
		return new LoadData.Amount(switch (unit) {
		case MILLIAMPERE -> Math.max(1, Math.floor(amperes * 1000));
		case AMPERE -> Math.max(1, Math.floor(amperes * 1000)) / 1000;
		case LEN -> Math.floor(amperes / 0.05);
		case WATT -> Math.max(1, Math.floor(amperes * at * 1000)) / 1000;
		case OHM -> Math.ceil(at / amperes * 10) / 10;
		}, unit);
	}
}
