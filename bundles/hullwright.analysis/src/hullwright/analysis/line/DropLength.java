/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.part.Adapter;
import hullwright.network.part.DeviceModel;
import hullwright.quantity.Length;

/**
 * How long a drop is, measured as the public cabling guides do (N2-A §1.4): from the tee to the device, so that adapters
 * and a lead that is part of the device count.
 *
 * @param total the whole length
 * @param cable the length of the cables that are fitted
 * @param adapters the length that adapters add
 * @param lead the length of the lead that is part of the device
 */
public record DropLength(Length total, Length cable, Length adapters, Length lead) {

	/** The length of a drop. */
	public static DropLength of(Drop drop) {
		Length cable = Length.ZERO;
		Length adapters = Length.ZERO;
		for (Element leg : drop.legs()) {
			if (leg instanceof CableRun run) {
				cable = cable.plus(run.length());
			} else if (((Fitting) leg).part() instanceof Adapter adapter) {
				adapters = adapters.plus(adapter.length().orElse(Length.ZERO));
			}
		}
		Length lead = drop.device().flatMap(device -> device.model().lead()).map(DeviceModel.Lead::length).orElse(Length.ZERO);
		return new DropLength(cable.plus(adapters).plus(lead), cable, adapters, lead);
	}

	/** Whether all of it is the lead that came with the device, which nobody can shorten. */
	public boolean isIntegralLeadOnly() {
		return cable.si() == 0 && adapters.si() == 0 && lead.si() > 0;
	}
}
