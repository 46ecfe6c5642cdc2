/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.fault;

import java.util.List;
import java.util.Optional;

import hullwright.analysis.wiring.BackboneSide;

/**
 * What is lost when one thing fails.
 *
 * @param what what kind of thing fails
 * @param element the qualified name of the part, cable, device, supply or source; of the nearer part for a joint
 * @param other the qualified name of the other part of a joint
 * @param side which side the fuse protects, of a tap with a fuse for each
 * @param withoutPower the devices that no supply reaches any more
 * @param withoutData the devices that are cut off from the rest of their network; the fewer ones on either side of the cut
 * @param unterminated the networks whose backbone is cut between its terminators: all of their traffic is in doubt
 * @param parted the networks between which nothing passes any more
 */
public record Loss(What what, String element, Optional<String> other, Optional<BackboneSide> side, List<String> withoutPower, List<String> withoutData,
		List<String> unterminated, List<String> parted) {

	/** What fails. */
	public enum What {
		/** A fuse or breaker has opened. */
		FUSE,
		/** The contacts between two parts are open in all conductors. */
		JOINT,
		/** A cable, a cord, an adapter or a lead is open in all conductors. */
		CABLE,
		/** A device that joins networks fails. */
		BRIDGE,
		/** A supply fails, or its fuse or breaker has opened. */
		SUPPLY,
		/** A converter or a bank fails. */
		SOURCE
	}

	public Loss {
		withoutPower = List.copyOf(withoutPower);
		withoutData = List.copyOf(withoutData);
		unterminated = List.copyOf(unterminated);
		parted = List.copyOf(parted);
	}

	/** Whether anything is lost at all. */
	public boolean isAny() {
		return !withoutPower.isEmpty() || !withoutData.isEmpty() || !unterminated.isEmpty() || !parted.isEmpty();
	}
}
