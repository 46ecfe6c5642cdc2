/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.Optional;

import hullwright.network.power.PowerState;
import hullwright.quantity.Temperature;

/**
 * What an operating point is computed for.
 *
 * @param banks how full the banks are; a state in which a bank dips wins
 * @param loads how much the devices draw
 * @param conductors the temperature of all copper
 * @param state which switches are on; all of them if none is chosen
 */
public record Conditions(BankLevel banks, LoadLevel loads, Temperature conductors, Optional<PowerState> state) {

	/**
	 * The warmest wire on a boat. ABYC E-11 rates conductors in engine spaces at 50 °C of ambient air (from memory); 10 K
	 * more for the current in them and for the sun.
	 */
	public static final Temperature HOTTEST = new Temperature(60);

	/** The coldest wire that carries a highest voltage. */
	public static final Temperature COLDEST = new Temperature(0);

	/** The temperature at which tables of resistance are given. */
	public static final Temperature USUAL = new Temperature(20);

	/** The same in another power state. */
	public Conditions in(Optional<PowerState> another) {
		return new Conditions(banks, loads, conductors, another);
	}

	/** Everything as it usually is. */
	public static Conditions nominal(Optional<PowerState> state) {
		return new Conditions(BankLevel.NOMINAL, LoadLevel.NOMINAL, USUAL, state);
	}

	/** Lowest bank, guaranteed loads, hottest wire: the lowest voltages at devices. */
	public static Conditions lowest(Optional<PowerState> state) {
		return new Conditions(BankLevel.LOWEST, LoadLevel.GUARANTEED, HOTTEST, state);
	}

	/** Highest bank, usual loads, coldest wire: the highest voltages at devices. */
	public static Conditions highest(Optional<PowerState> state) {
		return new Conditions(BankLevel.HIGHEST, LoadLevel.NOMINAL, COLDEST, state);
	}

	/** Lowest bank, hottest wire, and every device is switched on at once. */
	public static Conditions starting(Optional<PowerState> state) {
		return new Conditions(BankLevel.LOWEST, LoadLevel.STARTING, HOTTEST, state);
	}
}
