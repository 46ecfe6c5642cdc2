/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;
import java.util.Optional;

import hullwright.network.data.SentMessage;
import hullwright.network.part.DeviceModel;

/**
 * A device on board.
 *
 * @param name the qualified name
 * @param model what it is
 * @param place where it is, if the text says
 * @param label what is written on it, empty if nothing
 * @param settings how it is set
 * @param sends what it tells, one entry for each data instance
 * @param origin its place in the text
 */
public record FittedDevice(String name, DeviceModel model, Optional<String> place, String label, DeviceSettings settings,
		List<SentMessage> sends, Origin origin) {

	public FittedDevice {
		sends = List.copyOf(sends);
	}

	/** A device of which the text says no more than what it is. */
	public static FittedDevice of(String name, DeviceModel model, Origin origin) {
		return new FittedDevice(name, model, Optional.empty(), "", DeviceSettings.UNSTATED, List.of(), origin);
	}
}
