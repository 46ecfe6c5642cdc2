/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.Joint;
import hullwright.network.Network;
import hullwright.network.part.Connector;
import hullwright.network.part.Tee;
import hullwright.rules.BoatUnderCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Why two connectors that meet do not mate. Each joint has one cause, so that one rule speaks of it.
 */
enum Misfit {
	/** A terminator that does not fit its neighbour. */
	TERMINATOR,
	/** A port of a heavy backbone that a light drop or cord is plugged into: both families are standard ones. */
	HEAVY_PORT,
	/** Two connector families. */
	FAMILIES,
	/** Pins on pins, or sockets on sockets. */
	GENDERS;

	/** The joints of a boat that do not mate for this cause, one for each part that is wrong. */
	List<Joint> on(BoatUnderCheck boat) {
		List<Joint> found = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			Optional<Joint> before = Optional.empty();
			for (Joint joint : boat.figures().jointsOf(network)) {
				boolean counted = before.filter(earlier -> isOtherSideOfSamePart(earlier, joint)).isPresent();
				if (of(joint).filter(cause -> cause == this).isPresent() && !counted) {
					found.add(joint);
				}
				before = Optional.of(joint).filter(each -> !each.mates() && !counted);
			}
		}
		return found;
	}

	private static Optional<Misfit> of(Joint joint) {
		if (joint.mates()) {
			return Optional.empty();
		}
		if (joint.isAtTerminator() && joint.kind() != Joint.Kind.BEHIND_TERMINATOR) {
			return Optional.of(TERMINATOR);
		}
		if (!joint.isBetweenFamilies()) {
			return Optional.of(GENDERS);
		}
		return Optional.of(isAtHeavyPort(joint) ? HEAVY_PORT : FAMILIES);
	}

	private static boolean isAtHeavyPort(Joint joint) {
		boolean branches = joint.kind() == Joint.Kind.DROP || joint.kind() == Joint.Kind.FEED;
		return branches && joint.position() == 0
				&& isStandard(joint.near().connector()) && isStandard(joint.far().connector())
				&& joint.near().part().filter(Tee.class::isInstance).filter(tee -> tee.ends().first().map(Connector::family)
						.equals(joint.near().connector().map(Connector::family))).isPresent();
	}

	private static boolean isStandard(Optional<Connector> connector) {
		return connector.filter(each -> each.family().standard()).isPresent();
	}

	/** A part that fits neither of two neighbours, which would fit each other, is one mistake. */
	private static boolean isOtherSideOfSamePart(Joint one, Joint other) {
		return !other.mates() && one.run().equals(other.run()) && one.far().origin().equals(other.near().origin())
				&& one.near().connector().isPresent() && other.far().connector().filter(one.near().connector().get()::mates).isPresent();
	}
}
