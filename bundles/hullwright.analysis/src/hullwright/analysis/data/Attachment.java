/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.FittedDevice;
import java.util.Objects;
import java.util.Optional;

/**
 * A device on a carrier.
 *
 * @param carrier the carrier
 * @param device the device
 * @param port the port that it is on it by, if the text or the catalog names one
 * @param tells whether it may tell there
 * @param hears whether it hears what others tell there
 */
record Attachment(Carrier carrier, FittedDevice device, Optional<String> port, boolean tells, boolean hears) {

	/** Whether a port that something is said of is this one; everything is said of every port if none is named. */
	boolean isBy(Optional<String> named) {
		return named.isEmpty() || named.equals(port);
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Attachment that && carrier.equals(that.carrier) && device.name().equals(that.device.name()) && port.equals(that.port)
				&& tells == that.tells;
	}

	/** By names: a device with all its parts is a lot to look at each time. */
	@Override
	public int hashCode() {
		return Objects.hash(carrier, device.name(), port);
	}
}
