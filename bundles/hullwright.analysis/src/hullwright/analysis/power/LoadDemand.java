/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import hullwright.analysis.circuit.LoadLaw;
import hullwright.network.part.Load;
import hullwright.quantity.Current;
import hullwright.quantity.Power;
import hullwright.quantity.Quantity;
import hullwright.quantity.Resistance;
import hullwright.quantity.Voltage;

/**
 * What a load asks of the circuit: the law that its current follows, and the value in the unit of that law (A, ohm or W).
 */
record LoadDemand(LoadLaw law, double amount) {

	/** The voltage at which a catalog's figure holds if it does not say. */
	static final Voltage USUAL = new Voltage(12);

	/** What a load asks at a level. */
	static LoadDemand of(Load load, LoadLevel level) {
		Quantity stated = level.of(load);
		double reference = load.reference().orElse(USUAL).volts();
		double amperes = amperes(stated, reference);
		return switch (load.behaviour()) {
		case CONSTANT_CURRENT -> new LoadDemand(LoadLaw.CURRENT, amperes);
		case CONSTANT_POWER -> new LoadDemand(LoadLaw.POWER, stated instanceof Power power ? power.watts() : amperes * reference);
		case RESISTIVE -> new LoadDemand(LoadLaw.RESISTANCE, stated instanceof Resistance resistance ? resistance.ohms()
				: amperes == 0 ? Double.POSITIVE_INFINITY : reference / amperes);
		};
	}

	/** The current at a voltage, in A. */
	double currentAt(Voltage voltage) {
		return switch (law) {
		case CURRENT -> amount;
		case RESISTANCE -> voltage.volts() / amount;
		case POWER -> amount / voltage.volts();
		};
	}

	/** Whether the value depends on a reference voltage that the catalog does not give. */
	static boolean assumesReference(Load load) {
		boolean same = switch (load.behaviour()) {
		case CONSTANT_CURRENT -> load.nominal() instanceof Current;
		case CONSTANT_POWER -> load.nominal() instanceof Power;
		case RESISTIVE -> load.nominal() instanceof Resistance;
		};
		return !same && load.reference().isEmpty();
	}

	private static double amperes(Quantity stated, double reference) {
		if (stated instanceof Current current) {
			return current.amperes();
		} else if (stated instanceof Power power) {
			return power.watts() / reference;
		}
		double ohms = ((Resistance) stated).ohms();
		return ohms > 0 ? reference / ohms : Double.NaN;
	}
}
