/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import java.util.List;
import java.util.Optional;

/**
 * A message that several devices tell on one network.
 *
 * @param network the qualified name of the network
 * @param use the message and its key value
 * @param instance the data instance, if the message has one
 * @param devices the qualified names of the devices that it comes from
 * @param sameKey whether nothing tells them apart though data instances are there to do so: two tanks with one instance. Without
 *        such instances several sources are usual, and who listens chooses
 */
public record SeveralSources(String network, MessageUse use, Optional<Integer> instance, List<String> devices, boolean sameKey) {

	public SeveralSources {
		devices = List.copyOf(devices);
	}
}
