/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.network.Origin;
import hullwright.network.power.Bank;
import hullwright.network.power.Converter;
import hullwright.network.power.PowerPlant;
import hullwright.network.power.PowerState;
import hullwright.network.power.Supply;
import hullwright.network.power.SupplyLead;
import hullwright.network.power.Voltages;
import hullwright.spec.PowerSource;
import hullwright.spec.Series;
import hullwright.spec.SupplySource;

/**
 * Where the power of the boats of a series comes from.
 *
 * @param banks the banks
 * @param converters the converters
 * @param supplies the supplies, each with when it is fitted
 * @param states the power states
 */
record PowerPlan(List<Bank> banks, List<Converter> converters, List<WhenFitted<Supply>> supplies, List<PowerState> states) {

	PowerPlant on(Order order) {
		return new PowerPlant(banks, converters, supplies.stream().filter(supply -> supply.on(order)).map(WhenFitted::item).toList(), states);
	}

	static PowerPlan of(Series series, Copying copying) {
		List<Bank> banks = new ArrayList<>();
		List<Converter> converters = new ArrayList<>();
		List<WhenFitted<Supply>> supplies = new ArrayList<>();
		for (PowerSource source : series.getSources()) {
			String name = copying.names().of(source);
			String title = Copying.text(source.getTitle());
			Origin origin = copying.places().of(source, name);
			if (source instanceof hullwright.spec.Bank bank) {
				banks.add(new Bank(name, title, voltages(source), bank.isStartsEngines(), Optional.ofNullable(bank.getResistance()), origin));
			} else if (source instanceof hullwright.spec.Converter converter) {
				converters.add(new Converter(name, title, from(converter.getFrom(), copying), voltages(source), converter.isIsolated(),
						Optional.ofNullable(converter.getMost()), Optional.ofNullable(converter.getEfficiency()),
						Optional.ofNullable(converter.getTakesLowest()), Optional.ofNullable(converter.getTakesHighest()), origin));
			} else if (source instanceof SupplySource supply) {
				supplies.add(WhenFitted.under(WhenFitted.Blocks.NONE, supply.getCondition(), new Supply(name, title, from(supply.getFrom(), copying),
						effective(source), Copying.names(supply.getSwitches()), copying.parts().fuse(supply.getFuse(), supply.getFuseType()),
						Optional.ofNullable(supply.getLead()).map(lead -> new SupplyLead(lead.getLength(), lead.getSize())),
						List.copyOf(supply.getSharedWith()), origin)));
			}
		}
		return new PowerPlan(banks, converters, supplies, series.getStates().stream().map(state -> state(state, copying)).toList());
	}

	private static Optional<String> from(PowerSource source, Copying copying) {
		return Optional.ofNullable(source).map(copying.names()::of);
	}

	private static Voltages voltages(PowerSource source) {
		return new Voltages(Optional.ofNullable(source.getNominal()), Optional.ofNullable(source.getLowest()), Optional.ofNullable(source.getHighest()));
	}

	/** A supply that states no voltage has that of what is behind it. Supplies that feed each other in a circle have none. */
	private static Voltages effective(PowerSource source) {
		Set<PowerSource> seen = new HashSet<>();
		for (PowerSource next = source; next != null && seen.add(next); next = next instanceof SupplySource supply ? supply.getFrom() : null) {
			Voltages stated = voltages(next);
			if (stated.isStated()) {
				return stated;
			}
		}
		return Voltages.UNSTATED;
	}

	private static PowerState state(hullwright.spec.PowerState state, Copying copying) {
		Map<String, PowerState.Dip> dips = new LinkedHashMap<>();
		state.getDips().forEach(dip -> dips.put(copying.names().of(dip.getSource()),
				new PowerState.Dip(dip.getTo(), Optional.ofNullable(dip.getLasting()))));
		return new PowerState(state.getName(), Copying.text(state.getTitle()), new HashSet<>(Copying.names(state.getOn())), dips,
				copying.places().of(state, copying.names().ofOwn(state.getName())));
	}
}
