/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import hullwright.network.DevicePortRef;
import hullwright.network.part.SerialPort;

/**
 * One end of a serial line: a port of a device on board that is one for serial lines.
 *
 * @param port which port of which device
 * @param serial what the port is like
 */
public record LineEnd(DevicePortRef port, SerialPort serial) {

	/** The qualified name of the port: that of the device and that of the port. */
	public String name() {
		return port.device() + "." + port.port();
	}

	/** Whether both are one port. */
	boolean isSameAs(LineEnd other) {
		return port.equals(other.port);
	}
}
