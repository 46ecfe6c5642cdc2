/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.List;

import hullwright.network.data.Passing;
import hullwright.network.data.Sending;
import hullwright.network.data.Showing;
import hullwright.network.data.Turning;
import hullwright.network.data.Wanting;

/**
 * What a kind of device tells, wants, shows and passes on.
 *
 * @param sends what it tells
 * @param wants what it cannot do without
 * @param shows what it shows if somebody tells it
 * @param turns what it turns from one message into another
 * @param passes what it passes on unchanged
 * @param passesSettable whether each boat sets what it passes
 */
public record DeviceData(List<Sending> sends, List<Wanting> wants, List<Showing> shows, List<Turning> turns,
		List<Passing> passes, boolean passesSettable) {

	/** The catalog says nothing. */
	public static final DeviceData UNSTATED = new DeviceData(List.of(), List.of(), List.of(), List.of(), List.of(), false);

	public DeviceData {
		sends = List.copyOf(sends);
		wants = List.copyOf(wants);
		shows = List.copyOf(shows);
		turns = List.copyOf(turns);
		passes = List.copyOf(passes);
	}
}
