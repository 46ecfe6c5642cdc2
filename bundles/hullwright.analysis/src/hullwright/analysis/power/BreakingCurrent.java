/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.Optional;

import hullwright.analysis.wiring.BackboneSide;
import hullwright.network.part.Fuse;
import hullwright.network.part.FuseKind;
import hullwright.quantity.Current;

/**
 * What a fuse or breaker is asked to break at most, beside what its catalog says that it can.
 *
 * @param owner the qualified name of the supply, tap or cord that it belongs to
 * @param side which side it protects, of a tap with a fuse for each
 * @param fuse what it is
 * @param asked the current through it in a short circuit right behind it; none if nothing between it and a source has any
 *        resistance that the texts state, so that no current can be told
 */
public record BreakingCurrent(String owner, Optional<BackboneSide> side, Fuse fuse, Optional<Current> asked) {

	/** What it can break, if its catalog says. */
	public Optional<Current> able() {
		return fuse.kind().flatMap(FuseKind::interrupts);
	}

	/** Whether it is asked to break more than it can; false where either is unknown. */
	public boolean isExceeded() {
		return asked.isPresent() && able().isPresent() && asked.get().exceeds(able().get());
	}
}
