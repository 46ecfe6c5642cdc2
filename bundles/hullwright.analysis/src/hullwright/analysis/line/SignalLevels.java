/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

/**
 * The dominant levels of a line, all nodes loading it.
 *
 * @param worst the level where it is heard worst
 * @param leastLoad the sender with the least resistance across its pins
 * @param mostLoad the sender with the most
 */
public record SignalLevels(SignalLevel worst, SenderLoad leastLoad, SenderLoad mostLoad) {

	/** Whether the loads of all senders are such that each guarantees its level. */
	public boolean areGuaranteed() {
		return leastLoad.isGuaranteed() && mostLoad.isGuaranteed();
	}
}
