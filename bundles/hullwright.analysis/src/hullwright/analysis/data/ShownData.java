/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import hullwright.network.data.Showing;
import java.util.List;

/**
 * What a device shows if it comes, and what comes of that.
 *
 * @param device the qualified name of the device
 * @param showing what it can show
 * @param received what reaches it
 * @param missing what of it reaches it from nobody, which is no fault
 */
public record ShownData(String device, Showing showing, List<ReceivedData> received, List<MessageUse> missing) {

	public ShownData {
		received = List.copyOf(received);
		missing = List.copyOf(missing);
	}
}
