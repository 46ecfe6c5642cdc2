/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.Optional;

import hullwright.network.DevicePortRef;
import hullwright.quantity.Duration;

/**
 * Whether the buffer of a listener takes what comes at once.
 *
 * @param listener the listener
 * @param holds how much of what comes in its buffer holds
 * @param run how long characters come without a pause at most; none if for longer than ten seconds
 */
public record BufferFit(DevicePortRef listener, Duration holds, Optional<Duration> run) {

	/** Whether nothing of it is lost even if the listener takes nothing out of its buffer meanwhile. */
	public boolean fits() {
		return run.isPresent() && !run.get().exceeds(holds);
	}
}
