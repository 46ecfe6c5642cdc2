/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import hullwright.rules.report.SetAside;

/**
 * Says in words why a finding does not count.
 */
public final class SetAsideText {

	private SetAsideText() {
	}

	/** The reason, such as {@code waived until 2031-02-03: the display moves aft}. */
	public static String of(SetAside.Why why) {
		if (why instanceof SetAside.Waived waived) {
			return "waived" + waived.until().map(last -> " until " + last).orElse("") + ": " + waived.reason();
		} else if (why instanceof SetAside.Silenced silenced) {
			return "explained by " + silenced.rule() + " on " + silenced.element();
		}
		return "in the baseline, and no worse than there";
	}
}
