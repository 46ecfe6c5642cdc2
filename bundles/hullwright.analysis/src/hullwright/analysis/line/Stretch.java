/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.network.CableRun;
import hullwright.network.part.Cable;
import hullwright.quantity.Length;
import java.util.Optional;

/**
 * A length of line together with the share of a backbone's allowance that it uses: each cable's length over the longest
 * backbone that may be made of it.
 *
 * @param length the length
 * @param share the share, empty if the allowance of a cable is unknown
 */
record Stretch(Length length, Optional<Double> share) {

	static final Stretch NONE = new Stretch(Length.ZERO, Optional.of(0.0));

	/** A length of a cable. */
	static Stretch of(Length length, Optional<Cable> cable) {
		Optional<Double> share = cable.flatMap(Cable::longestBackbone).map(length::dividedBy);
		return new Stretch(length, length.si() == 0 ? Optional.of(0.0) : share);
	}

	/** How long a line of this mixture of cables may be; empty if the allowance of a cable is unknown or nothing is used. */
	Optional<Length> allowance() {
		return share.filter(used -> used > 0).map(used -> length.times(1 / used));
	}

	Stretch plus(CableRun run) {
		return plus(of(run.length(), run.cable()));
	}

	Stretch plus(Stretch other) {
		return new Stretch(length.plus(other.length), share.flatMap(own -> other.share.map(others -> own + others)));
	}

	Stretch minus(Stretch other) {
		return new Stretch(length.minus(other.length), share.flatMap(own -> other.share.map(others -> own - others)));
	}
}
