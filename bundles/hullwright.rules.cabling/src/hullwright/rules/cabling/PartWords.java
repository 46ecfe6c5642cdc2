/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.TerminatorPlace;
import hullwright.network.CableRun;
import hullwright.network.Element;

/**
 * How a message names what lies in a backbone: cables by name often have one that was made for them, and say that they are cables.
 */
final class PartWords {

	private PartWords() {
	}

	/** By its own name; a piece of a drop that has none, by that of the part. */
	static String of(TerminatorPlace place) {
		String own = place.origin().simpleName();
		return own.contains("-") ? place.part().name() : own;
	}

	static String of(Element element) {
		return (element instanceof CableRun ? "cable " : "") + element.origin().simpleName();
	}
}
