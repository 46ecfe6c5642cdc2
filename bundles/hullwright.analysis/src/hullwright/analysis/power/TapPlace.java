/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import hullwright.quantity.Voltage;

/**
 * Where a supply would best enter a network.
 *
 * @param network the qualified name of the network
 * @param supply the qualified name of the supply
 * @param present the qualified name of the tap or feed where it enters now
 * @param best the qualified name of the part of the backbone beside which it would best enter; the present part if nothing is gained
 * @param lossNow the voltage lost from the present place to the weakest device
 * @param lossThere the voltage that would be lost from the best place to the device that is the weakest then
 */
public record TapPlace(String network, String supply, String present, String best, Voltage lossNow, Voltage lossThere) {

	/** By how much the weakest device would get more. */
	public Voltage gain() {
		return lossNow.minus(lossThere);
	}
}
