/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import java.util.Optional;

/**
 * A message that a gateway is asked for and cannot make, since it has no map for it in this direction.
 *
 * @param gateway the qualified name of the gateway
 * @param heard as what it hears the data; empty where only the text of a line asks for the message
 * @param asked as what it would have to tell them
 * @param carrier where it would have to tell them
 * @param device the qualified name of the device that cannot do without; empty where only the text of a line asks
 */
public record MissingMap(String gateway, Optional<MessageUse> heard, MessageUse asked, Carrier carrier, Optional<String> device) {
}
