/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import hullwright.tests.referee.DescribedBoat.Bank;
import hullwright.tests.referee.DescribedBoat.Converter;
import hullwright.tests.referee.DescribedBoat.Lead;
import hullwright.tests.referee.DescribedBoat.Source;
import hullwright.tests.referee.DescribedBoat.State;
import hullwright.tests.referee.DescribedBoat.Supply;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Writes what feeds a boat into a netlist: banks, converters and breakers that are on, and the wires from them.
 */
final class PowerNetlist {

	/** Where a source gives its voltage. {@code volts} is what it gives without load. */
	private record Terminal(boolean on, String plus, String minus, double volts) {
	}

	private final DescribedBoat boat;
	private final Netlist netlist;
	private final double warmth;
	private final Map<String, Terminal> terminals = new HashMap<>();

	/** @param warmth how many times the resistance at 20 °C a conductor has */
	PowerNetlist(DescribedBoat boat, Netlist netlist, double warmth) {
		this.boat = boat;
		this.netlist = netlist;
		this.warmth = warmth;
		boat.sources().forEach(source -> terminals.put(source.name(), terminal(source)));
	}

	/** Gives each island that nothing ties to the common negative a zero of its own: the minus of its isolated converter. */
	void settleZeros() {
		boat.sources().stream().map(source -> terminals.get(source.name())).filter(Terminal::on)
				.filter(terminal -> !netlist.isHeldTogether(terminal.minus(), Netlist.ZERO))
				.forEach(terminal -> netlist.join(Netlist.ZERO, terminal.minus()));
	}

	private Terminal terminal(Source source) {
		if (source instanceof Bank bank) {
			double volts = boat.state().filter(state -> state.dippingBank().equals(Optional.of(bank.name()))).map(State::dipsTo)
					.orElseGet(() -> bank.volts().at(boat.corner()));
			netlist.source(bank.name(), bank.name() + "_inside", Netlist.ZERO, volts);
			netlist.resistor(bank.name() + "_internal", bank.name() + "_inside", bank.name(), bank.resistance().orElse(0.0));
			netlist.readGiven("current of " + bank.name(), bank.name());
			return new Terminal(true, bank.name(), Netlist.ZERO, volts);
		} else if (source instanceof Converter converter) {
			return converter(converter);
		}
		return breaker((Supply) source);
	}

	private Terminal converter(Converter converter) {
		Optional<Terminal> input = converter.from().map(terminals::get);
		boolean on = input.map(Terminal::on).orElse(true);
		String minus = converter.isolated() ? converter.name() + "_minus" : input.map(Terminal::minus).orElse(Netlist.ZERO);
		double volts = converter.volts().at(boat.corner());
		if (on) {
			netlist.source(converter.name(), converter.name(), minus, volts);
			netlist.readGiven("current of " + converter.name(), converter.name());
			input.ifPresent(from -> netlist.converterInput(converter.name() + "_input", from.plus(), from.minus(), converter.efficiency().orElse(1.0),
					converter.name(), from.volts()));
		}
		return new Terminal(on, converter.name(), minus, volts);
	}

	private Terminal breaker(Supply supply) {
		String before = supply.name() + "_before";
		Terminal behind;
		if (supply.from().isPresent()) {
			behind = terminals.get(supply.from().get());
		} else {
			double volts = supply.volts().orElseThrow().at(boat.corner());
			behind = new Terminal(true, supply.name() + "_own", Netlist.ZERO, volts);
			netlist.source(supply.name() + "_own", behind.plus(), behind.minus(), volts);
			netlist.readGiven("current of " + supply.name(), supply.name() + "_own");
		}
		boolean on = behind.on() && boat.state().map(state -> state.on().containsAll(supply.switches())).orElse(true);
		if (on) {
			netlist.source(supply.name() + "_sense", behind.plus(), before, 0);
			netlist.resistor(supply.name() + "_fuse", before, supply.name(), fuse(supply.fuse()));
			supply.fuse().ifPresent(fuse -> netlist.readSize("fuse of " + supply.name(), supply.name() + "_sense"));
		}
		return new Terminal(on, supply.name(), behind.minus(), behind.volts());
	}

	/** The resistance of a fuse: its drop at its rating, none if its kind does not say. */
	static double fuse(Optional<PartKind.Fuse> fuse) {
		return fuse.flatMap(fitted -> fitted.kind().flatMap(PartKind.FuseKind::drop).map(drop -> drop / fitted.rating())).orElse(0.0);
	}

	boolean isOn(String supply) {
		return terminals.get(supply).on();
	}

	/** About what voltage a supply gives. */
	double volts(String supply) {
		return terminals.get(supply).volts();
	}

	/**
	 * The two wires from a supply to where they end.
	 *
	 * @param instead the wires, if they are others than those of the supply
	 * @param label what the place is called
	 * @param plus whether the plus wire is joined to what is there
	 */
	void lead(String supply, Optional<Lead> instead, Conductors to, String label, boolean plus) {
		Terminal from = terminals.get(supply);
		Optional<Lead> lead = instead.or(() -> boat.sources().stream().filter(source -> source.name().equals(supply)).findFirst().flatMap(source -> ((Supply) source).lead()));
		double ohms = lead.map(wire -> wire.length() * wire.wire().ohmsPerMetre() * warmth).orElse(0.0);
		String wires = label + "_from_" + supply;
		if (plus) {
			netlist.source(wires + "_out", from.plus(), wires + "_begins", 0);
			netlist.resistor(wires + "_plus", wires + "_begins", to.supply(), ohms);
		}
		netlist.source(wires + "_back", wires + "_ends", from.minus(), 0);
		netlist.resistor(wires + "_minus", to.common(), wires + "_ends", ohms);
	}

	/** Two wires into a network, of which the currents are read. */
	void enter(String supply, Conductors to, String label) {
		lead(supply, Optional.empty(), to, label, isOn(supply));
		if (isOn(supply)) {
			netlist.readThrough("supply current into " + label + " from " + supply, label + "_from_" + supply + "_out");
		}
		netlist.readThrough("return current out of " + label + " to " + supply, label + "_from_" + supply + "_back");
	}
}
